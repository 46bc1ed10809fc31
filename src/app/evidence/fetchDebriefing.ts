import { workerUrl } from 'virtual:worker/src/app/evidence/debriefing.ts';
import type { Debriefing } from './debriefing.ts';

let coming: Promise<Debriefing> | null = null;

/**
 * Fetches what a closed job is judged with, once. By its address: the bundler's own way of fetching code looks for a page, and
 * a worker has none.
 */
export function fetchDebriefing(): Promise<Debriefing> {
  coming ??= import(/* @vite-ignore */ workerUrl).then(
    (part: { readonly debriefing: Debriefing }) => part.debriefing,
    (error: unknown) => {
      coming = null;
      throw error;
    },
  );
  return coming;
}
