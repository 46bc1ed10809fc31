import type { ItemId } from '../../sim/devices/items.ts';
import { TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { Sign } from '../../sim/world/Observation.ts';
import { isProven } from '../evidence/bestNextTest.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { bestOf } from './bestOf.ts';
import { markBoard } from './board.ts';
import { Citations } from './cites.ts';
import type { Learner } from './Learner.ts';
import { checkLock, clearCodes, drive, readCodes, renewAndRetest, testNewUnit } from './repair.ts';
import { isSurprise, readsDead } from './surprise.ts';
import { Technician } from './Technician.ts';
import { verdictOf } from './verdict.ts';

/**
 * Proves its tools, follows the best next test until an item and what is wrong with it stand proven, does what the trade
 * asks for besides, gives reasons for every mark, and proves the repair.
 */
export const careful: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  hands.work('codes-and-freeze-data');
  for (const test of CHEAP) take(hands, test);
  prove(hands);
  for (const test of DUTIES) if (!hands.done.has(test)) take(hands, test);
  if (needsLoaded(hands)) for (const test of LOADED) if (!hands.done.has(test)) take(hands, test);
  prove(hands);
  tryAgain(hands);
  const roots = rootsSeen(hands);
  const verdict = verdictOf(hands.beliefs, new Citations(hands.beliefs));
  markBoard(bench, hands.beliefs, verdict.item);
  bench.do({ kind: 'give-verdict', ...verdict });
  mend(hands, verdict.item, roots);
  bench.do({ kind: 'close-job' });
};

/** Eyes first: they cost little. */
const CHEAP: readonly StandardTestId[] = ['look-around', 'look-plug', 'look-into-hoses'];
/** What the trade wants to have seen before anything is condemned. */
const DUTIES: readonly StandardTestId[] = ['command-clicks', 'vacuum-and-sense', 'hold-capped'];
const LOADED: readonly StandardTestId[] = ['feed-drop', 'ground-drop'];
const MOST_TESTS = 30;
const MOST_REPEATS = 2;
/** Chance of something that comes and goes, from which a test is worth doing again. */
const MAY_COME_AND_GO = 0.02;

/** A broken lead reads nothing as well: the known source says which it was. */
const PROVES_AGAIN: StandardTestId = 'meter-on-battery';

/** A test with proven tools; after a surprise they are proven again, and the test is done again if one was bad. */
function take(hands: Technician, test: StandardTestId): void {
  const { tables } = hands.bench;
  const notes = hands.workProven(test);
  if (readsDead(tables, notes)) hands.prove(PROVES_AGAIN);
  if (isSurprise(tables, notes) && hands.proveAgain(test)) hands.work(test);
}

function prove(hands: Technician): void {
  for (let count = 0; count < MOST_TESTS && !standsProven(hands); count++) {
    const next = bestOf(hands);
    if (next === null) return;
    take(hands, next);
  }
}

/** What comes and goes is given another chance to show. */
function tryAgain(hands: Technician): void {
  const { suspects } = hands.bench.tables;
  for (let count = 0; count < MOST_REPEATS && !standsProven(hands); count++) {
    const { chances } = hands.beliefs;
    const shifty = suspects.reduce(
      (sum, { faces }, s) => (faces === null ? sum : sum + (chances[s] ?? 0)),
      0,
    );
    const next = shifty < MAY_COME_AND_GO ? null : bestOf(hands, 'all');
    if (next === null) return;
    take(hands, next);
  }
}

function standsProven({ beliefs, bench }: Technician): boolean {
  return isProven(bench.tables.suspects, beliefs.chances);
}

const CIRCUIT: readonly VerdictItem[] = [
  'feed-wire',
  'ground-wire',
  'plug',
  'fuse',
  'key-switch',
  'battery',
  'controller',
];
const READS_CIRCUIT: readonly StandardTestId[] = [
  'feed-at-rest',
  'feed-wire-drop',
  'feed-bias-10-megohm',
  'feed-bias-3-kilohm',
  'lamp-on-ground',
  'wiggle-feed',
  'wiggle-ground',
  ...LOADED,
];

/** A circuit was suspected: then its feed and its ground are read under load. */
function needsLoaded(hands: Technician): boolean {
  const { item } = hands.beliefs.posterior.leading();
  return CIRCUIT.some((one) => one === item) || READS_CIRCUIT.some((test) => hands.done.has(test));
}

/** What spoils a new part again, and what cures it: from the service data. */
const ROOTS: readonly { readonly sign: Sign; readonly at: StandardTestId; readonly item: ItemId }[] = [
  { sign: 'charcoal', at: 'look-into-hoses', item: 'canister' },
  { sign: 'fuel', at: 'look-into-hoses', item: 'canister' },
  { sign: 'water', at: 'look-around', item: 'filter' },
];

function rootsSeen({ bench }: Technician): readonly ItemId[] {
  const seen = ROOTS.filter(({ sign, at }) =>
    bench.notes.some(({ test, shown }) => test === at && String(shown.value).includes(sign)),
  );
  return [...new Set(seen.map(({ item }) => item))];
}

const CYCLES = 3;

function mend({ bench }: Technician, item: VerdictItem, roots: readonly ItemId[]): void {
  if (item !== 'nothing-wrong' && !TOOL_ITEMS.includes(item)) {
    for (const root of roots) if (root !== item) renewAndRetest(bench, root);
    if (item === 'unit') testNewUnit(bench);
    renewAndRetest(bench, item);
  }
  checkLock(bench);
  clearCodes(bench);
  drive(bench, CYCLES);
  readCodes(bench);
}
