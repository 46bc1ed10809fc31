/**
 * Solves A·x = b for a small dense system in place: `a` holds n × n numbers row by row and is destroyed,
 * `b` becomes x. Gaussian elimination with partial pivoting. Gives false when a pivot is zero or not finite.
 */
export function solveInPlace(a: Float64Array, b: Float64Array, n: number): boolean {
  for (let k = 0; k < n; k++) {
    let best = k;
    let size = Math.abs(a[k * n + k] as number);
    for (let i = k + 1; i < n; i++) {
      const other = Math.abs(a[i * n + k] as number);
      if (other > size) {
        size = other;
        best = i;
      }
    }
    if (!(size > 0) || size === Number.POSITIVE_INFINITY) return false;
    if (best !== k) swapRows(a, b, n, k, best);
    eliminateBelow(a, b, n, k);
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i] as number;
    for (let j = i + 1; j < n; j++) sum -= (a[i * n + j] as number) * (b[j] as number);
    b[i] = sum / (a[i * n + i] as number);
  }
  return true;
}

function swapRows(a: Float64Array, b: Float64Array, n: number, k: number, other: number): void {
  for (let j = k; j < n; j++) {
    const held = a[k * n + j] as number;
    a[k * n + j] = a[other * n + j] as number;
    a[other * n + j] = held;
  }
  const held = b[k] as number;
  b[k] = b[other] as number;
  b[other] = held;
}

function eliminateBelow(a: Float64Array, b: Float64Array, n: number, k: number): void {
  const pivot = a[k * n + k] as number;
  for (let i = k + 1; i < n; i++) {
    const below = a[i * n + k] as number;
    if (below === 0) continue; // most of an air network's matrix is empty
    const factor = below / pivot;
    for (let j = k + 1; j < n; j++)
      a[i * n + j] = (a[i * n + j] as number) - factor * (a[k * n + j] as number);
    b[i] = (b[i] as number) - factor * (b[k] as number);
  }
}
