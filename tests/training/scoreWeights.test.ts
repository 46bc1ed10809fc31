import { describe, expect, it } from 'vitest';
import type { ScoreWeights } from '../../src/training/scenario/weights.ts';
import { bench } from '../support/bench.ts';

const WEIGHTS: ScoreWeights = { verdict: 10, evidence: 60, method: 15, economy: 0, repair: 15 };

/** The same work under whatever weights. */
const work = (weights?: ScoreWeights) =>
  bench()
    .fault('switch-stuck-open')
    .evidence({ weight: 0.5 })
    .job(weights === undefined ? {} : { weights })
    .does('accept\nkey on\nlog\nverdict unit vacuum-switch cites 1\nclose')
    .debrief();

describe('weights of the score', () => {
  it('are what the parts are out of, and make a hundred as before', () => {
    const of = (weights?: ScoreWeights) => work(weights).score.parts.map((part) => [part.part, part.of]);
    expect(of(WEIGHTS)).toEqual(Object.entries(WEIGHTS));
    expect(of().reduce((sum, [, each]) => sum + Number(each), 0)).toBe(100);
  });

  it('change every line of a part in the same measure, and nothing else of it', () => {
    const [usual, weighed] = [work().score, work(WEIGHTS).score];
    for (const [index, part] of weighed.parts.entries()) {
      const before = usual.parts[index];
      const measure = part.of / (before?.of ?? 0);
      expect(part.because.map(({ kind }) => kind)).toEqual(before?.because.map(({ kind }) => kind));
      for (const [at, line] of part.because.entries()) {
        expect(line.points).toBeCloseTo((before?.because[at]?.points ?? 0) * measure, 9);
        expect(line.of).toBeCloseTo((before?.because[at]?.of ?? 0) * measure, 9);
      }
      expect(part.points).toBe(Math.floor(part.because.reduce((sum, { points }) => sum + points, 0) + 0.5));
    }
    // 25 x (0.2 + 0.8 x 0.5) = 15 of 25 in the usual way; 6 of 10 with these weights, by hand.
    expect(weighed.parts[0]).toMatchObject({ part: 'verdict', points: 6, of: 10 });
  });

  it('change neither par nor cost nor rules', () => {
    const { score: _one, ...usual } = work();
    const { score: _other, ...weighed } = work(WEIGHTS);
    expect(weighed).toEqual(usual);
  });
});
