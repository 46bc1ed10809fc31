import type { RigId } from '../sim/devices/BenchSurface.ts';
import { speakOfRig } from '../text/translate.ts';

/** Fetches what a rig's own things are called, and speaks of them from now on; of the first rig where none is named. */
export async function speakOf(rig: RigId | undefined): Promise<void> {
  if (rig !== undefined) await import('./otherRigs.ts');
  speakOfRig(rig);
}
