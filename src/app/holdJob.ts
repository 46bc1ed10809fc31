import { askAround } from './askAround.ts';

const PATIENCE_MS = 2500;
const CLAIM = 'known-good:';

/**
 * Claims a job for this page, so that two pages do not overwrite each other's record. Gives a function that lets it go, or null when
 * another page has it. A browser gives locks to secure addresses only; elsewhere the pages ask each other.
 */
export async function holdJob(scenario: string): Promise<(() => void) | null> {
  const claim = `${CLAIM}${scenario}`;
  if (!('locks' in navigator)) return askAround(claim, PATIENCE_MS);
  return new Promise((resolve) => {
    const held = navigator.locks.request(
      claim,
      // A page that was just reloaded still holds its claim for a moment.
      { signal: AbortSignal.timeout(PATIENCE_MS) },
      () => new Promise<void>((letGo) => resolve(letGo)),
    );
    held.catch(() => resolve(null));
  });
}

/** Whether any page of this browser holds a job. */
export async function jobsHeld(): Promise<boolean> {
  if (!('locks' in navigator)) return false;
  const { held = [] } = await navigator.locks.query();
  return held.some(({ name }) => name?.startsWith(CLAIM));
}
