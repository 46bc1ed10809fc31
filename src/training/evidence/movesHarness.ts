import { EVERY_RIG } from '../../sim/rigs/rigs.ts';
import { eachStep } from '../../sim/rigs/standardTests/eachStep.ts';

/** Tests whose hands move the harness. */
const MOVING: ReadonlySet<string> = new Set(
  EVERY_RIG.flatMap(({ tests }) => tests)
    .filter(({ steps }) => eachStep(steps).some(({ kind }) => kind === 'wiggle'))
    .map(({ id }) => id),
);

/** Whether a test moves the harness: without that, what shows only when the harness is moved stays as it was. */
export function movesHarness(test: string): boolean {
  return MOVING.has(test);
}
