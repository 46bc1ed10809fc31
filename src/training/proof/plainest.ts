import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { MarkReadings, TestReadings } from './FaultReadings.ts';

/** Tests in the order in which they give a fault away: the plainest reading first, and what is as plain in the order it came. */
export function plainestFirst(tests: readonly TestReadings[]): readonly TestReadings[] {
  const plainness = new Map(tests.map((test) => [test, plainnessOf(test)]));
  return tests
    .map((test, place) => ({ test, place }))
    .sort(
      (one, other) =>
        (plainness.get(other.test) ?? 0) - (plainness.get(one.test) ?? 0) || one.place - other.place,
    )
    .map(({ test }) => test);
}

/** A word, or no figure at all, where a good bench shows another: as plain as can be. */
const ANOTHER_WORD = 1e6;

function plainnessOf({ marks, telling }: TestReadings): number {
  return Math.max(0, ...marks.filter((mark) => mark.telling === telling).map(ofMark));
}

/** How many times its own doubt a reading lies off all that good benches show. */
function ofMark({ good, faulted, others }: MarkReadings): number {
  const fine = numbersOf([...good, ...others]);
  const off = numbersOf(faulted);
  if (fine.length === 0 || off.length === 0) return ANOTHER_WORD;
  const low = Math.min(...fine.map(({ value }) => value));
  const high = Math.max(...fine.map(({ value }) => value));
  const doubt = high - low + Math.max(...[...fine, ...off].map(({ half }) => half));
  const gap = Math.max(...off.map(({ value }) => Math.max(low - value, value - high, 0)));
  return doubt > 0 ? Math.min(gap / doubt, ANOTHER_WORD) : ANOTHER_WORD;
}

function numbersOf(
  outcomes: readonly Outcome[],
): readonly { readonly value: number; readonly half: number }[] {
  return outcomes.flatMap((one) =>
    one.kind === 'number' && typeof one.value === 'number' ? [{ value: one.value, half: one.half }] : [],
  );
}
