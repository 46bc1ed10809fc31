import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { TRUCK_ITEMS } from '../evidence/chanceOf.ts';
import { MAX_CITATIONS } from '../sitting/mayAct.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { bestOf } from './bestOf.ts';
import { drawnItem, favourite } from './byPrior.ts';
import { renew } from './fitting.ts';
import type { Learner } from './Learner.ts';
import type { LearnersBench } from './LearnersBench.ts';
import { clearCodes, DECIDING, drive, readCodes, renewAndRetest, testNewUnit } from './repair.ts';
import { Technician } from './Technician.ts';
import { modeOf } from './verdict.ts';

/** Learners who play for points. They keep what rules they can, and reason about nothing. */

const CYCLES = 3;

/** What earns points for method whatever it shows. */
const RITUALS: readonly StandardTestId[] = [
  'codes-and-freeze-data',
  'look-around',
  'look-into-hoses',
  'feed-drop',
  'ground-drop',
  'command-clicks',
  'vacuum-and-sense',
  'hold-capped',
];

/** Does every test that there is, writes everything down, and then names anything. */
export const logsEverything: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  for (const { id } of bench.tables.tests) if (!hands.done.has(id)) hands.workProven(id);
  const item = drawnItem(hands.beliefs, bench.random);
  giveVerdict(bench, item, null, lastEntries(bench));
  mendByRitual(bench, item);
};

/** Names what it usually is. */
export const namesTheFavourite: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  hands.work('codes-and-freeze-data');
  const item = favourite(hands.beliefs);
  giveVerdict(bench, item, modeOf(hands.beliefs, item), [1]);
  mendByRitual(bench, item);
};

/** Marks the whole board, each mark with whatever entries there are. */
export const marksAll: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  for (const test of RITUALS) hands.workProven(test);
  const item = favourite(hands.beliefs);
  const cites = lastEntries(bench);
  for (const one of TRUCK_ITEMS)
    bench.do({ kind: 'mark-item', item: one, mark: one === item ? 'convicted' : 'cleared', cites });
  giveVerdict(bench, item, null, cites);
  mendByRitual(bench, item);
};

const SPAMMED = 6;

/** Does one good test again and again. */
export const spamsOneTest: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  const test = bestOf(hands) ?? 'command-clicks';
  for (let count = 0; count < SPAMMED; count++) hands.workProven(test);
  const item = hands.beliefs.posterior.leading().item as VerdictItem;
  giveVerdict(bench, item, modeOf(hands.beliefs, item), lastEntries(bench));
  mendByRitual(bench, item);
};

/** Renews what it usually is, and does all the tests afterwards. */
export const swapsFirst: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  hands.work('codes-and-freeze-data');
  const item = favourite(hands.beliefs);
  bench.do({ kind: 'give-verdict', item, mode: null, cites: [1] });
  if (item !== 'nothing-wrong') renew(bench, item);
  for (const test of RITUALS) hands.workProven(test);
  clearCodes(bench);
  drive(bench, CYCLES);
  readCodes(bench);
  bench.do({ kind: 'close-job' });
};

/** Somebody said what it is: everything is done as it should be, and nothing is shown. */
export function toldTheAnswer(item: VerdictItem, mode: string | null): Learner {
  return (bench) => {
    const hands = new Technician(bench);
    bench.do({ kind: 'accept-job' });
    for (const test of RITUALS) hands.workProven(test);
    giveVerdict(bench, item, mode, [1, 2, 3]);
    mendByRitual(bench, item);
  };
}

function lastEntries(bench: LearnersBench): readonly number[] {
  const entries = bench.log.map(({ id }) => id);
  return entries.slice(-MAX_CITATIONS);
}

function giveVerdict(
  bench: LearnersBench,
  item: VerdictItem,
  mode: string | null,
  cites: readonly number[],
): void {
  bench.do({ kind: 'give-verdict', item, mode, cites });
}

/** A repair with everything that earns points. */
function mendByRitual(bench: LearnersBench, item: VerdictItem): void {
  if (item !== 'nothing-wrong' && !TOOL_ITEMS.includes(item)) {
    if (item === 'unit') testNewUnit(bench, DECIDING.unit);
    renewAndRetest(bench, item);
  }
  clearCodes(bench);
  drive(bench, CYCLES);
  readCodes(bench);
  bench.do({ kind: 'close-job' });
}
