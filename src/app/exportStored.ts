import { download } from '../platform/browser/download.ts';
import type { StoredSitting } from '../platform/browser/StoredSitting.ts';

/** Gives a stored record out as it is. */
export function exportStored(sitting: StoredSitting): void {
  download(recordName(sitting.scenario), `${JSON.stringify(sitting.record, null, 1)}\n`);
}

export function recordName(scenario: string): string {
  return `known-good-${scenario}.json`;
}
