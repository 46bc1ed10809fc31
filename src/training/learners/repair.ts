import type { ItemId } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { onKnownGood, renew } from './fitting.ts';
import type { LearnersBench } from './LearnersBench.ts';

/** Tests that decide over an item; where the list is empty the road does. */
export const DECIDING: Readonly<Record<ItemId, readonly StandardTestId[]>> = {
  unit: ['vacuum-and-sense', 'hold-capped', 'command-clicks'],
  'sense-wire': ['vacuum-and-sense'],
  controller: ['vacuum-and-sense', 'command-clicks'],
  plug: ['vacuum-and-sense', 'command-clicks'],
  'feed-wire': ['command-clicks', 'feed-drop'],
  'ground-wire': ['command-clicks', 'ground-drop'],
  fuse: ['command-clicks'],
  'key-switch': ['command-clicks', 'feed-drop'],
  battery: ['command-clicks'],
  'canister-hose': [],
  'air-hose': [],
  'engine-hose': [],
  filter: [],
  'filler-cap': [],
  canister: [],
  'tank-seal': [],
  'purge-valve': [],
  'hand-pump': [],
  'meter-leads': [],
  'meter-fuses': [],
  'meter-battery': [],
  jumper: [],
  'plain-lead': [],
};

/** A new unit is tested by the same tests before it goes on the truck. */
export function testNewUnit(bench: LearnersBench, tests: readonly StandardTestId[]): void {
  onKnownGood(bench, () => {
    for (const test of tests) bench.test(test);
  });
}

/** Clears the codes: the customer's, which are on paper, and those of one's own making. */
export function clearCodes(bench: LearnersBench): void {
  bench.do({ kind: 'set-key', position: 'on' });
  bench.wait(0.5);
  bench.do({ kind: 'clear-codes' }, { kind: 'set-key', position: 'off' });
}

/** Reads what is stored and pending. */
export function readCodes(bench: LearnersBench): void {
  bench.do({ kind: 'set-key', position: 'on' });
  bench.wait(0.5);
  bench.do({ kind: 'read-codes' }, { kind: 'set-key', position: 'off' });
}

/** Drives so many cycles; whether the last in which the monitor ran was passed. */
export function drive(bench: LearnersBench, cycles: number): boolean {
  bench.do({ kind: 'road-test', cycles });
  const judged = (bench.see().lastDrive?.cycles ?? []).filter(({ outcome }) => outcome !== 'not-run');
  return judged.at(-1)?.outcome === 'passed';
}

/** Fits a new item, and does the tests that decide over it once more on the part as fitted. */
export function renewAndRetest(bench: LearnersBench, item: ItemId): void {
  renew(bench, item);
  for (const test of DECIDING[item]) bench.test(test);
}
