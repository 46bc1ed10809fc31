import { pow } from '../../base/maths.ts';
import { likelihood } from './likelihood.ts';
import type { TestDraws } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';

type Answer = Shown['value'];

/** What a suspect foretells at one read mark. */
interface ForetoldMark {
  /** Whether repeats in one draw are all alike. */
  readonly steady: boolean;
  /** One answer for each draw; where the suspect comes and goes, one for each repeat of each draw. */
  readonly draws: readonly Answer[];
  readonly all: readonly Answer[];
}

/** What a test foretells of one suspect, by read mark. */
export type ForetoldTest = ReadonlyMap<string, ForetoldMark>;

const markOf = ({ channel, setUp }: Shown): string => `${channel} ${setUp}`;

export function foretoldTest(draws: TestDraws): ForetoldTest {
  const marks = new Map<string, Answer[][]>();
  for (const [d, shown] of draws.entries()) {
    for (const one of shown) {
      const repeats = marks.get(markOf(one)) ?? draws.map(() => []);
      marks.set(markOf(one), repeats);
      repeats[d]?.push(one.value);
    }
  }
  return new Map(
    [...marks].map(([mark, repeats]) => {
      const steady = repeats.every(isSteady);
      const all = repeats.flat();
      return [mark, { steady, draws: steady ? repeats.flatMap((one) => one.slice(0, 1)) : all, all }];
    }),
  );
}

/** What was shown at one read mark, repeats together. */
export interface ShownMark {
  readonly mark: string;
  /** Marks of the test at which its channel showed a number; 1 for all else. */
  readonly kin: number;
  readonly answers: { shown: Shown; count: number }[];
}

/** What a test showed, by read mark. */
export function shownMarks(shown: readonly Shown[]): readonly ShownMark[] {
  const marks = new Map<string, Pick<ShownMark, 'mark' | 'answers'>>();
  const numbers = new Map<string, number>();
  for (const one of shown) {
    const mark = markOf(one);
    let there = marks.get(mark);
    if (there === undefined) {
      there = { mark, answers: [] };
      marks.set(mark, there);
      if (one.kind === 'number') numbers.set(one.channel, (numbers.get(one.channel) ?? 0) + 1);
    }
    const alike = there.answers.find((answer) => areAlike(answer.shown, one));
    if (alike === undefined) there.answers.push({ shown: one, count: 1 });
    else alike.count++;
  }
  return [...marks.values()].map(({ mark, answers }) => {
    const first = answers[0]?.shown;
    return { mark, answers, kin: first?.kind === 'number' ? (numbers.get(first.channel) ?? 1) : 1 };
  });
}

function areAlike(a: Shown, b: Shown): boolean {
  if (a.kind !== 'number' || b.kind !== 'number') return a.value === b.value;
  if (typeof a.value !== 'number' || typeof b.value !== 'number') return a.value === b.value;
  return Math.abs(a.value - b.value) <= 2 * Math.max(a.half, b.half);
}

const UNASKED: ForetoldMark = { steady: true, draws: [], all: [] };

/**
 * Likelihood of what a test showed where a suspect foretells this. Repeats at one mark share everything unless the
 * suspect itself comes and goes. `beside` are the neighbours in degree. Numbers of one channel in one test hang together:
 * m of them weigh as √m.
 */
export function testLikelihood(
  marks: readonly ShownMark[],
  foretold: ForetoldTest,
  beside: readonly ForetoldTest[],
): number {
  let product = 1;
  for (const { mark, answers, kin } of marks) {
    const { steady, draws } = foretold.get(mark) ?? UNASKED;
    const next = beside.length === 0 ? NONE : beside.map((other) => other.get(mark)?.all ?? []);
    const each = answers.length > 1 || !steady;
    for (const { shown, count } of answers) {
      let one = likelihood(shown, { draws, beside: next });
      if (shown.kind === 'number' && kin > 1) one = pow(one, 1 / Math.sqrt(kin));
      for (let i = 0; i < (each ? count : 1); i++) product *= one;
    }
  }
  return product;
}

const NONE: readonly (readonly Answer[])[] = [];

function isSteady(repeats: readonly Answer[]): boolean {
  return repeats.every((value) => {
    const first = repeats[0];
    if (typeof value === 'number' && typeof first === 'number') {
      return Math.abs(value - first) <= 0.1 * Math.max(Math.abs(value), Math.abs(first)) + 0.02;
    }
    return value === first;
  });
}
