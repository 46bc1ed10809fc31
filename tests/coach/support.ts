import { secondsToTicks } from '../../src/base/ticks.ts';
import type { ItemId } from '../../src/sim/devices/items.ts';
import { rigNamed } from '../../src/sim/rigs/rigs.ts';
import { runStandardTest } from '../../src/sim/rigs/standardTests/runStandardTest.ts';
import type { StandardTest } from '../../src/sim/rigs/standardTests/StandardTest.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import type { TestBench } from '../../src/sim/rigs/standardTests/TestBench.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import { testMinutes } from '../../src/sim/rigs/standardTests/testMinutes.ts';
import { createWorld } from '../../src/sim/world/World.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import type { CoachsView } from '../../src/training/coach/adviceOf.ts';
import type { EvidenceTables } from '../../src/training/evidence/EvidenceTables.ts';
import type { Environment } from '../../src/training/evidence/environment.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';
import type { Faces, Suspect } from '../../src/training/evidence/Suspect.ts';
import { TestEvidence } from '../../src/training/evidence/TestEvidence.ts';
import { bookMinutes } from '../../src/training/sitting/book.ts';
import type { SittingAction, TimedAction } from '../../src/training/sitting/SittingAction.ts';

export const SHOP: Environment = { ambientC: 20, altitudeM: 200, fuelLevel: 0.5 };

export function standardTest(id: StandardTestId): StandardTest {
  const test = STANDARD_TESTS.find((one) => one.id === id);
  if (test === undefined) throw new Error(`no test ${id}`);
  return test;
}

/** Hands at a truck, which keep what they do with its tick as a record does. */
export class Hands {
  readonly actions: TimedAction[] = [];
  private readonly world;

  constructor(faults: readonly FaultChoice[] = [], seed = 'truth') {
    this.world = createWorld({ seed, faults, ...SHOP });
  }

  get tick(): number {
    return this.world.tick;
  }

  do(...actions: readonly SittingAction[]): this {
    for (const action of actions) {
      if (action.kind !== 'read-codes') {
        const done = this.world.apply(action as Parameters<typeof this.world.apply>[0]);
        if (!done.ok) throw new Error(`${action.kind} refused: ${done.error}`);
      }
      this.actions.push({ tick: this.world.tick, action });
    }
    return this;
  }

  wait(seconds: number): this {
    this.world.advanceTo(this.world.tick + secondsToTicks(seconds));
    return this;
  }

  test(...ids: readonly StandardTestId[]): this {
    const { world, actions } = this;
    const bench: TestBench = {
      get tick() {
        return world.tick;
      },
      apply(action) {
        const done = world.apply(action);
        if (done.ok) actions.push({ tick: world.tick, action });
        return done;
      },
      advanceTo: (tick) => world.advanceTo(tick),
      observe: () => world.observe(),
    };
    for (const id of ids) {
      runStandardTest(standardTest(id), bench, ({ of }) => {
        if (of === 'codes') actions.push({ tick: world.tick, action: { kind: 'read-codes' } });
      });
    }
    return this;
  }
}

/** A made-up suspect; `modeGroup` as item/mode. */
export function made(id: string, modeGroup: string, faces: Faces | null = null): Suspect {
  const item = modeGroup.split('/')[0] as ItemId;
  return {
    id,
    faults: [{ fault: id, severity: 1 }],
    items: [item],
    modes: [modeGroup],
    item,
    modeGroup,
    weight: 1,
    family: id,
    level: 0,
    faces,
  };
}

/**
 * Tables of real tests with made-up outcomes: for each test a row of what the suspects show, y or n, then of what the faces do
 * that one comes and goes between.
 */
export function madeTables(
  suspects: readonly Suspect[],
  rows: Readonly<Partial<Record<StandardTestId, string>>>,
): EvidenceTables {
  const ids = Object.keys(rows) as StandardTestId[];
  const shown = (test: string, value: boolean): Shown => ({
    kind: 'yes-no',
    channel: 'click',
    setUp: test,
    tick: 0,
    value,
  });
  const outcomes = ids.map((id) =>
    [...(rows[id] ?? '')].map((mark) => [0, 1].map(() => [shown(id, mark === 'y')])),
  );
  const tests = ids.map(standardTest);
  return {
    rig: rigNamed(),
    environment: SHOP,
    suspects,
    tests,
    minutes: tests.map((test) => testMinutes(test, bookMinutes)),
    evidence: new TestEvidence(suspects, { tests: ids, outcomes }),
    groupOf: (item) => [item],
    complaintsFor: () => [],
  };
}

/** The coach's view of hands at work, on made-up odds. */
export function viewOf(
  hands: Hands,
  tables: EvidenceTables,
  chances: readonly number[],
  tools: Readonly<Partial<Record<ItemId, number>>> = {},
): CoachsView {
  return {
    phase: 'bench',
    actions: hands.actions,
    tick: hands.tick,
    asked: [],
    chances,
    toolChance: (tool) => tools[tool] ?? 0.03,
    tables,
  };
}
