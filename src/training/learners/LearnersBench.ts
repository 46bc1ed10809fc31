import { assert } from '../../base/assert.ts';
import type { Random } from '../../base/Random.ts';
import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { BenchTool, ItemId } from '../../sim/devices/items.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import { runStandardTest } from '../../sim/rigs/standardTests/runStandardTest.ts';
import type { Reading, StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { TestAction, TestBench } from '../../sim/rigs/standardTests/TestBench.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { DrivesBefore } from '../../sim/world/WorldPort.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { testsNotAtHand } from '../evidence/testsAtHand.ts';
import { isAtHand } from '../scenario/benchTools.ts';
import type { LogEntry } from '../sitting/LogEntry.ts';
import type { Sitting } from '../sitting/Sitting.ts';
import type { SittingAction } from '../sitting/SittingAction.ts';
import type { ScenarioCard } from '../sitting/SittingView.ts';
import type { Note } from './Note.ts';

/**
 * A sitting as a learner has it: the work order, what can be seen, the log, and hands that know the standard tests. Nothing
 * else of the sitting is in reach.
 */
export class LearnersBench {
  /** Tests that this job has no tools for. */
  readonly notAtHand: ReadonlySet<StandardTestId>;
  private readonly taken: Note[] = [];
  private handsMoved: Tick = 0;
  /** When the last entry was written, if nothing was done since. */
  private loggedAt: Tick = -1;

  constructor(
    private readonly sitting: Sitting,
    /** What the shop has in print: what every test shows on every suspect. */
    readonly tables: EvidenceTables,
    /**
     * How far the truck was driven with its complaint: the owner can say. The prior that coach and score begin with knows it
     * too, and it says nothing of what is wrong.
     */
    readonly drives: DrivesBefore,
    /** For learners who choose by chance. */
    readonly random: Random,
  ) {
    this.notAtHand = testsNotAtHand(this.card.tools);
  }

  get card(): ScenarioCard {
    return this.sitting.view().card;
  }

  get log(): readonly LogEntry[] {
    return this.sitting.view().log;
  }

  /** Everything taken down so far, in order. */
  get notes(): readonly Note[] {
    return this.taken;
  }

  see(): Observation {
    return this.sitting.observe();
  }

  /** Whether a tool is there in this job. */
  has(tool: BenchTool): boolean {
    return isAtHand(this.card.tools, tool);
  }

  /** Does what must be possible; what takes a tool that the job does not have is left out. */
  do(...actions: readonly SittingAction[]): void {
    for (const action of actions) {
      const done = this.sitting.apply(action);
      if (!done.ok && done.error === 'tool-not-at-hand') continue;
      assert(done.ok, 'a learner does what the bench allows', { action, done });
      if (!HANDS_OFF.has(action.kind)) this.moved();
    }
  }

  wait(seconds: number): void {
    this.sitting.advanceTo(this.sitting.tick + secondsToTicks(seconds));
  }

  /** Works a standard test from the bench as the job began, writes down what it shows, and puts the bench back. Without its tools it shows nothing. */
  test(id: StandardTestId): readonly Note[] {
    if (this.notAtHand.has(id)) return [];
    const before = this.taken.length;
    runStandardTest(standardTest(this.tables.rig, id), this.hands(), (reading, outcomes) =>
      this.takeDown(id, reading, outcomes),
    );
    return this.taken.slice(before);
  }

  /** The sitting as a standard test works it. */
  private hands(): TestBench {
    const { sitting } = this;
    return {
      get tick() {
        return sitting.tick;
      },
      apply: (action: TestAction) => {
        const done = sitting.apply(action);
        if (done.ok) this.moved();
        return done;
      },
      advanceTo: (tick) => sitting.advanceTo(tick),
      observe: () => sitting.observe(),
    };
  }

  private takeDown(test: StandardTestId, reading: Reading, outcomes: readonly Outcome[]): void {
    this.write(reading);
    const entry = this.log.length;
    const renewed: readonly ItemId[] = this.see().renewed;
    for (const shown of outcomes) this.taken.push({ test, shown, entry, since: this.handsMoved, renewed });
  }

  /** One entry for all that is read at one moment. What writes itself down is not written twice. */
  private write({ of }: Reading): void {
    const { tick } = this.sitting;
    const last = this.log.at(-1);
    if (of === 'codes') {
      this.sitting.apply({ kind: 'read-codes' });
      return;
    }
    if (last !== undefined && WRITES_ITSELF.has(of)) return;
    if (this.loggedAt === tick) return;
    this.do({ kind: 'log' });
    this.loggedAt = tick;
  }

  private moved(): void {
    this.handsMoved = this.sitting.tick;
    this.loggedAt = -1;
  }
}

const WRITES_ITSELF: ReadonlySet<Reading['of']> = new Set(['finding', 'drive', 'freeze-data']);
const HANDS_OFF: ReadonlySet<SittingAction['kind']> = new Set([
  'log',
  'read-codes',
  'wait',
  'wait-steady',
  'annotate',
  'mark-item',
]);

export function standardTest({ tests }: RigDefinition, id: StandardTestId): StandardTest {
  const test = tests.find((one) => one.id === id);
  assert(test !== undefined, 'every name of a standard test has its test', { id });
  return test;
}
