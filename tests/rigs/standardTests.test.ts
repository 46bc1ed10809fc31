import { describe, expect, it } from 'vitest';
import { type BenchState, startingBench } from '../../src/sim/devices/BenchState.ts';
import { ITEMS } from '../../src/sim/devices/items.ts';
import { LEAK_DETECTION_PUMP } from '../../src/sim/rigs/leakDetectionPump/leakDetectionPump.ts';
import { EVERY_RIG } from '../../src/sim/rigs/rigs.ts';
import { eachStep } from '../../src/sim/rigs/standardTests/eachStep.ts';
import { runStandardTest } from '../../src/sim/rigs/standardTests/runStandardTest.ts';
import { SET_UPS } from '../../src/sim/rigs/standardTests/setUps.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import type { TestAction, TestBench } from '../../src/sim/rigs/standardTests/TestBench.ts';
import { STANDARD_TEST_IDS } from '../../src/sim/rigs/standardTests/testIds.ts';
import { testMinutes } from '../../src/sim/rigs/standardTests/testMinutes.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import type { Observation } from '../../src/sim/world/Observation.ts';
import { createWorld, type World } from '../../src/sim/world/World.ts';
import { safetyBreaches } from '../../src/training/score/safety.ts';
import type { Moment, Timeline } from '../../src/training/score/Timeline.ts';
import { bookMinutes } from '../../src/training/sitting/book.ts';

const TRUCK = { seed: 'good truck', faults: [], ambientC: 20, altitudeM: 0, fuelLevel: 0.5 };
/** 14 inH2O in kPa: NIST SP 811, 249.0889 Pa each. */
const CANISTER_LIMIT_KPA = 3.487;

/** A world whose every moment is taken down: after each action, and every tenth of a second between. */
class WatchedBench implements TestBench {
  readonly world: World = createWorld(TRUCK);
  readonly start = this.world.observe();
  readonly moments: Moment[] = [];
  readonly happenings = new Map<number, Observation['happenings'][number]>();
  mostCanisterKPa = 0;

  get tick(): number {
    return this.world.tick;
  }

  apply(action: TestAction): ReturnType<World['apply']> {
    const before = this.world.observe();
    const done = this.world.apply(action);
    this.note(action, before);
    return done;
  }

  advanceTo(tick: number): void {
    for (let next = this.tick + 2000; next < tick; next += 2000) this.pass(next);
    this.pass(tick);
  }

  observe(): Observation {
    return this.world.observe();
  }

  private pass(tick: number): void {
    const before = this.world.observe();
    this.world.advanceTo(tick);
    this.note(null, before);
  }

  private note(action: Action | null, before: Observation): void {
    const seen = this.world.observe();
    for (const happening of seen.happenings) this.happenings.set(happening.id, happening);
    this.moments.push({ tick: seen.tick, action, before, seen });
    this.mostCanisterKPa = Math.max(this.mostCanisterKPa, this.onCanister(seen));
  }

  /** Vacuum or pressure beyond the canister hose, kPa: as the unit's passage has it while the hose is on, as smoke has it otherwise. */
  private onCanister({ sites, smoke }: Observation): number {
    if (sites['canister-hose-end'] === 'smoke-hose') return Math.abs(smoke.gaugeKPa);
    return sites['canister-port'] === 'canister-hose' ? Math.abs(this.world.inside().canisterKPa) : 0;
  }

  breaches(): readonly string[] {
    const seen: Partial<Timeline> = {
      start: this.start,
      moments: this.moments,
      happenings: [...this.happenings.values()],
    };
    return safetyBreaches(seen as Timeline).map(({ breach }) => breach);
  }
}

/** What hands can leave behind: the discrete bench without the controller's memory and what the unit is doing. */
function leftBehind(bench: BenchState): Partial<BenchState> {
  const { controller, miles, faces, handle, ...rest } = bench;
  return { ...rest, handle: { ...handle, since: 0, until: 0, from: 0 } };
}

/** The same of a truck whose unit may not come to rest: what the hands put where. */
function handsLeft(bench: BenchState): Partial<BenchState> {
  const { key, fuseFitted, plugMated, pins, leads, jumperOn, sites, clamps, releaseOpen } = bench;
  const { meterFunction, meterJack, meterRange, meterHold, meterExtremes, meterRelative } = bench;
  const { supplyOn, bleed, waterLost, smoke, command } = bench;
  return {
    ...{ key, fuseFitted, plugMated, pins, leads, jumperOn, sites, clamps, releaseOpen },
    ...{ meterFunction, meterJack, meterRange, meterHold, meterExtremes, meterRelative },
    ...{ supplyOn, bleed, waterLost, smoke, command },
  };
}

describe('the library of standard tests', () => {
  it('has one test for each name, in that order or another, and each name once', () => {
    const ofRigs = new Set(EVERY_RIG.flatMap(({ tests }) => tests.map(({ id }) => id)));
    expect([...ofRigs].sort()).toEqual([...STANDARD_TEST_IDS].sort());
    expect(STANDARD_TESTS.length).toBeGreaterThanOrEqual(40);
  });

  it('names both points of every meter reading, and the tools it takes into the hand', () => {
    const metered = STANDARD_TESTS.filter(({ steps }) =>
      eachStep(steps).some((step) => step.kind === 'read' && step.reading.of === 'meter'),
    );
    expect(metered.length).toBeGreaterThan(20);
    for (const { id, leads, needs } of metered) {
      expect(leads, id).not.toBeNull();
      expect(needs, id).toContain('meter');
    }
    expect(STANDARD_TESTS.filter((one) => !metered.includes(one) && one.leads !== null)).toEqual([]);
  });

  it('has every item of the truck and the tools under test', () => {
    const about = new Set(STANDARD_TESTS.flatMap((one) => one.about));
    expect(ITEMS.filter((item) => !about.has(item))).toEqual([]);
  });

  it('does nothing with the hands that is not an action of the world', () => {
    // Held by the types: a test's action may be handed to a world as it is.
    const actions: readonly Action[] = STANDARD_TESTS.flatMap(({ prepares, steps, undo }) =>
      eachStep([...SET_UPS[prepares], ...steps, ...undo]).flatMap((step): Action[] => {
        switch (step.kind) {
          case 'wait':
          case 'wait-steady':
          case 'wait-until':
          case 'stroke-until':
          case 'refill-if-empty':
          case 'read':
            return [];
          default:
            return [step];
        }
      }),
    );
    expect(actions.length).toBeGreaterThan(500);
  });

  it('costs by the book what its actions cost', () => {
    const minutes = new Map(STANDARD_TESTS.map((one) => [one.id, testMinutes(one, bookMinutes)]));
    // By hand, from the book: part 1, meter 0.1, two leads 0.6, log 0.2; back: two leads 0.2, meter 0.1, mate 0.5.
    expect(minutes.get('coil-ohms')).toBeCloseTo(2.7, 9);
    // By hand: key 0.2, codes 1 (freeze data with them), key back 0.2.
    expect(minutes.get('codes-and-freeze-data')).toBeCloseTo(1.4, 9);
    for (const [id, cost] of minutes) expect(cost, id).toBeGreaterThan(0);
  });
});

it('the watched bench sees breaches and too much vacuum', () => {
  const bench = new WatchedBench();
  bench.apply({ kind: 'insert-pin', cavity: 3 });
  bench.apply({ kind: 'place-lead', end: 'jumper-supply', point: 'battery-positive' });
  bench.apply({ kind: 'place-lead', end: 'jumper-far', point: 'cavity-3-back' });
  bench.apply({ kind: 'switch-jumper', on: true });
  bench.apply({ kind: 'take-off', item: 'air-hose' });
  bench.apply({ kind: 'fit', item: 'smoke-hose', site: 'air-port' });
  bench.apply({ kind: 'set-smoke', gas: 'inert', pa: 6000 });
  bench.advanceTo(20_000 * 240);
  expect(bench.breaches()).toEqual(['supply-on-sense-mated', 'too-much-pressure-on-canister']);
  expect(bench.mostCanisterKPa).toBeGreaterThan(CANISTER_LIMIT_KPA);
});

describe.each(STANDARD_TESTS)('$id on a good truck', (one) => {
  const bench = new WatchedBench();
  const outcomes = runStandardTest(one, bench);
  const { state } = bench.world.snapshot();
  const seen = bench.observe();

  it('reads something at every mark, settled', () => {
    const marks = eachStep(one.steps).flatMap((step) => (step.kind === 'read' ? [step.key] : []));
    const told = new Set(outcomes.map(({ setUp }) => setUp.split('/')[1] ?? ''));
    for (const mark of marks)
      expect(
        [...told].some((key) => key.startsWith(mark)),
        mark,
      ).toBe(true);
    expect(outcomes.filter(({ value }) => value === 'unstable' || value === 'asleep')).toEqual([]);
    for (const outcome of outcomes) {
      if (outcome.kind === 'number' && outcome.value !== null) expect(outcome.half).toBeGreaterThan(0);
    }
  });

  it('puts the bench back as a job begins', () => {
    expect(leftBehind(state.bench)).toEqual(leftBehind(startingBench(LEAK_DETECTION_PUMP.surface.hoses)));
    expect(seen.gauge.needleKPa).toBeLessThan(0.1);
    expect(Math.abs(seen.manometer.kPa ?? 99)).toBeLessThan(0.03);
    expect(Math.abs(seen.smoke.gaugeKPa)).toBeLessThan(0.1);
  });

  it('hurts nothing', () => {
    expect(state.bench.acquired).toEqual([]);
    expect(state.bench.cracked).toEqual(startingBench(LEAK_DETECTION_PUMP.surface.hoses).cracked);
    expect(Object.values(state.seenMelted).filter((melted) => melted)).toEqual([]);
    expect(bench.breaches()).toEqual([]);
    expect(bench.world.unsolvedSteps).toBe(0);
    const heard = new Set([...bench.happenings.values()].map(({ kind }) => kind));
    for (const bad of ['fuse-pop', 'barb-cracked', 'water-lost', 'crack-heard', 'lead-burnt'] as const) {
      expect(heard.has(bad), bad).toBe(false);
    }
  });

  it('never draws or blows more on canister and tank than they bear', () => {
    expect(bench.mostCanisterKPa).toBeLessThan(CANISTER_LIMIT_KPA);
  });

  it('leaves codes and miles only where it says so', () => {
    const { miles, controller } = state.bench;
    const codes = [...controller.pending, ...controller.stored, ...controller.permanent];
    if (!one.leaves.includes('codes')) expect(codes).toEqual([]);
    expect(miles > 0).toBe(one.leaves.includes('miles'));
  });
});

describe('in other weather, on high ground, with a full and an empty tank', () => {
  it.each([
    { ambientC: 38, altitudeM: 2500, fuelLevel: 0.85 },
    { ambientC: -10, altitudeM: 0, fuelLevel: 0.15 },
  ])('$ambientC °C, $altitudeM m, tank $fuelLevel: nothing is refused, hurt or left behind', (there) => {
    for (const one of STANDARD_TESTS) {
      const world = createWorld({ ...TRUCK, ...there });
      runStandardTest(one, world);
      const { bench } = world.snapshot().state;
      expect(handsLeft(bench), one.id).toEqual(handsLeft(startingBench(LEAK_DETECTION_PUMP.surface.hoses)));
      expect(bench.acquired, one.id).toEqual([]);
      expect(world.unsolvedSteps, one.id).toBe(0);
    }
  });
});

describe('on a bad truck', () => {
  // Faults that would leave most behind: water drawn out, fuses gone, a unit that hangs, a hose that is off.
  const BAD = [
    'diaphragm-torn',
    'body-cracked',
    'vent-bleed-blocked',
    'plunger-stuck-drawn',
    'feed-to-ground',
    'sense-to-battery',
    'driver-stuck-on',
    'canister-hose-off',
    'engine-hose-pinched',
    'hand-pump-seal-leaking',
  ];

  it.each(BAD)('%s: every test can be worked and put back, one after another', (fault) => {
    const world = createWorld({ ...TRUCK, faults: [{ fault, severity: 1 }] });
    for (const one of STANDARD_TESTS) {
      runStandardTest(one, world);
      const { bench } = world.snapshot().state;
      expect(handsLeft(bench), one.id).toEqual(handsLeft(startingBench(LEAK_DETECTION_PUMP.surface.hoses)));
    }
  });
});

describe('one after another, on one truck in one sitting', () => {
  // What has been driven and what was written into the memory by one's own testing is told by other tests.
  const REMEMBERED = ['codes-and-freeze-data', 'road-test'];

  it('every test shows what it shows on a bench fresh in the morning', () => {
    const world = createWorld(TRUCK);
    const apart = STANDARD_TESTS.flatMap((one) => {
      const first = new Map(runStandardTest(one, createWorld(TRUCK)).map((told) => [told.setUp, told]));
      const later = runStandardTest(one, world);
      if (REMEMBERED.includes(one.id)) return [];
      return later.flatMap((told) => {
        const other = first.get(told.setUp);
        if (other === undefined) return [`${told.setUp}: only later`];
        if (told.value === other.value) return [];
        const near =
          told.kind === 'number' &&
          typeof told.value === 'number' &&
          typeof other.value === 'number' &&
          Math.abs(told.value - other.value) <= told.half;
        return near ? [] : [`${told.setUp}: ${other.value} in the morning, ${told.value} later`];
      });
    });
    expect(apart).toEqual([]);
    expect(world.snapshot().state.bench.acquired).toEqual([]);
  });

  it('the road test still passes after all of them', () => {
    const world = createWorld(TRUCK);
    for (const one of STANDARD_TESTS) if (one.id !== 'road-test') runStandardTest(one, world);
    world.apply({ kind: 'set-key', position: 'on' });
    world.apply({ kind: 'clear-codes' });
    world.apply({ kind: 'set-key', position: 'off' });
    const road = STANDARD_TESTS.find(({ id }) => id === 'road-test');
    expect(road).toBeDefined();
    if (road === undefined) return;
    const outcomes = runStandardTest(road, world);
    const ended = outcomes.filter(({ setUp }) => setUp.endsWith('cycle-outcome'));
    expect(ended.map(({ value }) => value)).toContain('passed');
    for (const { value } of ended) expect(['passed', 'not-run']).toContain(value);
    expect(outcomes.at(-1)?.value).toBe('none');
  });
});
