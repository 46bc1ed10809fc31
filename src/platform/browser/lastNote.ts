/**
 * What was written in the moment in which a page was closed, when there is no time left for a database: browsers write this at once.
 * It is taken up again, and taken away, when the page is opened the next time.
 */
export interface LastNote {
  readonly text: string;
  readonly savedAtMs: number;
}

const KEY = 'known-good.note.';

export function leaveNote(of: string, note: LastNote): void {
  try {
    localStorage.setItem(KEY + of, JSON.stringify(note));
  } catch {
    // A browser that keeps nothing has been told of.
  }
}

export function takeNote(of: string): LastNote | null {
  try {
    const kept = localStorage.getItem(KEY + of);
    localStorage.removeItem(KEY + of);
    const note: unknown = JSON.parse(kept ?? 'null');
    return isNote(note) ? note : null;
  } catch {
    return null;
  }
}

function isNote(value: unknown): value is LastNote {
  if (typeof value !== 'object' || value === null) return false;
  const { text, savedAtMs } = value as Readonly<Record<string, unknown>>;
  return typeof text === 'string' && typeof savedAtMs === 'number';
}
