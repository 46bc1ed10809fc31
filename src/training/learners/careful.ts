import { type ItemId, TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { ExaminedPlace } from '../../sim/devices/places.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { Sign } from '../../sim/world/Observation.ts';
import { type PlanBench, planOf } from '../evidence/par.ts';
import { SUPPLY_ITEMS } from '../evidence/supplyItems.ts';
import { priceOf } from '../sitting/book.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { markBoard } from './board.ts';
import { Citations } from './cites.ts';
import type { Learner } from './Learner.ts';
import type { LearnersBench } from './LearnersBench.ts';
import { checkLock, clearCodes, drive, readCodes, renewAndRetest, testNewUnit } from './repair.ts';
import { isSurprise, readsDead } from './surprise.ts';
import { Technician } from './Technician.ts';
import { verdictOf } from './verdict.ts';

const FIRST: StandardTestId = 'codes-and-freeze-data';
/** A broken lead reads nothing as well: the known source says which it was. */
const PROVES_AGAIN: StandardTestId = 'meter-on-battery';
const CYCLES = 2;

/**
 * Follows the best next test until an item and what is wrong with it stand proven, with tools that were proven, does what the
 * trade asks for besides, gives reasons for every mark, and proves the repair.
 */
export const careful: Learner = (bench) => {
  const hands = new Technician(bench);
  bench.do({ kind: 'accept-job' });
  hands.work(FIRST);
  const looked = looksFirst(hands);
  planOf(
    hands.beliefs.chances,
    bench.tables,
    planned(hands),
    new Set([FIRST, ...looked, ...bench.notAtHand]),
  );
  besides(hands);
  const roots = rootsSeen(hands);
  const verdict = verdictOf(hands.beliefs, new Citations(hands.beliefs));
  markBoard(bench, hands.beliefs, verdict.item);
  bench.do({ kind: 'give-verdict', ...verdict });
  mend(hands, verdict.item, roots);
  bench.do({ kind: 'close-job' });
};

/** A look of two minutes each, done first where the complaint makes it likely to find something. */
const QUICK_LOOKS: readonly { readonly item: ItemId; readonly test: StandardTestId }[] = [
  { item: 'fuse', test: 'look-fuse' },
  { item: 'plug', test: 'look-plug' },
];

function looksFirst(hands: Technician): readonly StandardTestId[] {
  const { beliefs } = hands;
  const before = beliefs.posteriorOf(beliefs.prior);
  const tests = QUICK_LOOKS.flatMap(({ item, test }) => (before.ofItem(item) >= LIKELY ? [test] : []));
  for (const test of tests) hands.work(test);
  return tests;
}

/**
 * The bench as a plan works on it. After a reading of nothing the meter is proven again, after a surprise every tool of the
 * test; a tool that fails its proof is replaced, and what was read with it is struck out.
 */
function planned(hands: Technician): PlanBench {
  const { bench } = hands;
  return {
    show: ({ id }) => {
      const notes = hands.work(id);
      if (readsDead(bench.tables, notes)) hands.prove(PROVES_AGAIN);
      const again = isSurprise(bench.tables, notes) && hands.proveAgain(id);
      return (again ? hands.work(id) : notes).map(({ shown }) => shown);
    },
    renew: (tool) => {
      hands.replace(tool);
      return true;
    },
  };
}

const READS_CIRCUIT: readonly StandardTestId[] = [
  'feed-drop',
  'ground-drop',
  'feed-at-rest',
  'feed-wire-drop',
  'sense-with-solenoid-on',
  'feed-bias-10-megohm',
  'feed-bias-3-kilohm',
  'lamp-on-ground',
  'wiggle-feed',
  'wiggle-ground',
];
/** Tests with too few trials of the switch, or of the click, to stand by themselves. */
const FEW_DRAWS: readonly StandardTestId[] = [
  'switch-ohms',
  'trip-and-reset',
  'travel-vacuum',
  'tug-plug-switch-closed',
];

/** What the trade asks for beyond what the plan has shown. */
function besides(hands: Technician): void {
  const { done, beliefs } = hands;
  const { item } = beliefs.posterior.leading();
  const has = (tests: readonly StandardTestId[]): boolean => tests.some((test) => done.has(test));
  const circuit = SUPPLY_ITEMS.has(item as VerdictItem) || has(READS_CIRCUIT);
  const asked: readonly StandardTestId[] = [
    ...(circuit ? (['feed-drop', 'ground-drop'] as const) : []),
    ...(has(['jumper-clicks']) ? [] : (['command-clicks'] as const)),
    ...(has(FEW_DRAWS) ? (['vacuum-and-sense'] as const) : []),
    ...(item === 'unit' ? (['look-into-hoses'] as const) : []),
  ];
  for (const test of asked) if (!done.has(test)) hands.workProven(test);
  if (!done.has('look-around'))
    for (const at of placesToLook(hands, item as VerdictItem)) look(hands.bench, at);
}

/** Where an eye goes for what is cheap and likely, and for what spoils a unit again. */
const LOOKED_AT: Readonly<Partial<Record<VerdictItem, ExaminedPlace>>> = {
  'filler-cap': 'filler-cap',
  'canister-hose': 'canister-hose',
  'air-hose': 'air-hose',
  'engine-hose': 'engine-hose',
  filter: 'filter',
  'feed-wire': 'harness',
  'ground-wire': 'harness',
  'sense-wire': 'harness',
};
const LIKELY = 0.05;
const CHEAP = 40;

function placesToLook({ beliefs }: Technician, named: VerdictItem): readonly ExaminedPlace[] {
  const before = beliefs.posteriorOf(beliefs.prior);
  const now = beliefs.posterior;
  const cheap = Object.entries(LOOKED_AT).flatMap(([item, at]) => {
    const isLeft = before.ofItem(item) >= LIKELY && now.ofItem(item) > before.ofItem(item) / 2;
    return item !== named && isLeft && priceOf(item as ItemId) <= CHEAP ? [at] : [];
  });
  return [...new Set<ExaminedPlace>([...cheap, ...(named === 'unit' ? (['filter'] as const) : [])])];
}

function look(bench: LearnersBench, at: ExaminedPlace): void {
  bench.do({ kind: 'look', at });
}

/** What spoils a new part again, and what cures it: from the service data. */
const ROOTS: readonly {
  readonly sign: Sign;
  readonly at: readonly ExaminedPlace[];
  readonly item: ItemId;
}[] = [
  { sign: 'charcoal', at: ['canister-hose', 'canister', 'unit'], item: 'canister' },
  { sign: 'fuel', at: ['canister-hose', 'canister', 'unit'], item: 'canister' },
  { sign: 'water', at: ['filter'], item: 'filter' },
];

function rootsSeen({ bench }: Technician): readonly ItemId[] {
  const found = bench.log.flatMap(({ about, seen }) => (about === 'finding' ? seen.findings.slice(-1) : []));
  const seen = ROOTS.filter(({ sign, at }) =>
    found.some((one) => one.how === 'look' && at.includes(one.at) && one.signs.includes(sign)),
  );
  return [...new Set(seen.map(({ item }) => item))];
}

/** Jobs behind one another: what one repair uncovers is looked for in its turn. */
const MOST_REPAIRS = 2;

function mend(hands: Technician, first: VerdictItem, roots: readonly ItemId[]): void {
  const { bench } = hands;
  let item = first;
  for (let count = 0; count < MOST_REPAIRS; count++) {
    if (item !== 'nothing-wrong' && !TOOL_ITEMS.includes(item)) {
      for (const root of roots) if (root !== item && count === 0) renewAndRetest(hands, root);
      if (item === 'unit') testNewUnit(hands);
      renewAndRetest(hands, item);
    }
    checkLock(bench);
    clearCodes(bench);
    const passed = drive(bench, CYCLES);
    const codes = readCodes(bench);
    if (passed || codes.length === 0) return;
    hands.beginAgain(codes);
    planOf(hands.beliefs.prior, bench.tables, planned(hands), new Set([FIRST, ...bench.notAtHand]));
    item = hands.beliefs.posterior.leading().item as VerdictItem;
  }
}
