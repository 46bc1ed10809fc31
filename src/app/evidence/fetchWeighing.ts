import { workerUrl } from 'virtual:worker/src/app/evidence/weighing.ts';
import type { loadWeighing } from './weighing.ts';

/** Fetches what weighs sittings: by its address, as `fetchDebriefing` does. */
export function fetchWeighing(): Promise<{ readonly loadWeighing: typeof loadWeighing }> {
  return import(/* @vite-ignore */ workerUrl);
}
