import type { RigId } from '../devices/BenchSurface.ts';
import { FLAP_ACTUATOR } from './flapActuator/flapActuator.ts';
import { LEAK_DETECTION_PUMP } from './leakDetectionPump/leakDetectionPump.ts';
import type { RigDefinition } from './RigDefinition.ts';

const RIGS: Readonly<Record<RigId, RigDefinition>> = {
  'leak-detection-pump': LEAK_DETECTION_PUMP,
  'flap-actuator': FLAP_ACTUATOR,
};

/** All rigs. */
export const EVERY_RIG: readonly RigDefinition[] = Object.values(RIGS);

/** The rig that is meant where none is named, as before there were others. */
export const FIRST_RIG: RigId = 'leak-detection-pump';

/** The rig of a name. */
export function rigNamed(id: RigId = FIRST_RIG): RigDefinition {
  return RIGS[id];
}
