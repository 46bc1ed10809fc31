import type { RigId } from '../devices/BenchSurface.ts';
import { LEAK_DETECTION_PUMP } from './leakDetectionPump/leakDetectionPump.ts';
import type { RigDefinition } from './RigDefinition.ts';

/** The rig that is meant where none is named. */
export const FIRST_RIG: RigId = 'leak-detection-pump';

const RIGS: Readonly<Partial<Record<RigId, RigDefinition>>> = {
  'leak-detection-pump': LEAK_DETECTION_PUMP,
};

export function rigNamed(id: RigId = FIRST_RIG): RigDefinition {
  return RIGS[id] ?? LEAK_DETECTION_PUMP;
}
