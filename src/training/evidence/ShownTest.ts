import type { Shown } from './Shown.ts';
import { type ShownMark, shownMarks } from './testLikelihood.ts';

/** What a test showed, once or several times over: by read mark, and by trial. */
export interface ShownTest {
  readonly marks: readonly ShownMark[];
  /** What belongs to each trial, in order: the first reading of every mark, the second of every mark, and so on. */
  readonly trials: readonly (readonly Shown[])[];
}

export function shownTest(shown: readonly Shown[]): ShownTest {
  return { marks: shownMarks(shown), trials: trialsOf(shown) };
}

/** A mark that is read less often than others is spread over their trials evenly. */
export function trialsOf(shown: readonly Shown[]): readonly (readonly Shown[])[] {
  const marks = new Map<string, Shown[]>();
  for (const one of shown) {
    const key = `${one.channel} ${one.setUp}`;
    const all = marks.get(key) ?? [];
    marks.set(key, all);
    all.push(one);
  }
  const count = Math.max(0, ...[...marks.values()].map((all) => all.length));
  const trials: Shown[][] = Array.from({ length: count }, () => []);
  for (const all of marks.values()) {
    for (const [i, one] of all.entries()) trials[Math.floor((i * count) / all.length)]?.push(one);
  }
  return trials;
}
