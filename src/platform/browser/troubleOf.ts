import type { StoreTrouble } from './StoredSitting.ts';

/** Which trouble an error of the browser's store means. Names are those of the IndexedDB and storage standards. */
export function troubleOf(error: unknown): StoreTrouble {
  const name = error instanceof Error ? error.name : '';
  switch (name) {
    case 'QuotaExceededError':
      return 'store-full';
    case 'VersionError':
      return 'store-newer';
    case 'SecurityError':
    case 'NotAllowedError':
    case 'InvalidStateError':
      return 'store-blocked';
    default:
      return 'store-failed';
  }
}
