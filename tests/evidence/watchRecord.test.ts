import { describe, expect, it } from 'vitest';
import { environmentOf } from '../../src/training/evidence/environment.ts';
import { SuspectWorld } from '../../src/training/evidence/SuspectWorld.ts';
import { watchRecord } from '../../src/training/evidence/watchRecord.ts';
import { replay } from '../../src/training/sitting/replay.ts';
import { sitGolden } from '../support/goldenJobs.ts';

describe('a record watched', () => {
  const { scenario, record } = sitGolden('first-day-on-the-bench.full.txt');
  const watched = watchRecord(scenario, record);
  const sat = replay(scenario, record);
  const verdict = record.actions.find(({ action }) => action.kind === 'give-verdict');

  it('takes down what was shown up to the verdict, and nothing after it', () => {
    if (!watched.ok || verdict === undefined) throw new Error('the job is sat to its verdict');
    const { asked, script } = watched.value;
    expect(asked.length).toBeGreaterThan(30);
    expect(Math.max(...asked.map(({ question }) => question.tick))).toBeLessThanOrEqual(verdict.tick);
    expect(Math.max(...script.map(({ tick }) => tick))).toBeLessThanOrEqual(verdict.tick);
    expect(record.endTick).toBeGreaterThan(verdict.tick);
  });

  it('has an entry of questions for every log entry before the verdict, each of its time or before', () => {
    if (!watched.ok || !sat.ok || verdict === undefined) throw new Error('the job is sat to its verdict');
    const log = sat.value.view().log.filter(({ tick }) => tick <= verdict.tick);
    const { entries, asked } = watched.value;
    expect(entries).toHaveLength(log.length);
    for (const [i, numbers] of entries.entries()) {
      for (const number of numbers) {
        expect(asked[number]?.question.tick ?? Number.NaN).toBeLessThanOrEqual(log[i]?.tick ?? 0);
      }
    }
    expect(entries.some((numbers) => numbers.length > 0)).toBe(true);
  });

  it('a world of the same faults and seed answers as the sitting did', () => {
    if (!watched.ok) throw new Error(watched.error.code);
    const { script, asked } = watched.value;
    const world = new SuspectWorld(record.seed, scenario.faults, environmentOf(scenario));
    world.catchUp(script);
    // Codes in the controller's memory come from the drives before the job, which this world has not had.
    const answers = world.answers.filter((_, n) => asked[n]?.question.about !== 'codes');
    const shown = asked.filter(({ question }) => question.about !== 'codes').map((one) => one.shown);
    expect(answers).toEqual(shown);
  });

  it('says so where the record is of another job', () => {
    const other = watchRecord(scenario, { ...record, mode: 'assessment' });
    expect(other.ok).toBe(false);
  });
});
