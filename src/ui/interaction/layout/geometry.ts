/** Plane geometry of the bench sheet. Units are bench units, x to the right, y towards the learner. */

export interface Vec {
  readonly x: number;
  readonly y: number;
}

/** A box by its upper left corner and size. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly w: number;
  readonly h: number;
}

/** The virtual sheet everything on the bench is placed on; it is scaled to fit its host. */
export const SHEET: Box = { x: 0, y: 0, w: 1216, h: 880 };

export function boxAround(centre: Vec, w: number, h: number = w): Box {
  return { x: centre.x - w / 2, y: centre.y - h / 2, w, h };
}

export function centreOf(box: Box): Vec {
  return { x: box.x + box.w / 2, y: box.y + box.h / 2 };
}

/** True when the boxes share area; touching edges do not count. */
export function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.w && b.x < a.x + a.w && a.y < b.y + b.h && b.y < a.y + a.h;
}

/** What two boxes have in common; without area where they do not meet. */
export function shared(a: Box, b: Box): Box {
  const [x, y] = [Math.max(a.x, b.x), Math.max(a.y, b.y)];
  return {
    x,
    y,
    w: Math.max(0, Math.min(a.x + a.w, b.x + b.w) - x),
    h: Math.max(0, Math.min(a.y + a.h, b.y + b.h) - y),
  };
}

export function inside(inner: Box, outer: Box): boolean {
  return (
    inner.x >= outer.x &&
    inner.y >= outer.y &&
    inner.x + inner.w <= outer.x + outer.w &&
    inner.y + inner.h <= outer.y + outer.h
  );
}

export function grow(box: Box, by: number): Box {
  return { x: box.x - by, y: box.y - by, w: box.w + 2 * by, h: box.h + 2 * by };
}

export function contains(box: Box, at: Vec): boolean {
  return at.x >= box.x && at.x <= box.x + box.w && at.y >= box.y && at.y <= box.y + box.h;
}

export function distance(a: Vec, b: Vec): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** Unit vector from a to b; straight up when they coincide. */
export function towards(a: Vec, b: Vec): Vec {
  const d = distance(a, b);
  return d < 1e-9 ? { x: 0, y: -1 } : { x: (b.x - a.x) / d, y: (b.y - a.y) / d };
}

export function along(from: Vec, direction: Vec, by: number): Vec {
  return { x: from.x + direction.x * by, y: from.y + direction.y * by };
}
