import { RIG_IDS } from '../../sim/devices/BenchSurface.ts';
import type { FaultEntry } from '../../sim/faults/Fault.ts';
import { rigNamed } from '../../sim/rigs/rigs.ts';
import type { DraftText } from './DraftText.ts';
import { rawText } from './rawText.ts';

/** The faults that a job on the draft's rig may begin with. */
export function faultsOfRig(form: DraftText): readonly FaultEntry[] {
  const named = rawText(form.at(['rig']));
  return rigNamed(RIG_IDS.find((id) => id === named)).faults.filter(({ weight }) => weight > 0);
}
