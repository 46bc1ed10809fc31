import { rigNamed } from '../../sim/rigs/rigs.ts';
import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import { itemOf, TrueBench } from '../evidence/TrueBench.ts';
import type { MarkReadings, ReadBench, Telling, TestReadings } from './FaultReadings.ts';
import type { GoodBenches } from './GoodBenches.ts';
import { tellingOf } from './telling.ts';

/**
 * Works every standard test on a bench with faults and holds it against the same bench without: one test a step, a few
 * milliseconds most of them. Those about the faulted items come first, of these the ones that are about little else, so that
 * what tells most is there at once. A test that shows a difference is then held against other good benches too, and comes a
 * second time.
 */
export function* readingsInSteps(
  { faults, seed, environment, renewedBefore }: ReadBench,
  good: GoodBenches,
): Generator<TestReadings, void, void> {
  const bench = new TrueBench(faults, seed, environment, renewedBefore);
  const unsure: { readonly test: StandardTest; readonly shown: readonly Outcome[] }[] = [];
  for (const test of inOrderFor(faults, rigNamed(environment.rig).tests)) {
    const shown = bench.show(test);
    const others = good.knowsOthers(test) ? good.ofOthers(test) : [];
    const readings = heldAgainst(test, good.ofOwn(test), shown, others);
    if (readings.telling !== 'same' && !good.knowsOthers(test)) unsure.push({ test, shown });
    yield readings;
  }
  for (const { test, shown } of unsure) {
    yield heldAgainst(test, good.ofOwn(test), shown, good.ofOthers(test));
  }
}

/** Works the tests on the good bench ahead of the first fault, one a step. */
export function* warmInSteps(good: GoodBenches): Generator<void, void, void> {
  for (const test of inOrderFor([], rigNamed(good.of.environment.rig).tests)) {
    good.ofOwn(test);
    yield;
  }
}

function heldAgainst(
  { id }: StandardTest,
  good: readonly Outcome[],
  faulted: readonly Outcome[],
  others: readonly Outcome[],
): TestReadings {
  const marks = byMark(good, faulted, others);
  return { test: id, marks, telling: strongest(marks.map(({ telling }) => telling)) };
}

/** Tests of the faulted items first, the drives last: they take longest. */
function inOrderFor(faults: readonly FaultChoice[], tests: readonly StandardTest[]): readonly StandardTest[] {
  const items = new Set(faults.map(itemOf));
  const rank = ({ about, leaves }: StandardTest): number => {
    if (leaves.includes('miles')) return LAST;
    return about.some((item) => items.has(item)) ? about.length : LAST - 1;
  };
  return [...tests].sort((one, other) => rank(one) - rank(other));
}
const LAST = 1000;

/** What was shown, mark by mark in the order of the test; a mark that only one of the benches came to is there too. */
function byMark(
  good: readonly Outcome[],
  faulted: readonly Outcome[],
  others: readonly Outcome[],
): readonly MarkReadings[] {
  const names = new Set([...good, ...faulted].map(nameOf));
  return [...names].map((name) => {
    const at = (all: readonly Outcome[]): readonly Outcome[] => all.filter((one) => nameOf(one) === name);
    const [own, bad, rest] = [at(good), at(faulted), at(others)];
    const [first] = own.length > 0 ? own : bad;
    return {
      setUp: first?.setUp ?? name,
      good: own,
      faulted: bad,
      others: rest,
      telling: tellingOf(own, bad, rest),
    };
  });
}

const nameOf = ({ channel, setUp }: Outcome): string => `${channel} ${setUp}`;

function strongest(all: readonly Telling[]): Telling {
  if (all.includes('tells')) return 'tells';
  return all.includes('own-only') ? 'own-only' : 'same';
}
