import { assert } from '../../base/assert.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import type { JobPar } from './JobPar.ts';

/** Par of a scenario, under its own seed: the same for every sitting of it. Takes a second or two. */
export function parOf(_scenario: Scenario, _tables: EvidenceTables): JobPar {
  assert(false, 'par is being built', {});
}
