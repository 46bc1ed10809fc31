import { RIG_IDS, type RigId } from '../sim/devices/BenchSurface.ts';
import { FIRST_RIG } from '../sim/rigs/rigs.ts';
import { cliWords } from '../text/cli.ts';
import type { Output } from './Output.ts';

/** The rig that `--rig` names, the first where it is left out; null, and a sentence, where there is no such rig. */
export function rigOption(given: string | undefined, output: Output): RigId | null {
  if (given === undefined) return FIRST_RIG;
  const rig = RIG_IDS.find((id) => id === given);
  if (rig === undefined) output.err(cliWords.noSuchRig(given, RIG_IDS));
  return rig ?? null;
}
