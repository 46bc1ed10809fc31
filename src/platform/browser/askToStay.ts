/**
 * Asks the browser to keep what is stored here even when it runs short of room (Storage Standard, persistent storage). Whatever it
 * answers, nothing changes for the learner; a browser that cannot be asked is none the worse.
 */
export async function askToStay(): Promise<void> {
  try {
    if (!(await navigator.storage.persisted())) await navigator.storage.persist();
  } catch {
    // No such question in this browser, or it may not be asked here.
  }
}
