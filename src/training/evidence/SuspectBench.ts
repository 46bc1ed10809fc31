import { assert } from '../../base/assert.ts';
import { secondsToTicks } from '../../base/ticks.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { AnswerSource, DrawAnswers } from './Answers.ts';
import type { Complaint } from './complaint.ts';
import { DRAW_SEEDS, type Environment } from './environment.ts';
import type { Posterior } from './Posterior.ts';
import { type Beliefs, carried, MOST_CITED, posteriorOf } from './posteriorOf.ts';
import type { Suspect } from './Suspect.ts';
import { SuspectWorld } from './SuspectWorld.ts';
import { SuspectLikelihood } from './suspectLikelihood.ts';
import type { ToolState } from './toolStates.ts';
import { usesTool } from './toolUse.ts';
import type { ShownWatch } from './watchShown.ts';

const TURN_TICKS = secondsToTicks(30);
/** Suspects that are hardly worth a thought keep few draws, those that stand far behind some; all eight are for the rest. */
const UNLIKELY = 1e-6;
const FEW_DRAWS = 2;
const BEHIND = 0.01;
const SOME_DRAWS = 4;

/** The worlds of one set of faults: its draws with good tools, and its first draw with each tool bad. */
interface WorldSet {
  readonly draws: readonly SuspectWorld[];
  readonly badTools: Map<ToolState, SuspectWorld>;
  /** Draws that are kept in step now. */
  wanted: number;
  /** Whether a suspect that shows it is likely enough to be tried with bad tools. */
  likely: boolean;
}

/**
 * Every suspect's own bench, kept in step with the sitting that a `ShownWatch` watches. Nothing happens by itself: `work`
 * brings so many benches up to date, in the order that counts most; once `current`, the posterior is a matter of
 * arithmetic. The same watch and the same calls give the same digits.
 */
export class SuspectBench implements AnswerSource {
  private readonly sets = new Map<string, WorldSet>();
  private readonly setOf = new Map<readonly FaultChoice[], WorldSet>();
  private readonly toolByFault: ReadonlyMap<string, ToolState>;
  private readonly toolsUsed = new Set<ToolState>();
  private readonly likelihood: SuspectLikelihood;
  private scriptSeen = 0;

  /** `complaints` tell what the drives before the work order melted; null where there were none. */
  constructor(
    private readonly watch: ShownWatch,
    private readonly beliefs: Beliefs,
    private readonly environment: Environment,
    complaints: readonly Complaint[] | null = null,
  ) {
    this.toolByFault = new Map(
      beliefs.tools.flatMap((tool) => (tool.bad === null ? [] : [[tool.bad.fault, tool]])),
    );
    this.likelihood = new SuspectLikelihood(beliefs.suspects, this);
    for (const [s, suspect] of beliefs.suspects.entries()) {
      const melted = complaints?.[s]?.fuseMelted === true && suspect.faces === null;
      for (const faults of faceFaults(suspect))
        this.addSet(faults, melted, suspect.items.length > 1 ? FEW_DRAWS : DRAW_SEEDS.length);
    }
    this.allot(beliefs.prior);
  }

  /**
   * Takes benches on along the script, in at most so many turns of half a minute of their own time each; returns how many
   * turns it took, 0 when there is nothing to do. A turn costs some milliseconds.
   */
  work(mostTurns: number): number {
    this.noteTools();
    let turns = 0;
    for (const world of this.wantedWorlds()) {
      while (turns < mostTurns && world.behind(this.watch.script) > 0) {
        world.catchUp(this.watch.script, TURN_TICKS);
        turns++;
      }
      if (turns >= mostTurns) break;
    }
    return turns;
  }

  /** True once every bench that is wanted has gone through the whole script. */
  get current(): boolean {
    this.noteTools();
    for (const world of this.wantedWorlds()) if (world.behind(this.watch.script) > 0) return false;
    return true;
  }

  /** Benches held in memory now. */
  get held(): number {
    let count = 0;
    for (const world of this.allWorlds()) if (world.held) count++;
    return count;
  }

  /** What everything shown so far leaves, or what the questions of these numbers do. `current` must be true. */
  posterior(numbers?: readonly number[]): Posterior {
    assert(this.current, 'the benches have answered before they are held against what was shown');
    return posteriorOf(this.beliefs, this.likelihood, this.watch.asked, numbers);
  }

  /** How far log entries carry a verdict on an item, beside everything shown. Entries count from 1; eight at most count. */
  carries(item: string, cites: readonly number[]): ReturnType<typeof carried> {
    const numbers = cites.slice(0, MOST_CITED).flatMap((entry) => this.watch.entries[entry - 1] ?? []);
    const once = [...new Set(numbers)].sort((a, b) => a - b);
    return carried(this.posterior(once), this.posterior(), item);
  }

  /**
   * Lets go of most draws of suspects that the evidence has left less than one in a million, and takes up again those that
   * have come back. To be called with the posterior of everything shown.
   */
  weedOut(posterior: Posterior): void {
    this.allot(posterior.suspects);
  }

  private allot(of: readonly number[]): void {
    const chances = new Map<WorldSet, number>();
    for (const [s, suspect] of this.beliefs.suspects.entries()) {
      for (const faults of faceFaults(suspect)) {
        const set = this.setOf.get(faults);
        if (set !== undefined) chances.set(set, Math.max(chances.get(set) ?? 0, of[s] ?? 0));
      }
    }
    for (const [set, chance] of chances) {
      set.likely = chance >= UNLIKELY;
      const draws = chance >= BEHIND ? DRAW_SEEDS.length : set.likely ? SOME_DRAWS : FEW_DRAWS;
      set.wanted = Math.min(draws, set.draws.length);
      for (const world of set.draws.slice(set.wanted)) world.letGo();
      if (!set.likely) for (const world of set.badTools.values()) world.letGo();
    }
  }

  answersOf(faults: readonly FaultChoice[]): DrawAnswers {
    return (this.setOf.get(faults)?.draws ?? []).map(({ answers }) => answers);
  }

  answersWithBadTool(faults: readonly FaultChoice[], tool: FaultChoice): SuspectWorld['answers'] | null {
    const state = this.toolByFault.get(tool.fault);
    if (state === undefined) return null;
    return this.setOf.get(faults)?.badTools.get(state)?.answers ?? null;
  }

  hasUsed(tool: FaultChoice): boolean {
    const state = this.toolByFault.get(tool.fault);
    return state !== undefined && this.toolsUsed.has(state);
  }

  private addSet(faults: readonly FaultChoice[], melted: boolean, draws: number): void {
    const there = melted ? [...faults, { fault: 'fuse-blown', severity: 1 }] : faults;
    const key = JSON.stringify(there);
    let set = this.sets.get(key);
    if (set === undefined) {
      const worlds = DRAW_SEEDS.slice(0, draws).map(
        (seed) => new SuspectWorld(seed, there, this.environment),
      );
      set = { draws: worlds, badTools: new Map(), wanted: worlds.length, likely: true };
      for (const tool of this.beliefs.tools) {
        if (tool.bad === null) continue;
        set.badTools.set(
          tool,
          new SuspectWorld(DRAW_SEEDS[0] as string, [...there, tool.bad], this.environment),
        );
      }
      this.sets.set(key, set);
    }
    this.setOf.set(faults, set);
  }

  private noteTools(): void {
    const { script } = this.watch;
    for (; this.scriptSeen < script.length; this.scriptSeen++) {
      const step = script[this.scriptSeen];
      if (step === undefined) continue;
      for (const tool of this.toolByFault.values()) {
        if (tool.item !== null && usesTool(tool.item, step)) this.toolsUsed.add(tool);
      }
    }
  }

  /** The first draw of everything, then bad tools, then the other draws. */
  private *wantedWorlds(): Generator<SuspectWorld> {
    for (const { draws } of this.sets.values()) yield draws[0] as SuspectWorld;
    for (const { badTools, likely } of this.sets.values()) {
      if (!likely) continue;
      for (const [tool, world] of badTools) if (this.toolsUsed.has(tool)) yield world;
    }
    for (const { draws, wanted } of this.sets.values()) yield* draws.slice(1, wanted);
  }

  private *allWorlds(): Generator<SuspectWorld> {
    for (const { draws, badTools } of this.sets.values()) {
      yield* draws;
      yield* badTools.values();
    }
  }
}

/** The sets of faults whose worlds a suspect is held against. */
function faceFaults(suspect: Suspect): readonly (readonly FaultChoice[])[] {
  return suspect.faces === null ? [suspect.faults] : [suspect.faces.good, suspect.faces.bad];
}
