import { expect, test } from 'vitest';
import { validityLines } from '../../src/text/cliValidity.ts';
import type { LearnerName } from '../../src/training/learners/Learner.ts';
import {
  quantile,
  type SatScore,
  type ScenarioOdds,
  scenarioValidity,
  validityTable,
} from '../../src/training/learners/validity.ts';

const ODDS: ScenarioOdds = { scenario: 'some-job', prior: 0.2, favouriteIsTrue: false };

const GOOD: readonly (readonly [LearnerName, number])[] = [
  ['careful', 96],
  ['by-the-book', 85],
  ['hasty', 70],
  ['parts-changer', 12],
  ['guesser', 10],
  ['reckless', 40],
  ['logs-everything', 22],
  ['names-the-favourite', 30],
];

function sittings(scores: readonly (readonly [LearnerName, number])[], right = true): SatScore[] {
  return scores.map(([learner, score]) => ({
    scenario: ODDS.scenario,
    learner,
    seed: 'one',
    score,
    named: 'unit',
    right,
  }));
}

const but = (learner: LearnerName, score: number) =>
  sittings(GOOD.map(([name, own]) => [name, name === learner ? score : own] as const));

test('quartiles lie between two scores in proportion', () => {
  // By hand: the median of 10, 20, 30, 40 is 25, the lower quartile three quarters of the way from 10 to 20.
  expect(quantile([10, 20, 30, 40], 0.5)).toBe(25);
  expect(quantile([10, 20, 30, 40], 0.25)).toBe(17.5);
  expect(quantile([7], 0.75)).toBe(7);
});

test('a scenario whose learners come in their order has no fault', () => {
  const one = scenarioValidity(ODDS, sittings(GOOD));
  expect(one.faults).toEqual([]);
  expect(one.paired).toEqual({ won: 1, of: 1 });
  expect(validityTable([one]).holds).toBe(true);
});

test.each<[LearnerName, number, string]>([
  ['careful', 89, 'median-below'],
  ['by-the-book', 74, 'median-below'],
  ['hasty', 81, 'median-above'],
  ['parts-changer', 31, 'median-above'],
  ['guesser', 26, 'median-above'],
  ['reckless', 41, 'median-above'],
  ['logs-everything', 46, 'median-above'],
  ['names-the-favourite', 46, 'median-above'],
])('%s at %d is a fault', (learner, score, kind) => {
  const { faults } = scenarioValidity(ODDS, but(learner, score));
  expect(faults).toContainEqual(expect.objectContaining({ kind, learner, figure: score }));
});

test('haste must not pay as well as the book', () => {
  const scores = GOOD.map(
    ([name, own]) => [name, name === 'by-the-book' ? 75 : name === 'hasty' ? 75 : own] as const,
  );
  const { faults } = scenarioValidity(ODDS, sittings(scores));
  expect(faults).toEqual([{ kind: 'not-below-by-the-book', learner: 'hasty', figure: 75, limit: 75 }]);
});

test('who names what it usually is may do well where it is that, and only there', () => {
  expect(scenarioValidity({ ...ODDS, favouriteIsTrue: true }, but('names-the-favourite', 60)).faults).toEqual(
    [],
  );
  expect(
    scenarioValidity({ ...ODDS, favouriteIsTrue: true }, but('logs-everything', 60)).faults,
  ).toHaveLength(1);
});

test('a truth that is out of mind, or known beforehand, is a fault', () => {
  expect(scenarioValidity({ ...ODDS, prior: 0.01 }, sittings(GOOD)).faults).toEqual([
    { kind: 'prior-below', figure: 0.01, limit: 0.02 },
  ]);
  expect(scenarioValidity({ ...ODDS, prior: 0.7 }, sittings(GOOD)).faults).toEqual([
    { kind: 'prior-above', figure: 0.7, limit: 0.6 },
  ]);
});

test('the careful learner must name the true item', () => {
  const { faults } = scenarioValidity(ODDS, sittings(GOOD, false));
  expect(faults).toEqual([{ kind: 'careful-names-below', figure: 0, limit: 0.95 }]);
});

test('297 of 300 pairs are asked for: of few pairs, every one', () => {
  const lost = sittings([
    ['careful', 10],
    ['parts-changer', 12],
  ]);
  const table = validityTable([scenarioValidity(ODDS, lost)]);
  expect(table.paired).toEqual({ won: 0, of: 1, asked: 1 });
  expect(table.holds).toBe(false);
  const many = { ...scenarioValidity(ODDS, sittings(GOOD)), paired: { won: 297, of: 300 } };
  expect(validityTable([many]).paired.asked).toBe(297);
  expect(validityTable([many]).holds).toBe(true);
});

test('a line that fails says what and by how much', () => {
  const lines = validityLines(validityTable([scenarioValidity(ODDS, but('careful', 80))]));
  expect(lines.join('\n')).toContain('FAILS: careful has a median of 80.0, 10.0 below the 90 it must reach.');
  expect(lines.at(-1)).toContain('Not every scenario');
});
