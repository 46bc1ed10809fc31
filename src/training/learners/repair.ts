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

/** Switch and hold of a new unit, plug apart: what any unit must do before it goes on a truck. */
const NEW_UNIT: readonly StandardTestId[] = ['switch-ohms', 'hold-capped'];

export function testNewUnit(bench: LearnersBench): void {
  onKnownGood(bench, () => {
    for (const test of NEW_UNIT) bench.test(test);
  });
}

/** Reads the codes, the customer's and those of one's own making, and clears them. */
export function clearCodes(bench: LearnersBench): void {
  bench.do({ kind: 'set-key', position: 'on' });
  bench.wait(0.5);
  bench.do({ kind: 'read-codes' }, { kind: 'clear-codes' }, { kind: 'set-key', position: 'off' });
}

/** Moves the plug, to feel that its lock has caught. */
export function checkLock(bench: LearnersBench): void {
  bench.do({ kind: 'wiggle', at: 'plug' });
  bench.wait(1.5);
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
