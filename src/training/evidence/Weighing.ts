import { assert } from '../../base/assert.ts';
import type { Tick } from '../../base/ticks.ts';
import type { Complaint } from './complaint.ts';
import type { Environment } from './environment.ts';
import type { Posterior } from './Posterior.ts';
import { type Beliefs, MOST_CITED, posteriorOf } from './posteriorOf.ts';
import { SuspectBench } from './SuspectBench.ts';
import { SuspectLikelihood } from './suspectLikelihood.ts';
import type { ShownWatch } from './watchShown.ts';

/** A moment at which it is decided which benches go on: a log entry, or the verdict (`entry` null). */
export interface Checkpoint {
  readonly entry: number | null;
  readonly tick: Tick;
  /** Steps of the script and questions until then. */
  readonly steps: number;
  readonly asked: number;
}

export interface Worked {
  readonly turns: number;
  /** The checkpoint that these turns came to. */
  readonly reached: Checkpoint | null;
  /** What everything shown until then leaves, as far as it is worked out. */
  readonly posterior: Posterior;
}

/**
 * The benches and the sums behind a sitting's evidence. Which benches go on is decided at checkpoints only, by what
 * everything shown until then leaves, and no bench goes beyond a checkpoint that is not decided: so the digits do not
 * depend on when the work was done.
 */
export class Weighing {
  private readonly benches: SuspectBench;
  private readonly likelihood: SuspectLikelihood;
  private readonly pending: Checkpoint[] = [];
  /** What was shown by so many questions, as last worked out. */
  private known: { readonly asked: number; readonly posterior: Posterior };
  /** After the verdict, what the same questions left: marks often cite alike. */
  private told: Map<string, Posterior> | null = null;
  readonly prior: Posterior;

  /** `complaints` tell what the drives before the work order melted; null where there were none. */
  constructor(
    private readonly watch: ShownWatch,
    private readonly beliefs: Beliefs,
    environment: Environment,
    complaints: readonly Complaint[] | null = null,
  ) {
    this.benches = new SuspectBench(beliefs, environment, complaints);
    this.likelihood = new SuspectLikelihood(beliefs.suspects, this.benches);
    this.prior = this.posteriorOf([]);
    this.known = { asked: 0, posterior: this.prior };
  }

  /** A log entry was written just now, or the verdict given (null). */
  checkpoint(entry: number | null, tick: Tick): void {
    const { script, asked } = this.watch;
    this.pending.push({ entry, tick, steps: script.length, asked: asked.length });
  }

  /** Works in so many turns at most, but not beyond the next checkpoint. No turns: there is nothing to do now. */
  work(mostTurns: number): Worked {
    const { script, asked } = this.watch;
    const [next] = this.pending;
    const to = next?.steps ?? script.length;
    let turns = this.benches.catchUp(script, to, mostTurns);
    let reached: Checkpoint | null = null;
    if (turns < mostTurns && !this.benches.behind(script, to)) {
      if (next !== undefined) {
        this.know(next.asked);
        // After the verdict nothing more is asked of them.
        if (next.entry === null) this.told = new Map();
        else this.likelihood.forget(this.benches.allot(this.known.posterior.suspects));
        this.pending.shift();
        reached = next;
        turns++;
      } else if (this.known.asked < asked.length) {
        this.know(asked.length);
        turns++;
      }
    }
    return { turns, reached, posterior: this.known.posterior };
  }

  get settled(): boolean {
    return this.pending.length === 0 && this.known.asked === this.watch.asked.length;
  }

  /** What everything shown so far leaves. `settled` must be true. */
  posterior(): Posterior {
    assert(this.settled, 'the benches have answered before they are held against what was shown');
    return this.known.posterior;
  }

  /** What the first so many questions leave, by the benches as they are now. */
  after(asked: number): Posterior {
    return this.posteriorOf(Array.from({ length: asked }, (_, number) => number));
  }

  /** What log entries leave alone, eight at most; null where none is cited. Entries count from 1. */
  cited(cites: readonly number[]): Posterior | null {
    if (cites.length === 0) return null;
    const numbers = cites.slice(0, MOST_CITED).flatMap((entry) => this.watch.entries[entry - 1] ?? []);
    return this.posteriorOf([...new Set(numbers)].sort((a, b) => a - b));
  }

  /** Benches held in memory now. */
  get held(): number {
    return this.benches.held;
  }

  private know(asked: number): void {
    if (asked !== this.known.asked) this.known = { asked, posterior: this.after(asked) };
  }

  private posteriorOf(numbers: readonly number[]): Posterior {
    const key = numbers.join();
    const posterior =
      this.told?.get(key) ?? posteriorOf(this.beliefs, this.likelihood, this.watch.asked, numbers);
    this.told?.set(key, posterior);
    return posterior;
  }
}
