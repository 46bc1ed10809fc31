import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { truckItemsOf } from '../evidence/chanceOf.ts';
import { MAX_CITATIONS } from '../sitting/mayAct.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { drawnItem, favourite } from './byPrior.ts';
import { renew } from './fitting.ts';
import type { Learner } from './Learner.ts';
import type { LearnersBench } from './LearnersBench.ts';
import {
  checkLock,
  clearCodes,
  drive,
  firstEntry,
  readCodes,
  renewAndRetest,
  testNewUnit,
} from './repair.ts';
import { Technician } from './Technician.ts';
import { modeOf } from './verdict.ts';

/** Learners who play for points. They keep what rules they can, and reason about nothing. */

const CYCLES = 2;

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

/** Something to cite. */
const TOKEN: readonly StandardTestId[] = ['codes-and-freeze-data', 'meter-on-battery'];

/** Does every test that there is, writes everything down, and then names any card and cites anything. */
export const logsEverything: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  for (const { id } of bench.tables.tests) if (!hands.done.has(id)) hands.workProven(id);
  const item = anyOf(bench, truckItemsOf(bench.tables.rig));
  const cites = Array.from({ length: MAX_CITATIONS }, () => anyOf(bench, bench.log).id);
  giveVerdict(bench, item, null, [...new Set(cites)]);
  mendByRitual(hands, item);
};

/** Names what it usually is. */
export const namesTheFavourite: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  hands.work('codes-and-freeze-data');
  const item = favourite(hands.beliefs);
  giveVerdict(bench, item, modeOf(hands.beliefs, item), firstEntry(bench));
  mendByRitual(hands, item);
};

/** Marks the whole board with next to nothing seen: one item convicted, all others cleared, each with all entries there are. */
export const marksAll: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  for (const test of TOKEN) hands.workProven(test);
  const item = drawnItem(hands.beliefs, bench.random);
  const cites = lastEntries(bench);
  for (const one of truckItemsOf(bench.tables.rig))
    bench.do({ kind: 'mark-item', item: one, mark: one === item ? 'convicted' : 'cleared', cites });
  giveVerdict(bench, item, null, cites);
  mendByRitual(hands, item);
};

const SPAMMED = 6;
const CHEAPEST = 10;

/** Does one of the cheapest tests again and again, as if writing a thing down six times made it truer. */
export const spamsOneTest: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  const { tests, minutes } = bench.tables;
  const cheap = tests
    .map(({ id }, test) => ({ id, takes: minutes[test] ?? 0 }))
    .sort((one, other) => one.takes - other.takes)
    .slice(0, CHEAPEST);
  const { id } = anyOf(bench, cheap);
  for (let count = 0; count < SPAMMED; count++) hands.workProven(id);
  const item = favourite(hands.beliefs);
  giveVerdict(bench, item, modeOf(hands.beliefs, item), lastEntries(bench));
  mendByRitual(hands, item);
};

/** Renews what it usually is, and does all the tests afterwards. */
export const swapsFirst: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  hands.work('codes-and-freeze-data');
  const item = favourite(hands.beliefs);
  bench.do({ kind: 'give-verdict', item, mode: null, cites: firstEntry(bench) });
  if (item !== 'nothing-wrong') renew(bench, item);
  for (const test of RITUALS) hands.workProven(test);
  checkLock(bench);
  clearCodes(bench);
  drive(bench, CYCLES);
  readCodes(bench);
  bench.do({ kind: 'close-job' });
};

/** It takes a minute, so that no entry of its end has anything of the truck in it. */
const PROOF_OF_PUMP: StandardTestId = 'hand-pump-dead-end';

/** Somebody said what it is: everything is done as it should be, and what is cited proves the pump. */
export function toldTheAnswer(item: VerdictItem, mode: string | null): Learner {
  return (bench) => {
    const hands = new Technician(bench);
    bench.do({ kind: 'accept-job' });
    for (const test of RITUALS) hands.workProven(test);
    const proofs = bench.notes.filter(({ test }) => test === PROOF_OF_PUMP).map(({ entry }) => entry);
    giveVerdict(bench, item, mode, [...new Set(proofs)].slice(-2));
    mendByRitual(hands, item);
  };
}

function anyOf<T>({ random }: LearnersBench, all: readonly T[]): T {
  return all[Math.floor(random.next() * all.length)] as T;
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
function mendByRitual(hands: Technician, item: VerdictItem): void {
  const { bench } = hands;
  if (item !== 'nothing-wrong' && !TOOL_ITEMS.includes(item)) {
    if (item === 'unit') testNewUnit(hands);
    renewAndRetest(hands, item);
  }
  checkLock(bench);
  clearCodes(bench);
  drive(bench, CYCLES);
  readCodes(bench);
  bench.do({ kind: 'close-job' });
}
