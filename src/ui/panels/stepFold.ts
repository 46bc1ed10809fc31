/** Steps that are shown after the present one, each by its first sentence. */
const NEXT = 2;

/** How a list of steps is laid out: what is done, the one to do, a look ahead, and the rest; as indices, in order. */
export interface StepFold {
  readonly done: readonly number[];
  /** Null when all are done. */
  readonly now: number | null;
  readonly next: readonly number[];
  readonly rest: readonly number[];
}

/** Folds `all` steps around the present one. One step left over is shown: a fold of one would take as much room. */
export function foldSteps(now: number, all: number): StepFold {
  const indices = Array.from({ length: all }, (_, index) => index);
  const ahead = indices.slice(now + 1);
  const shown = ahead.length === NEXT + 1 ? NEXT + 1 : NEXT;
  return {
    done: indices.slice(0, now),
    now: now < all ? now : null,
    next: ahead.slice(0, shown),
    rest: ahead.slice(shown),
  };
}
