import { describe, expect, it } from 'vitest';
import { ITEMS } from '../../src/sim/devices/items.ts';
import { rigNamed } from '../../src/sim/rigs/rigs.ts';
import { STANDARD_TEST_IDS } from '../../src/sim/rigs/standardTests/testIds.ts';

import { coachWords } from '../../src/text/coachWords.ts';
import { coach } from '../../src/text/en/coach.ts';
import { say } from '../../src/text/translate.ts';
import type { Advice } from '../../src/training/coach/Advice.ts';
import { testSheet } from '../../src/training/coach/testSheet.ts';
import { modesOf } from '../../src/training/evidence/modesOf.ts';
import { COACH_DEPTHS } from '../../src/training/sitting/SittingAction.ts';

/** The tests of the leak detection pump. */
const TEST_IDS = rigNamed().tests.map(({ id }) => id);

const EVERY: readonly Advice[] = [
  ...TEST_IDS.flatMap((test): readonly Advice[] => [
    { kind: 'prove-tool', test },
    { kind: 'do-test', test },
    { kind: 'repeat-test', test, done: 1, of: 9 },
    { kind: 'repeat-test', test, done: 3, of: 9 },
  ]),
  { kind: 'decide' },
  { kind: 'nothing-left' },
  { kind: 'prove-repair' },
];

/** Every sentence below a branch of the catalogue. */
function sentences(branch: object): readonly string[] {
  return Object.values(branch).flatMap((one) => (typeof one === 'string' ? [one] : sentences(one as object)));
}

describe("the coach's words", () => {
  it.each(COACH_DEPTHS)('there are some for every advice, with no gap left open: %s', (depth) => {
    for (const advice of EVERY) {
      const { title, says, parts } = coachWords(advice, depth, testSheet);
      const all = [title ?? 'x', ...says, ...parts.flatMap(({ heading, lines }) => [heading, ...lines])];
      expect(says.length, JSON.stringify(advice)).toBeGreaterThan(0);
      for (const sentence of all) {
        expect(sentence.trim(), JSON.stringify(advice)).not.toBe('');
        expect(sentence).not.toMatch(/\{\{|\}\}|undefined|NaN|^coach\./);
      }
    }
  });

  it('a question is one for the head: it asks, it is short, and it does not name the test', () => {
    for (const test of TEST_IDS) {
      const { title, says, parts } = coachWords({ kind: 'do-test', test }, 'question', testSheet);
      expect(title).toBeNull();
      expect(parts).toEqual([]);
      expect(says).toHaveLength(1);
      const question = says[0] ?? '';
      expect(question, test).toMatch(/\?$/);
      expect(question.length, test).toBeLessThan(150);
      const name = say(`standardTests.list.${test}.name`);
      expect(question.toLowerCase()).not.toContain(name.toLowerCase());
    }
    expect(new Set(sentences(coach.coach.questions)).size).toBe(STANDARD_TEST_IDS.length);
  });

  it('a test has its name, what it proves, what it speaks of, and its minutes', () => {
    const { title, says } = coachWords({ kind: 'do-test', test: 'hold-capped' }, 'test', testSheet);
    expect(title).toBe('Hold 15 inHg, unit alone, capped');
    expect(says).toContain('What it proves: Nothing on the canister side of the unit leaks.');
    expect(says.join(' ')).toMatch(/hand pump/);
    expect(says.at(-1)).toMatch(/^\d+ min by the book/);
  });

  it('a procedure begins with its cautions and the bench as found, and ends with putting back', () => {
    for (const test of TEST_IDS) {
      const { parts } = coachWords({ kind: 'do-test', test }, 'procedure', testSheet);
      expect(parts[0]?.heading).toBe('Cautions');
      expect(parts[1]?.lines[0]).toMatch(/^Begin with the bench as it was found/);
      const work = parts.flatMap(({ lines }) => lines).length;
      expect(work, test).toBeGreaterThan(3);
    }
    const smoke = coachWords({ kind: 'do-test', test: 'smoke-vessel-alone' }, 'procedure', testSheet);
    expect(smoke.parts[0]?.lines.join(' ')).toMatch(/inert gas/);
    expect(smoke.parts.at(-1)?.heading).toBe('Put back');
  });

  it('trials are counted in words', () => {
    const words = coachWords(
      { kind: 'repeat-test', test: 'jumper-clicks', done: 1, of: 9 },
      'test',
      testSheet,
    );
    expect(words.says[0]).toBe('One trial so far.');
    expect(words.says[1]).toMatch(/9 trials/);
  });

  it('nothing that the coach says by itself tells what is wrong, or how likely it is', () => {
    const modes = ITEMS.flatMap((item) => modesOf(item).map((mode) => mode.replaceAll('-', ' ')));
    const telling =
      /\b(torn|stuck|sticky|worn|blown|melted|burnt|broken|corroded|cracked|suspects?|likel(y|ier|iest)|probabl[ey])\b/i;
    for (const sentence of sentences(coach)) {
      expect(sentence).not.toMatch(telling);
      for (const mode of modes.filter((name) => name.includes(' '))) expect(sentence).not.toContain(mode);
    }
  });
});
