import { assert } from '../../base/assert.ts';
import type { Result } from '../../base/Result.ts';
import type { EvidenceTables } from './EvidenceTables.ts';

/** The kept text is not of this version of the rig, or damaged. */
export type TablesProblem = { readonly code: 'tables-unreadable' | 'tables-of-other-rig' };

/** Opens the tables kept with the program. */
export function openTables(_text: string): Result<EvidenceTables, TablesProblem> {
  assert(false, 'kept tables are being built', {});
}
