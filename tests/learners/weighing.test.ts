import { describe, expect, test } from 'vitest';
import { parOf } from '../../src/training/evidence/parOf.ts';
import { weighRecord } from '../../src/training/evidence/weighRecord.ts';
import type { LearnerName } from '../../src/training/learners/Learner.ts';
import { learnerOf } from '../../src/training/learners/learnerOf.ts';
import { type SatJob, sit } from '../../src/training/learners/sit.ts';
import { ToolFactor } from '../../src/training/learners/ToolFactor.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { shipped, shopTables } from './support.ts';

const SEED = 'validity-0';

function satBy(name: LearnerName, id: string): SatJob {
  const scenario = shipped(id);
  const tables = shopTables();
  const judges = { tables, factor: new ToolFactor(tables), par: parOf(scenario, tables) };
  return sit(scenario, name, learnerOf(name, scenario), SEED, judges);
}

/** Points by which the two scores may differ: a board mark that lies near its limit may be carried by the one alone. */
const NEAR_POINTS = 6;

describe('a sitting weighed by the tables', () => {
  test.each<[LearnerName, string]>([
    ['careful', 'silent-on-command'],
    ['hasty', 'silent-on-command'],
    ['spams-one-test', 'tight-as-a-drum'],
  ])('%s at %s: nearly as by every suspect’s own bench', (name, id) => {
    const scenario = shipped(id);
    const { record, evidence, facts } = satBy(name, id);
    const live = weighRecord(scenario, record, shopTables());
    if (!live.ok) throw new Error(live.error.code);
    const judged = debrief(scenario, record, live.value, facts.par);
    if (!judged.ok) throw new Error(judged.error.code);
    expect(live.value.verdict.weight).toBeCloseTo(evidence.verdict.weight, 1);
    expect(Math.abs(judged.value.score.total - facts.score.total)).toBeLessThanOrEqual(NEAR_POINTS);
  });

  test('a pump that fails its proof is known to be bad', () => {
    const { evidence } = satBy('by-the-book', 'the-unit-on-the-shelf');
    const of = (entry: number): number =>
      evidence.steps[entry]?.tools.find(({ item }) => item === 'hand-pump')?.chance ?? 0;
    expect(of(0)).toBeLessThan(0.1);
    expect(Math.max(...evidence.steps.map(({ entry }) => of(entry)))).toBeGreaterThan(0.9);
  });
});

test('whoever sits twice under one seed does the same to the last tick', () => {
  const [one, other] = [0, 1].map(() => satBy('marks-all', 'silent-on-command').record);
  expect(other).toEqual(one);
});

test('nobody but who was told knows the truth: the same work order and the same readings, the same hands', () => {
  // A fault of a tool that is never taken in hand shows in nothing: the sitting must be the same.
  const scenario = shipped('silent-on-command');
  const tables = shopTables();
  const judges = { tables, factor: new ToolFactor(tables), par: parOf(scenario, tables) };
  const other = {
    ...scenario,
    faults: [...scenario.faults, { fault: 'hand-pump-seal-leaking', severity: 0.5 }],
  };
  for (const name of ['careful', 'hasty', 'parts-changer', 'guesser'] as const) {
    const hands = [scenario, other].map(
      (of) => sit(of, name, learnerOf(name, of), SEED, judges).record.actions,
    );
    expect(hands[1]).toEqual(hands[0]);
  }
});
