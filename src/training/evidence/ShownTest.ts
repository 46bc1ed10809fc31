import { byMark } from './byMark.ts';
import type { Shown } from './Shown.ts';
import { type ShownMark, shownMarks } from './testLikelihood.ts';

/** What a test showed, once or several times over: by read mark, and in order. */
export interface ShownTest {
  readonly marks: readonly ShownMark[];
  readonly shown: readonly Shown[];
}

export function shownTest(shown: readonly Shown[]): ShownTest {
  return { marks: shownMarks(shown), shown };
}

/** Whether two runs showed the very same. Tables that are opened hold equal answers once, so that this is quick. */
export function areTheSame(one: readonly Shown[], other: readonly Shown[]): boolean {
  return one.length === other.length && one.every((shown, i) => shown === other[i]);
}

/** How often the mark is read that is read most often. */
export function trialsIn(shown: readonly Shown[]): number {
  return Math.max(0, ...[...byMark(shown).values()].map((all) => all.length));
}

/** What belongs to each of so many trials, in order. What each mark showed is spread over them evenly. */
export function trialsOf(shown: readonly Shown[], count: number): readonly (readonly Shown[])[] {
  const trials: Shown[][] = Array.from({ length: count }, () => []);
  for (const all of byMark(shown).values()) {
    for (const [i, one] of all.entries()) trials[Math.floor((i * count) / all.length)]?.push(one);
  }
  return trials;
}
