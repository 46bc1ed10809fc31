import { eachStep } from '../../sim/rigs/standardTests/eachStep.ts';
import { STANDARD_TESTS } from '../../sim/rigs/standardTests/standardTests.ts';

/** Tests whose hands move the harness. */
const MOVING: ReadonlySet<string> = new Set(
  STANDARD_TESTS.filter(({ steps }) => eachStep(steps).some(({ kind }) => kind === 'wiggle')).map(
    ({ id }) => id,
  ),
);

/** Whether a test moves the harness: without that, what shows only when the harness is moved stays as it was. */
export function movesHarness(test: string): boolean {
  return MOVING.has(test);
}
