import type { Result } from '../../base/Result.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { type ReplayOptions, type ReplayProblem, replayActions } from './replayActions.ts';
import { Sitting } from './Sitting.ts';
import type { SittingRecord } from './SittingRecord.ts';
import { theWorld, type WorldMaker } from './worldMaker.ts';

/** Sits the scenario again as the record has it, to the last digit. */
export function replay(
  scenario: Scenario,
  record: SittingRecord,
  options: ReplayOptions = {},
  makeWorld: WorldMaker = theWorld,
): Result<Sitting, ReplayProblem> {
  return replayActions(() => Sitting.begin(scenario, record.seed, makeWorld), scenario, record, options);
}
