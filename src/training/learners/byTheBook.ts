import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { Citations } from './cites.ts';
import type { Learner } from './Learner.ts';
import { clearCodes, drive, readCodes, renewAndRetest, testNewUnit } from './repair.ts';
import { Technician } from './Technician.ts';
import { verdictOf } from './verdict.ts';

/** One order for every truck, as a trade's book has it: eyes, tools, circuits under load, unit, hoses. What a rig has not is passed over. */
const BOOK: readonly StandardTestId[] = [
  'codes-and-freeze-data',
  'look-around',
  'look-plug',
  'drag-terminals',
  'look-fuse',
  'battery-under-load',
  'feed-drop',
  'ground-drop',
  'command-clicks',
  'reader-at-rest',
  'sense-at-plug',
  'sense-at-controller',
  'sense-with-solenoid-on',
  'vacuum-and-sense',
  'hold-capped',
  'look-into-hoses',
  'coil-ohms',
  'jumper-clicks',
  'sense-parted',
  'bridge-3-to-2',
  'cavities-2-to-3-ohms',
  'wiggle-sense',
  'trip-and-reset',
  'travel-vacuum',
  'run-and-return',
  'smoke-vessel-alone',
  'smoke-unit-alone',
  'smoke-air-hose',
  'engine-port-hold',
  'engine-vacuum-at-hose',
  'stroke-jar',
  'slow-strokes-jar',
  'vent-shut-hold',
];
/** What is done on every truck, however early something turns out plainly bad. */
const ON_EVERY_TRUCK: readonly StandardTestId[] = [
  'feed-drop',
  'ground-drop',
  'command-clicks',
  'vacuum-and-sense',
  'hold-capped',
];
const PLAINLY = 0.9;
/** Where the road finds more, the book is begun again. */
const MOST_REPAIRS = 2;
const CYCLES = 2;

/** Works the book from the top, stops when something is plainly bad, and cites what says so. */
export const byTheBook: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  workBook(hands);
  for (const test of ON_EVERY_TRUCK) if (!hands.done.has(test)) hands.workProven(test);
  const verdict = verdictOf(hands.beliefs, new Citations(hands.beliefs));
  bench.do({ kind: 'give-verdict', ...verdict });
  let { item } = verdict;
  for (let count = 0; count < MOST_REPAIRS; count++) {
    const codes = mendAndDrive(hands, item);
    if (codes.length === 0) break;
    hands.beginAgain(codes);
    workBook(hands);
    item = hands.beliefs.posterior.leading().item as VerdictItem;
  }
  bench.do({ kind: 'close-job' });
};

function workBook(hands: Technician): void {
  const isPlain = (): boolean => hands.beliefs.posterior.leading().chance >= PLAINLY;
  for (const test of BOOK) if (hands.has(test) && !isPlain()) hands.workProven(test);
}

/** Renews an item and proves the repair on the road; gives the codes that came back where it failed there. */
function mendAndDrive(hands: Technician, item: VerdictItem): readonly string[] {
  const { bench } = hands;
  if (item !== 'nothing-wrong' && !TOOL_ITEMS.includes(item)) {
    if (item === 'unit') testNewUnit(hands);
    renewAndRetest(hands, item);
  }
  clearCodes(bench);
  const passed = drive(bench, CYCLES);
  const codes = readCodes(bench);
  return passed ? [] : codes;
}
