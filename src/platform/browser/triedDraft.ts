const KEY = 'known-good.tried.';

/** Of which draft a job is that its author tries as a learner; known in this window alone, and only as long as it is open. */
export function noteTried(job: string, draft: string): void {
  try {
    sessionStorage.setItem(KEY + job, draft);
  } catch {
    // Without it there is no way back but by the board.
  }
}

/** The draft that a job was tried from; null where it came in another way. */
export function triedDraft(job: string): string | null {
  try {
    const draft = sessionStorage.getItem(KEY + job);
    return draft !== null && /^[a-z0-9]{1,40}$/.test(draft) ? draft : null;
  } catch {
    return null;
  }
}
