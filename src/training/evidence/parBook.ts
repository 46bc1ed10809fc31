import { assert } from '../../base/assert.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { testMinutes } from '../../sim/rigs/standardTests/testMinutes.ts';
import { bookMinutes, priceOf } from '../sitting/book.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import type { PlanStep } from './par.ts';
import { SUPPLY_ITEMS } from './supplyItems.ts';

/** What the rules of method and the repair add to a plan, by the book. */

/** Naming an item of the supply, or reading feed or ground, asks for both sides under load. */
const LOADED: readonly StandardTestId[] = ['feed-drop', 'ground-drop'];

/** Tests that the rules ask for before the verdict, beyond those of the plan. */
export function testsAsked(
  rig: RigDefinition,
  steps: readonly PlanStep[],
  item: VerdictItem,
): readonly StandardTestId[] {
  const done = new Set(steps.map(({ test }) => test));
  const readsSupply = steps.some(({ test }) => {
    const red = testOf(rig, test).leads?.red;
    const black = testOf(rig, test).leads?.black;
    return [red, black].some((point) => point === 'cavity-1-back' || point === 'cavity-2-back');
  });
  const asked = [
    ...(SUPPLY_ITEMS.has(item) || readsSupply ? LOADED : []),
    ...(item === 'unit' ? (['look-into-hoses'] as const) : []),
  ];
  return asked.filter((test) => !done.has(test));
}

/** Trials that one run of these tests makes of the unit's switch under vacuum, the sense watched. */
const VACUUM_TRIALS: Readonly<Partial<Record<StandardTestId, number>>> = {
  'vacuum-and-sense': 7,
  'switch-ohms': 1,
  'trip-and-reset': 1,
  'travel-vacuum': 1,
  'tug-plug-switch-closed': 1,
};
const LEAST_TRIALS = 3;

/** Minutes of the click and vacuum trials that are missing to three, where one was made at all. */
export function trialMinutes(rig: RigDefinition, steps: readonly PlanStep[]): number {
  const vacuum = steps.reduce((sum, { test }) => sum + (VACUUM_TRIALS[test] ?? 0), 0);
  const clicks = steps.reduce((sum, { test }) => sum + energisings(testOf(rig, test)), 0);
  const missing = (trials: number): number => (trials === 0 ? 0 : Math.max(LEAST_TRIALS - trials, 0));
  return (
    missing(vacuum) * passMinutes(rig, 'vacuum-and-sense') +
    missing(clicks) * passMinutes(rig, 'command-clicks')
  );
}

/** How often a run of a test switches the solenoid on. */
function energisings({ steps }: Pick<StandardTest, 'steps'>): number {
  return steps.reduce((sum, step) => {
    if (step.kind === 'repeat') return sum + step.times * energisings(step);
    const on =
      (step.kind === 'command-solenoid' && step.command === 'on') ||
      (step.kind === 'switch-jumper' && step.on);
    return on ? sum + 1 : sum;
  }, 0);
}

/** Minutes of one pass of a test's repeated steps. */
function passMinutes(rig: RigDefinition, id: StandardTestId): number {
  const test = testOf(rig, id);
  const repeated = test.steps.find((step) => step.kind === 'repeat');
  if (repeated === undefined) return 0;
  return testMinutes({ ...test, prepares: 'as-found', steps: repeated.steps, undo: [] }, bookMinutes);
}

/** The test that decides over an item, done again on the part as fitted; the vapour side is judged on the road. */
const RETESTS: Readonly<Partial<Record<ItemId, readonly StandardTestId[]>>> = {
  unit: ['vacuum-and-sense'],
  'sense-wire': ['vacuum-and-sense'],
  controller: ['vacuum-and-sense', 'command-clicks'],
  plug: ['vacuum-and-sense', 'command-clicks'],
  fuse: ['command-clicks'],
  battery: ['command-clicks'],
  'feed-wire': ['command-clicks', 'feed-drop'],
  'key-switch': ['command-clicks', 'feed-drop'],
  'ground-wire': ['command-clicks', 'ground-drop'],
};

/** Minutes from the verdict to the proof that an item's renewal has cured the truck, but for the road. */
export function repairMinutes(
  rig: RigDefinition,
  item: ItemId,
  missing: ReadonlySet<StandardTestId>,
): number {
  const atHand = (RETESTS[item] ?? []).filter((id) => !missing.has(id));
  const retests = atHand.reduce((sum, id) => sum + retestMinutes(rig, id), 0);
  // A new unit is tried on the bench first: out of the cupboard, its coil measured, and back.
  const newPart =
    item === 'unit' && !missing.has('coil-ohms')
      ? 2 * bookMinutes({ kind: 'swap-unit', to: 'known-good' }) + minutesOf(rig, 'coil-ohms')
      : 0;
  return bookMinutes({ kind: 'renew', item }) + newPart + retests;
}

/** On a new part one vacuum trial is enough. */
function retestMinutes(rig: RigDefinition, id: StandardTestId): number {
  if (id !== 'vacuum-and-sense') return minutesOf(rig, id);
  return minutesOf(rig, id) - (VACUUM_TRIALS[id] ?? 1) * passMinutes(rig, id) + passMinutes(rig, id);
}

/** Two cycles on the road, the codes cleared before them and read after them where there is a reader. */
const ROAD_CYCLES = 2;
export function roadMinutes(rig: RigDefinition, missing: ReadonlySet<StandardTestId>): number {
  const drive = bookMinutes({ kind: 'road-test', cycles: ROAD_CYCLES });
  if (missing.has('codes-and-freeze-data')) return drive;
  return bookMinutes({ kind: 'clear-codes' }) + drive + minutesOf(rig, 'codes-and-freeze-data');
}

/** An item that costs no more than this is cheap, and one as likely as this after the complaint likely. */
const CHEAP = 40;
const LIKELY = 0.05;

/**
 * Minutes of a look at each likely and cheap item that the plan has left more than half as likely as the complaint did,
 * before the verdict falls on something dearer.
 */
export function cheapLookMinutes(
  named: VerdictItem,
  items: readonly { readonly item: ItemId; readonly prior: number; readonly left: number }[],
): number {
  const dearer = named === 'nothing-wrong' ? CHEAP + 1 : priceOf(named);
  const asked = items.filter(
    ({ item, prior, left }) =>
      item !== named &&
      prior >= LIKELY &&
      left > prior / 2 &&
      priceOf(item) <= CHEAP &&
      priceOf(item) < dearer,
  );
  return asked.length * bookMinutes({ kind: 'look', at: 'harness' });
}

export function minutesOf(rig: RigDefinition, id: StandardTestId): number {
  return testMinutes(testOf(rig, id), bookMinutes);
}

export function moneyOf(rig: RigDefinition, steps: readonly PlanStep[]): number {
  return steps.reduce((sum, { test }) => sum + testOf(rig, test).money, 0);
}

function testOf({ tests }: RigDefinition, id: StandardTestId): StandardTest {
  const test = tests.find((one) => one.id === id);
  assert(test !== undefined, 'a plan asks for tests that the rig has', { id });
  return test;
}
