import { along, distance, towards, type Vec } from './geometry.ts';

/** One piece of a drawn line: a cubic from where the last piece ended. */
export interface CurvePiece {
  readonly c1: Vec;
  readonly c2: Vec;
  readonly to: Vec;
}

/** A smooth line: a start and cubic pieces. */
export interface Curve {
  readonly from: Vec;
  readonly pieces: readonly CurvePiece[];
}

/** One cubic that leaves `from` along `fromDirection` and arrives at `to` from the side `toDirection` points to. */
export function hanging(from: Vec, fromDirection: Vec, to: Vec, toDirection: Vec, slack: number): Curve {
  return { from, pieces: [{ c1: along(from, fromDirection, slack), c2: along(to, toDirection, slack), to }] };
}

/** A polyline with every corner rounded as widely as its sides allow, at most `radius`. */
export function rounded(points: readonly Vec[], radius: number): Curve {
  const [first = { x: 0, y: 0 }, ...rest] = points;
  const pieces: CurvePiece[] = [];
  let at = first;
  const straightTo = (to: Vec): void => {
    if (distance(at, to) > 0.01) pieces.push({ c1: at, c2: to, to });
    at = to;
  };
  for (const [i, corner] of rest.entries()) {
    const next = rest[i + 1];
    const before = points[i] ?? first;
    if (next === undefined) {
      straightTo(corner);
      break;
    }
    // The first and the last side have one corner only and may give all their length to it.
    const share = (side: number, atEnd: boolean): number => (atEnd ? side : side / 2);
    const reach = Math.min(
      radius,
      share(distance(before, corner), i === 0),
      share(distance(corner, next), i === rest.length - 2),
    );
    const into = along(corner, towards(corner, before), reach);
    const out = along(corner, towards(corner, next), reach);
    straightTo(into);
    // Handles 0.6 of the way to the corner: close to a circular bend at right angles, softer at shallow ones.
    pieces.push({
      c1: along(into, towards(into, corner), reach * 0.6),
      c2: along(out, towards(out, corner), reach * 0.6),
      to: out,
    });
    at = out;
  }
  return { from: first, pieces };
}

/** Points along a curve, `steps` a piece, both ends included. */
export function sampled(curve: Curve, steps: number): readonly Vec[] {
  const points: Vec[] = [curve.from];
  let a = curve.from;
  for (const { c1, c2, to } of curve.pieces) {
    for (let i = 1; i <= steps; i++) {
      const t = i / steps;
      const u = 1 - t;
      const [k0, k1, k2, k3] = [u * u * u, 3 * u * u * t, 3 * u * t * t, t * t * t];
      points.push({
        x: k0 * a.x + k1 * c1.x + k2 * c2.x + k3 * to.x,
        y: k0 * a.y + k1 * c1.y + k2 * c2.y + k3 * to.y,
      });
    }
    a = to;
  }
  return points;
}
