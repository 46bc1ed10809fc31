import type { Shown } from './Shown.ts';

/** What was shown, repeats together, by channel and set-up in the order of their first coming. */
export function byMark(shown: readonly Shown[]): ReadonlyMap<string, Shown[]> {
  const marks = new Map<string, Shown[]>();
  for (const one of shown) {
    const key = `${one.channel} ${one.setUp}`;
    const all = marks.get(key) ?? [];
    marks.set(key, all);
    all.push(one);
  }
  return marks;
}
