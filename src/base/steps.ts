/** Work that may be laid down between its steps and taken up again; its result comes with the last. */
export type Steps<T> = Generator<void, T, void>;

/** Does all the steps without a pause. */
export function atOnce<T>(steps: Steps<T>): T {
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}
