import { describe, expect, it } from 'vitest';
import type { Suspect } from '../../src/training/evidence/Suspect.ts';
import { TestEvidence } from '../../src/training/evidence/TestEvidence.ts';
import { worthOfRepeat } from '../../src/training/evidence/worthOfRepeat.ts';
import { click, faultOf, madeUp, tableOfClicks } from './madeUp.ts';

/** Sticks by this chance at each trial: its good face is a sound truck, its bad one has a case of its own. */
function sticky(chance: number): Suspect {
  return madeUp(`sticky-${chance}`, 'unit', 'x', {
    faces: { chance, trialOf: 'energised', good: [], bad: [faultOf('always-sticks')] },
  });
}
const sound = madeUp('nothing-wrong', 'nothing-wrong', 'x', { faults: [] });
const twoWays = (chance: number): TestEvidence =>
  // Cases: sound, sticky (as its draws came out), and the face that sticks always.
  new TestEvidence([sound, sticky(chance)], tableOfClicks({ listen: 'yyn', other: 'yyy' }));

/**
 * Worked by hand from the table of error rates. Anything at all 3 %, a click missed 4 %, heard for nothing 2 %:
 * a click is shown with 0.015 + 0.97·0.96 = 0.9462 where there is one, with 0.015 + 0.97·0.02 = 0.0344 where there is none.
 * So a quiet trial leaves 1 − p + p·0.0344/0.9462 of a suspect that sticks by chance p.
 */
const quietLeaves = (p: number): number => 1 - p + (p * 0.0344) / 0.9462;

describe('repeats of what comes and goes', () => {
  it.each([0.2, 0.3, 0.6])('every quiet trial counts: chance %d', (p) => {
    const evidence = twoWays(p);
    for (const trials of [1, 3, 9]) {
      const shown = Array.from({ length: trials }, () => click('listen', true));
      const [, left = 0] = evidence.after([0.5, 0.5], new Map([[0, shown]]));
      const factor = quietLeaves(p) ** trials;
      expect(left).toBeCloseTo(factor / (1 + factor), 9);
    }
  });

  it('nine quiet trials leave less than 5 % of a chance of 0.3, where both were even', () => {
    const nine = Array.from({ length: 9 }, () => click('listen', true));
    const [, left = 0] = twoWays(0.3).after([0.5, 0.5], new Map([[0, nine]]));
    expect(left).toBeLessThan(0.05);
    const [, more = 0] = twoWays(0.3).after([0.5, 0.5], new Map([[0, nine.slice(0, 6)]]));
    expect(more).toBeGreaterThan(0.05);
  });

  it('two bad trials of nine speak for it, whenever they came', () => {
    const trials = (...bad: number[]) =>
      Array.from({ length: 9 }, (_, i) => click('listen', !bad.includes(i)));
    const early = twoWays(0.3).after([0.5, 0.5], new Map([[0, trials(0, 1)]]));
    const late = twoWays(0.3).after([0.5, 0.5], new Map([[0, trials(4, 8)]]));
    expect(early[1]).toBeGreaterThan(0.8);
    expect(early[1]).toBeCloseTo(late[1] ?? 0, 9);
  });

  it('what is always there is not counted again', () => {
    const evidence = new TestEvidence([sound, madeUp('dead', 'unit', 'x')], tableOfClicks({ listen: 'yn' }));
    const once = evidence.after([0.5, 0.5], new Map([[0, [click('listen', true)]]]));
    const often = evidence.after([0.5, 0.5], new Map([[0, [1, 2, 3].map(() => click('listen', true))]]));
    expect(often[1]).toBeCloseTo(once[1] ?? 0, 12);
  });

  it('a repeat is worth less and less once it has stayed quiet for a while, and nothing where the test does not show it', () => {
    const evidence = twoWays(0.3);
    let chances: readonly number[] = [0.5, 0.5];
    const worths = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((quiet) => {
      const shown = Array.from({ length: quiet }, () => click('listen', true));
      chances = evidence.after([0.5, 0.5], quiet === 0 ? new Map() : new Map([[0, shown]]));
      return worthOfRepeat(chances, evidence, 0);
    });
    for (const [i, worth] of worths.entries()) if (i > 1) expect(worth).toBeLessThan(worths[i - 1] ?? 0);
    expect(worths.at(-1)).toBeLessThan((worths[0] ?? 0) / 1.5);
    expect(worthOfRepeat([0.5, 0.5], evidence, 1)).toBe(0);
    expect(worthOfRepeat([1, 0], evidence, 0)).toBe(0);
  });

  it('by hand: from even, at chance 0.5, a repeat tells 1 − 0.75·H(1/3) = 0.311 bits', () => {
    // It shows in one of four; then it is certain. Else two to one are left: H(1/3) = 0.9183.
    expect(worthOfRepeat([0.5, 0.5], twoWays(0.5), 0)).toBeCloseTo(1 - 0.75 * 0.9182958, 6);
  });

  describe('what shows only when the harness is moved', () => {
    const moved = madeUp('loose', 'plug', 'x', {
      faces: { chance: 0.5, trialOf: 'moved', good: [], bad: [faultOf('always-loose')] },
    });
    const shown = (mark: string) => [...mark].map((one) => [click('tug', one === 'y')]);
    const inTest = (test: string): TestEvidence =>
      new TestEvidence([sound, moved], { tests: [test], outcomes: [[shown('yyyy'), shown('ynyn')]] });
    const quiet = (evidence: TestEvidence, runs: number): number =>
      evidence.after([0.5, 0.5], new Map([[0, Array.from({ length: runs }, () => click('tug', true))]]))[1] ??
      0;

    it('is less and less likely with every quiet run of a test that moves it', () => {
      const evidence = inTest('wiggle-feed');
      expect(worthOfRepeat([0.5, 0.5], evidence, 0)).toBeGreaterThan(0.2);
      expect(quiet(evidence, 1)).toBeLessThan(0.4);
      expect(quiet(evidence, 4)).toBeLessThan(quiet(evidence, 1) / 2);
    });

    it('stays as it lies in one that does not: quiet runs take nothing from it, but a bad one shows it', () => {
      const evidence = inTest('feed-drop');
      expect(worthOfRepeat([0.5, 0.5], evidence, 0)).toBe(0);
      expect(quiet(evidence, 1)).toBeCloseTo(0.5, 9);
      expect(quiet(evidence, 4)).toBeCloseTo(0.5, 9);
      const [, bad = 0] = evidence.after([0.5, 0.5], new Map([[0, [click('tug', false)]]]));
      expect(bad).toBeGreaterThan(0.8);
    });
  });
});
