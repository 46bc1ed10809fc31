import type { Sitting } from '../../training/sitting/Sitting.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';

/** Takes the job, and does again what hands did on another truck. What this truck refuses is left out. */
export function handsOn(sitting: Sitting, record: SittingRecord | null): Sitting {
  sitting.apply({ kind: 'accept-job' });
  if (record === null) return sitting;
  for (const { tick, action } of record.actions) {
    if (tick > sitting.tick) sitting.advanceTo(tick);
    if (action.kind !== 'accept-job') sitting.apply(action);
  }
  if (record.endTick > sitting.tick) sitting.advanceTo(record.endTick);
  return sitting;
}
