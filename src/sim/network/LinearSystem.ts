/**
 * A square system of linear equations A·x = b, dense, solved by LU decomposition with partial pivoting.
 * All storage is taken once; `factor` is done once per matrix, `solve` as often as there are right-hand sides.
 * Method: Doolittle elimination by rows (any numerical analysis text); sums always run in the same order.
 */
export class LinearSystem {
  /** Row-major coefficients. Overwritten by its factors in `factor`. */
  readonly matrix: Float64Array;
  private readonly swaps: Int32Array;
  private readonly inversePivots: Float64Array;

  /** Below this magnitude a pivot counts as zero (a leak of 1e-12 S must still pass). */
  static readonly SMALLEST_PIVOT = 1e-16;

  constructor(readonly size: number) {
    this.matrix = new Float64Array(size * size);
    this.swaps = new Int32Array(size);
    this.inversePivots = new Float64Array(size);
  }

  clear(): void {
    this.matrix.fill(0);
  }

  /** Adds to one coefficient (both indices from 0). */
  add(row: number, column: number, value: number): void {
    const at = row * this.size + column;
    this.matrix[at] = (this.matrix[at] as number) + value;
  }

  /** Replaces the coefficients by their factors. False when the matrix is singular. */
  factor(): boolean {
    const { size: n, matrix: m, swaps, inversePivots } = this;
    for (let k = 0; k < n; k++) {
      let best = k;
      let largest = Math.abs(m[k * n + k] as number);
      for (let r = k + 1; r < n; r++) {
        const size = Math.abs(m[r * n + k] as number);
        if (size > largest) {
          largest = size;
          best = r;
        }
      }
      if (!(largest > LinearSystem.SMALLEST_PIVOT && largest < Number.POSITIVE_INFINITY)) return false;
      swaps[k] = best;
      if (best !== k) this.swapRows(k, best);
      const inverse = 1 / (m[k * n + k] as number);
      inversePivots[k] = inverse;
      for (let r = k + 1; r < n; r++) {
        const below = m[r * n + k] as number;
        if (below === 0) continue;
        const factor = below * inverse;
        m[r * n + k] = factor;
        let to = r * n + k + 1;
        let from = k * n + k + 1;
        for (const end = r * n + n; to < end; to++, from++) {
          m[to] = (m[to] as number) - factor * (m[from] as number);
        }
      }
    }
    return true;
  }

  /** Replaces b by the solution x. Needs a successful `factor` before it. */
  solve(b: Float64Array): void {
    const { size: n, matrix: m, swaps, inversePivots } = this;
    for (let k = 0; k < n; k++) {
      const other = swaps[k] as number;
      if (other === k) continue;
      const held = b[k] as number;
      b[k] = b[other] as number;
      b[other] = held;
    }
    for (let r = 1; r < n; r++) {
      let sum = b[r] as number;
      const row = r * n;
      for (let c = 0; c < r; c++) sum -= (m[row + c] as number) * (b[c] as number);
      b[r] = sum;
    }
    for (let r = n - 1; r >= 0; r--) {
      let sum = b[r] as number;
      const row = r * n;
      for (let c = r + 1; c < n; c++) sum -= (m[row + c] as number) * (b[c] as number);
      b[r] = sum * (inversePivots[r] as number);
    }
  }

  /** Whole rows change place, factors already made included, so that `solve` may apply all swaps first. */
  private swapRows(first: number, second: number): void {
    const { size: n, matrix: m } = this;
    for (let c = 0; c < n; c++) {
      const held = m[first * n + c] as number;
      m[first * n + c] = m[second * n + c] as number;
      m[second * n + c] = held;
    }
  }
}
