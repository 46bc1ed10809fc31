import type { Steps } from '../base/steps.ts';
import { nextTask } from './nextTask.ts';

const SLICE_MS = 16;

/** Does all the steps, and lets the page live every few milliseconds. */
export async function inSlices<T>(steps: Steps<T>): Promise<T> {
  let until = performance.now() + SLICE_MS;
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
    if (performance.now() < until) continue;
    await nextTask();
    until = performance.now() + SLICE_MS;
  }
}
