import { type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { Settings } from '../../platform/browser/settings.ts';
import { learnOutcomes } from '../../sim/world/driveCycle.ts';
import { hashOfContent } from '../../training/scenario/hashOfContent.ts';
import type { Scenario } from '../../training/scenario/Scenario.ts';
import { type SealedScenario, sealScenario } from '../../training/scenario/seal.ts';
import { Sitting } from '../../training/sitting/Sitting.ts';
import type { Voices } from '../../ui/sound/Voices.ts';
import { EvidenceClient } from '../evidence/EvidenceClient.ts';
import { type EvidenceLine, type OpenLine, workerLine } from '../evidence/EvidenceLine.ts';
import { FrameLoop, pageFrames } from '../FrameLoop.ts';
import { SittingDesk } from '../SittingDesk.ts';
import { Workbench } from '../Workbench.ts';
import { handsOn } from './handsOn.ts';

/** A writer who drags a slider has the bench follow when it rests. */
const REST_MS = 120;

interface LiveBenchParts {
  readonly settings: ReadonlySignal<Settings>;
  readonly reducedMotion: ReadonlySignal<boolean>;
  readonly voices: Voices;
  openReader(byKeys: boolean): void;
  openShortcuts(): void;
  readonly openLine?: OpenLine;
}

/**
 * The real bench with the draft's faults in: no paperwork, no score, and the inside of the unit open. When what the world is made of
 * changes, what the hands did is done again on the new one; when only texts change, nothing happens to it.
 */
export class LiveBench {
  /** Null until the first draft that is in order. */
  readonly running: Signal<{ readonly desk: SittingDesk; readonly bench: Workbench } | null> = signal(null);
  /** The truck is being driven as the draft says. */
  readonly driving = signal(false);
  readonly failure = signal<string | null>(null);
  /** The draft's truck cannot be read just now. */
  readonly stale = signal(false);
  private readonly loop: FrameLoop;
  private sitting: Sitting | null = null;
  private scenario: Scenario | null = null;
  private madeOf = '';
  private rigOnBench: Scenario['rig'];
  private resting: ReturnType<typeof setTimeout> | undefined;
  private line: EvidenceLine | null = null;
  private asked = 0;
  private driven: (() => void) | null = null;
  private ended = false;

  constructor(private readonly parts: LiveBenchParts) {
    this.loop = new FrameLoop(pageFrames, (ticks, seconds) => {
      const running = this.running.peek();
      running?.desk.pass(ticks);
      running?.bench.frame(seconds);
    });
  }

  /** Time passes on it only while somebody looks. */
  look(looking: boolean): void {
    if (looking) this.loop.start();
    else this.loop.stop();
  }

  /** The draft is in order and is now this. */
  follow(scenario: Scenario): void {
    this.stale.value = false;
    const bench = benchOnly(scenario);
    const made = madeOf(bench);
    if (made === this.madeOf) return;
    this.madeOf = made;
    // What hands did on another unit means nothing on this one.
    const again = this.scenario?.rig === bench.rig;
    this.scenario = bench;
    clearTimeout(this.resting);
    this.resting = setTimeout(() => void this.set(bench, again), this.sitting === null ? 0 : REST_MS);
  }

  /** Begins again with nothing done to the bench. */
  clear(): void {
    if (this.scenario !== null) void this.set(this.scenario, false);
  }

  end(): void {
    this.ended = true;
    clearTimeout(this.resting);
    this.loop.stop();
    this.line?.hangUp();
    this.driven?.();
  }

  private async set(scenario: Scenario, again: boolean): Promise<void> {
    const wanted = ++this.asked;
    this.driving.value = true;
    await this.drive(sealScenario(scenario), scenario.seed, wanted);
    if (wanted !== this.asked || this.ended) return;
    this.driving.value = false;
    try {
      const sitting = handsOn(Sitting.begin(scenario), again ? (this.sitting?.record() ?? null) : null);
      this.failure.value = null;
      this.seat(sitting, scenario);
    } catch (error) {
      this.failure.value = error instanceof Error ? error.message : String(error);
    }
    this.loop.pause();
  }

  private seat(sitting: Sitting, scenario: Scenario): void {
    this.sitting = sitting;
    const running = this.running.peek();
    if (running !== null && this.rigOnBench === scenario.rig) {
      running.desk.reseat(sitting);
      return;
    }
    this.rigOnBench = scenario.rig;
    const evidence = new EvidenceClient({
      sealed: sealScenario(scenario),
      openLine: workerLine,
      failed: () => {},
    });
    const desk: SittingDesk = new SittingDesk(
      sitting,
      evidence,
      { acted: () => {}, jumped: () => this.loop.pause(), exportRecord: () => {} },
      true,
    );
    this.running.value = { desk, bench: new Workbench({ ...this.parts, desk }) };
  }

  /** Has the drives ahead of the work order worked out off the page. Where that fails the page does it itself. */
  private drive(sealed: SealedScenario, seed: string, id: number): Promise<void> {
    return new Promise((resolve) => {
      this.driven?.();
      this.driven = resolve;
      this.line ??= (this.parts.openLine ?? workerLine)((message) => {
        if (message.kind === 'driven') {
          learnOutcomes(message.outcomes);
          if (message.id === this.asked) this.driven?.();
        } else if (message.kind === 'failed' || message.kind === 'gone') {
          this.line = null;
          this.driven?.();
        }
      });
      this.line.post({ kind: 'drive', id, sealed, seed, record: null });
    });
  }
}

/** The draft's truck on a bench without paperwork: nothing to take, nothing to decide, nothing hidden. */
function benchOnly(scenario: Scenario): Scenario {
  const { contentHash: _old, ...content } = scenario;
  const bench = { ...content, mode: 'introduction', steps: [] } as const;
  return { ...bench, contentHash: hashOfContent(bench) };
}

/** What the world of a scenario is made of, as one text; the rest is words. */
function madeOf(scenario: Scenario): string {
  const {
    contentHash: _hash,
    title: _title,
    summary: _summary,
    aims: _aims,
    workOrder: _order,
    remark: _remark,
    minutes: _minutes,
    level: _level,
    id: _id,
    ...made
  } = scenario;
  return JSON.stringify(made);
}
