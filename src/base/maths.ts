/**
 * Transcendental functions built from + − × ÷ and √ alone, so that they give the same digits on every machine.
 * `Math.exp`, `Math.log` and `Math.pow` may differ in the last bit between engines and are not used in `sim`.
 */

const LN2 = 0.6931471805599453;

/** Natural exponential; relative error below 1e-13 for |x| ≤ 700. */
export function exp(x: number): number {
  if (x > 709) return Number.POSITIVE_INFINITY;
  if (x < -745) return 0;
  const halvings = Math.floor(x / LN2 + 0.5);
  const r = x - halvings * LN2;
  let term = 1;
  let sum = 1;
  for (let n = 1; n <= 20; n++) {
    term = (term * r) / n;
    sum += term;
  }
  let scale = 1;
  const step = halvings < 0 ? 0.5 : 2;
  for (let i = Math.abs(halvings); i > 0; i--) scale *= step;
  return sum * scale;
}

/** Natural logarithm of x > 0; relative error below 1e-14. */
export function ln(x: number): number {
  if (!(x > 0)) return Number.NaN;
  let m = x;
  let twos = 0;
  while (m > 1.4142135623730951) {
    m *= 0.5;
    twos++;
  }
  while (m < 0.7071067811865476) {
    m *= 2;
    twos--;
  }
  const z = (m - 1) / (m + 1);
  const z2 = z * z;
  let power = z;
  let sum = z;
  for (let n = 3; n <= 31; n += 2) {
    power *= z2;
    sum += power / n;
  }
  return 2 * sum + twos * LN2;
}

/** x to the power y for x > 0. */
export function pow(x: number, y: number): number {
  return exp(y * ln(x));
}

export function clamp(x: number, low: number, high: number): number {
  return Math.min(Math.max(x, low), high);
}
