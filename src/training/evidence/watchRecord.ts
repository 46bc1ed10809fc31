import { ok, type Result } from '../../base/Result.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { GRID_TICKS } from '../sitting/Recorder.ts';
import { replay } from '../sitting/replay.ts';
import type { ReplayProblem } from '../sitting/replayActions.ts';
import type { Sitting } from '../sitting/Sitting.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import { ShownWatch } from './watchShown.ts';

/** Sits a record again and takes down what was shown in it, up to its verdict. Errors: as `replay`. */
export function watchRecord(scenario: Scenario, record: SittingRecord): Result<ShownWatch, ReplayProblem> {
  let watch: ShownWatch | null = null;
  const watchOf = (sitting: Sitting): ShownWatch => {
    watch ??= new ShownWatch(sitting.observe());
    return watch;
  };
  const sat = replay(scenario, record, {
    before: (sitting) => watchOf(sitting),
    after: (sitting, { action }) => watchOf(sitting).acted(action, sitting.observe()),
    sample: { every: GRID_TICKS, at: (sitting) => watchOf(sitting).passed(sitting.observe()) },
  });
  return sat.ok ? ok(watchOf(sat.value)) : sat;
}
