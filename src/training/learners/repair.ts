import type { ItemId } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { onKnownGood, renew } from './fitting.ts';
import type { LearnersBench } from './LearnersBench.ts';
import type { Technician } from './Technician.ts';

/** Tests that decide over an item; where the list is empty the road does. */
export const DECIDING: Readonly<Record<ItemId, readonly StandardTestId[]>> = {
  unit: ['vacuum-and-sense'],
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

/** Measures the coil of a new unit on the bench, plug apart, with a proven meter, before one goes on the truck. */
export function testNewUnit(hands: Technician): void {
  const { bench } = hands;
  if (!bench.has('known-good-unit') || !bench.has('meter')) return;
  hands.proveFor('coil-ohms');
  onKnownGood(bench, () => {
    bench.do(
      { kind: 'set-meter', function: 'ohms' },
      { kind: 'place-lead', end: 'meter-red', point: 'unit-1' },
      { kind: 'place-lead', end: 'meter-black', point: 'unit-2' },
      { kind: 'wait-steady' },
      { kind: 'log' },
      { kind: 'lift-lead', end: 'meter-red' },
      { kind: 'lift-lead', end: 'meter-black' },
      { kind: 'set-meter', function: 'off' },
    );
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
export function readCodes(bench: LearnersBench): readonly string[] {
  bench.do({ kind: 'set-key', position: 'on' });
  bench.wait(0.5);
  bench.do({ kind: 'read-codes' });
  const codes = bench.see().reader.codes.map(({ code }) => code);
  bench.do({ kind: 'set-key', position: 'off' });
  return codes;
}

const MOST_DRIVES = 4;

/** Drives so many cycles, and again where the monitor found no time to run; whether the last that was judged was passed. */
export function drive(bench: LearnersBench, cycles: number): boolean {
  for (let count = 0; count < MOST_DRIVES; count++) {
    bench.do({ kind: 'road-test', cycles });
    const judged = (bench.see().lastDrive?.cycles ?? []).filter(({ outcome }) => outcome !== 'not-run');
    const last = judged.at(-1);
    if (last !== undefined) return last.outcome === 'passed';
  }
  return false;
}

/** Fits a new item, and does the tests that decide over it once more on the part as fitted, with proven tools. */
export function renewAndRetest(hands: Technician, item: ItemId): void {
  renew(hands.bench, item);
  for (const test of DECIDING[item]) hands.workProven(test);
}

/** The first thing written down, to have something to cite; nothing where nothing could be read. */
export function firstEntry({ log }: LearnersBench): readonly number[] {
  return log.slice(0, 1).map(({ id }) => id);
}
