const PATIENCE_MS = 2500;

/**
 * Claims a job for this page, so that two pages do not overwrite each other's record. Gives a function that lets it go, or null when
 * another page has it. Where the browser has no locks every claim succeeds.
 */
export async function holdJob(scenario: string): Promise<(() => void) | null> {
  if (!('locks' in navigator)) return () => {};
  return new Promise((resolve) => {
    const held = navigator.locks.request(
      `known-good:${scenario}`,
      // A page that was just reloaded still holds its claim for a moment.
      { signal: AbortSignal.timeout(PATIENCE_MS) },
      () => new Promise<void>((letGo) => resolve(letGo)),
    );
    held.catch(() => resolve(null));
  });
}
