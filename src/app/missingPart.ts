import type { Trouble } from '../ui/panels/Shop.ts';

/** How the engines say that a part of the program could not be fetched when it was first needed. */
const NOT_FETCHED = /dynamically imported module|importing a module script failed|unable to preload/i;

/** The trouble of a part that did not come, or null when it is something else. Nothing is lost by it: it is asked for again. */
export function missingPart(reason: unknown): Trouble | null {
  const detail = reason instanceof Error ? reason.message : String(reason);
  if (!NOT_FETCHED.test(detail)) return null;
  return {
    key: 'troubles.part-missing',
    offers: [{ label: 'troubles.reload', run: () => location.reload() }],
  };
}
