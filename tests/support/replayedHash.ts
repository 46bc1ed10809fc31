import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { replay } from '../../src/training/sitting/replay.ts';
import type { SittingRecord } from '../../src/training/sitting/SittingRecord.ts';

/** Replays a record and gives the hash of the world it ends in, or the problem's code. */
export function replayedHash(scenario: Scenario, record: SittingRecord): string {
  const sitting = replay(scenario, record);
  return sitting.ok ? sitting.value.record().endHash : sitting.error.code;
}
