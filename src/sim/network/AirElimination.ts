/**
 * Gaussian elimination for one island of an air network, its order and its pattern worked out beforehand: of the rows
 * still left, the one with the fewest neighbours goes first, so that a tree of volumes fills in nothing. No pivoting: the
 * matrix has a heavy diagonal. It stands in a square array of `width` numbers a row, of which only the pattern is touched.
 */
export class AirElimination {
  /** Rows in the order of elimination. */
  readonly order: Int32Array;
  /** Places of the array that may be other than zero. */
  readonly pattern: Int32Array;
  /**
   * For each pivot: its row, its place, how many rows lie below; then for each of those its place in the pivot's column,
   * its row, how many columns follow, and for each of these its place in that row and in the pivot's.
   */
  private readonly downward: Int32Array;
  /** For each pivot from the last: its row, its place, how many columns follow, and their places and rows. */
  private readonly upward: Int32Array;

  constructor(width: number, rows: readonly number[], links: readonly (readonly [number, number])[]) {
    const near = new Map(rows.map((row) => [row, new Set<number>()]));
    const join = (a: number, b: number): void => {
      near.get(a)?.add(b);
      near.get(b)?.add(a);
    };
    for (const [a, b] of links) join(a, b);
    const order: number[] = [];
    const later: number[][] = [];
    const left = new Set(rows);
    while (left.size > 0) {
      let pivot = -1;
      for (const row of left) {
        if (pivot < 0 || sizeOf(near, row) < sizeOf(near, pivot)) pivot = row;
      }
      const after = [...(near.get(pivot) ?? [])].sort((a, b) => a - b);
      order.push(pivot);
      later.push(after);
      left.delete(pivot);
      for (const a of after) {
        near.get(a)?.delete(pivot);
        for (const b of after) if (a < b) join(a, b);
      }
    }
    const at = (row: number, column: number): number => row * width + column;
    const down: number[] = [];
    const up: number[] = [];
    const pattern: number[] = [];
    order.forEach((pivot, k) => {
      const after = later[k] as number[];
      pattern.push(at(pivot, pivot), ...after.flatMap((j) => [at(pivot, j), at(j, pivot)]));
      down.push(pivot, at(pivot, pivot), after.length);
      for (const i of after) {
        down.push(at(i, pivot), i, after.length, ...after.flatMap((j) => [at(i, j), at(pivot, j)]));
      }
    });
    for (let k = order.length - 1; k >= 0; k--) {
      const pivot = order[k] as number;
      const after = later[k] as number[];
      up.push(pivot, at(pivot, pivot), after.length, ...after.flatMap((j) => [at(pivot, j), j]));
    }
    this.order = Int32Array.from(order);
    this.pattern = Int32Array.from(pattern);
    this.downward = Int32Array.from(down);
    this.upward = Int32Array.from(up);
  }

  /** Factors the matrix in place. False when a pivot is not above zero. */
  factor(a: Float64Array): boolean {
    const { downward } = this;
    for (let at = 0; at < downward.length; ) {
      const pivot = a[downward[at + 1] as number] as number;
      if (!(pivot > 0) || pivot === Number.POSITIVE_INFINITY) return false;
      const inverse = 1 / pivot;
      const below = downward[at + 2] as number;
      at += 3;
      for (let i = 0; i < below; i++) {
        const place = downward[at] as number;
        const columns = downward[at + 2] as number;
        const factor = (a[place] as number) * inverse;
        a[place] = factor;
        at += 3;
        for (let j = 0; j < columns; j++, at += 2) {
          const target = downward[at] as number;
          a[target] = (a[target] as number) - factor * (a[downward[at + 1] as number] as number);
        }
      }
    }
    return true;
  }

  /** Factors the matrix in place and solves with it in one go; `b`, by row, becomes the answer. False as `factor`. */
  factorAndSolve(a: Float64Array, b: Float64Array): boolean {
    const { downward } = this;
    for (let at = 0; at < downward.length; ) {
      const pivot = a[downward[at + 1] as number] as number;
      if (!(pivot > 0) || pivot === Number.POSITIVE_INFINITY) return false;
      const inverse = 1 / pivot;
      const known = b[downward[at] as number] as number;
      const below = downward[at + 2] as number;
      at += 3;
      for (let i = 0; i < below; i++) {
        const place = downward[at] as number;
        const row = downward[at + 1] as number;
        const columns = downward[at + 2] as number;
        const factor = (a[place] as number) * inverse;
        a[place] = factor;
        b[row] = (b[row] as number) - factor * known;
        at += 3;
        for (let j = 0; j < columns; j++, at += 2) {
          const target = downward[at] as number;
          a[target] = (a[target] as number) - factor * (a[downward[at + 1] as number] as number);
        }
      }
    }
    this.substitute(a, b);
    return true;
  }

  /** Solves with the factors; `b`, by row, becomes the answer. */
  solve(a: Float64Array, b: Float64Array): void {
    const { downward } = this;
    for (let at = 0; at < downward.length; ) {
      const known = b[downward[at] as number] as number;
      const below = downward[at + 2] as number;
      at += 3;
      for (let i = 0; i < below; i++) {
        const row = downward[at + 1] as number;
        b[row] = (b[row] as number) - (a[downward[at] as number] as number) * known;
        at += 3 + 2 * (downward[at + 2] as number);
      }
    }
    this.substitute(a, b);
  }

  private substitute(a: Float64Array, b: Float64Array): void {
    const { upward } = this;
    for (let at = 0; at < upward.length; ) {
      const row = upward[at] as number;
      const place = upward[at + 1] as number;
      const columns = upward[at + 2] as number;
      let sum = b[row] as number;
      at += 3;
      for (let j = 0; j < columns; j++, at += 2) {
        sum -= (a[upward[at] as number] as number) * (b[upward[at + 1] as number] as number);
      }
      b[row] = sum / (a[place] as number);
    }
  }
}

function sizeOf(near: ReadonlyMap<number, ReadonlySet<number>>, row: number): number {
  return near.get(row)?.size ?? 0;
}
