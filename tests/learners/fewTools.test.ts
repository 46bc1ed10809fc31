import { describe, expect, test } from 'vitest';
import { BENCH_TOOLS, type BenchTool } from '../../src/sim/devices/items.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import { GAMING_LEARNERS, LEARNERS } from '../../src/training/learners/Learner.ts';
import { learnerOf } from '../../src/training/learners/learnerOf.ts';
import { sit } from '../../src/training/learners/sit.ts';
import { ToolFactor } from '../../src/training/learners/ToolFactor.ts';
import { toolsOfAction } from '../../src/training/scenario/benchTools.ts';
import { shipped, shopTables } from './support.ts';

const PAR = { tests: [], minutes: 100, money: 400, proven: true };
const FEW: readonly (readonly [string, readonly BenchTool[]])[] = [
  ['a meter alone', ['meter']],
  ['no reader and no meter', BENCH_TOOLS.filter((tool) => tool !== 'reader' && tool !== 'meter')],
];

/** Whoever sits a job with few tools comes to its end, and takes nothing into the hand that is not there. */
describe.each(FEW)('with %s', (_, tools) => {
  test('every learner ends the job, by what there is', () => {
    const scenario = { ...shipped('ready-by-friday'), tools };
    const judges = { tables: shopTables(), factor: new ToolFactor(shopTables()), par: PAR };
    for (const name of [...LEARNERS, ...GAMING_LEARNERS]) {
      const { record, facts } = sit(scenario, name, learnerOf(name, scenario), 'few', judges);
      expect(record.actions.at(-1)?.action.kind, name).toBe('close-job');
      const taken = record.actions.flatMap(({ action }): readonly BenchTool[] =>
        action.kind === 'read-codes' ? ['reader'] : toolsOfAction(action as Action),
      );
      expect(
        taken.filter((tool) => !tools.includes(tool)),
        name,
      ).toEqual([]);
      expect(facts.score.total, name).toBeGreaterThanOrEqual(0);
    }
  });
});
