import type { Random } from '../../base/Random.ts';
import { type ItemId, TOOL_ITEMS } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { bestNextTest } from '../evidence/bestNextTest.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { proofsFor } from '../evidence/toolProofs.ts';
import { standardTest } from './LearnersBench.ts';
import type { Note } from './Note.ts';
import type { Weigher } from './weighByTable.ts';

/** What random hands work at: a bare bench, or a sitting. */
export interface RandomBench {
  /** Works a standard test and gives what it showed. */
  readonly test: (id: StandardTestId) => readonly Note[];
  readonly renew: (item: ItemId) => void;
}

/** Share of sittings in which every test is done again and again: four times, but twice where it takes minutes. */
const HEAVY_SHARE = 0.5;
const REPEATS = 4;
const LONG_REPEATS = 2;
const LONG_MINUTES = 4;
const FEWEST_TESTS = 2;
/** Half of the tests are chosen well, half anyhow. */
const CHOSEN_WELL = 0.5;
/** Half of the hands prove a tool before they use it, and renew one that is likelier bad than good. */
const PROVES_TOOLS = 0.5;
const LIKELIER_BAD = 0.5;

/** Does tests in random number (two to `mostTests`, and proofs of tools) and order; returns everything that was shown. */
export function workAtRandom(
  bench: RandomBench,
  weigher: Weigher,
  tables: EvidenceTables,
  random: Random,
  mostTests: number,
): readonly Note[] {
  const heavy = random.next() < HEAVY_SHARE;
  const provesTools = random.next() < PROVES_TOOLS;
  const count = FEWEST_TESTS + Math.floor(random.next() * (mostTests - FEWEST_TESTS + 1));
  const notes: Note[] = [];
  const done = new Set<StandardTestId>();
  const work = (id: StandardTestId): void => {
    done.add(id);
    const minutes = tables.minutes[tables.tests.findIndex((test) => test.id === id)] ?? 0;
    const repeats = minutes >= LONG_MINUTES ? LONG_REPEATS : REPEATS;
    const times = heavy ? repeats : 1;
    for (let time = 0; time < times; time++) notes.push(...bench.test(id));
  };
  const prove = (id: StandardTestId): void => {
    for (const proof of proofsFor(standardTest(tables.rig, id))) {
      if (done.has(proof)) continue;
      work(proof);
      const posterior = weigher.posterior(notes);
      for (const tool of TOOL_ITEMS) if (posterior.ofTool(tool) > LIKELIER_BAD) bench.renew(tool);
    }
  };
  for (let i = 0; i < count; i++) {
    const id = nextTest(weigher, notes, tables, done, random);
    if (done.has(id)) continue;
    if (provesTools) prove(id);
    work(id);
  }
  return notes;
}

function nextTest(
  weigher: Weigher,
  notes: readonly Note[],
  tables: EvidenceTables,
  done: ReadonlySet<StandardTestId>,
  random: Random,
): StandardTestId {
  const any = Math.floor(random.next() * tables.tests.length);
  const well = random.next() < CHOSEN_WELL;
  const numbers = new Set(tables.tests.flatMap(({ id }, t) => (done.has(id) ? [t] : [])));
  const best = well
    ? bestNextTest(weigher.posterior(notes).suspects, tables.evidence, tables.minutes, numbers)
    : null;
  return (tables.tests[best?.test ?? any] as EvidenceTables['tests'][number]).id;
}
