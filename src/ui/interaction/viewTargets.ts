import { type Box, centreOf, type Vec } from './layout/geometry.ts';

/** Least size of a target, CSS pixels, and the circle it must have to itself where it is smaller (WCAG 2.2, 2.5.8). */
export const TARGET_PX = 24;
/** A finger covers more: from touch a press that is not clear is asked about up to this size. */
export const FINGER_PX = 32;
/** What lies within this of a press, CSS pixels, may have been meant by it. */
export const MEANT_PX = 24;
/** As many as a choice of places can show large. */
export const MOST_OFFERED = 9;

interface Spot<Id> extends Box {
  readonly id: Id;
}

export function isSmall(box: Box, scale: number, leastPx: number = TARGET_PX): boolean {
  return Math.min(box.w, box.h) * scale < leastPx - 1e-6;
}

/**
 * The targets that are too small at this scale and too close to others for their size: those whose circle meets another target, or
 * another small target's circle.
 */
export function crowdedSpots<Id>(
  spots: readonly Spot<Id>[],
  scale: number,
  leastPx: number = TARGET_PX,
): ReadonlySet<Id> {
  const radius = leastPx / 2 / scale;
  const crowded = new Set<Id>();
  for (const one of spots) {
    if (!isSmall(one, scale, leastPx)) continue;
    const centre = centreOf(one);
    const meets = spots.some((other) => {
      if (other.id === one.id) return false;
      if (distanceTo(other, centre) < radius) return true;
      const { x, y } = centreOf(other);
      return isSmall(other, scale, leastPx) && Math.hypot(x - centre.x, y - centre.y) < 2 * radius;
    });
    if (meets) crowded.add(one.id);
  }
  return crowded;
}

/** What may have been meant by a press on a spot, the spot itself among it: the nearest few, in rows as they are drawn. */
export function meantBy<Id>(id: Id, spots: readonly Spot<Id>[], scale: number): readonly (readonly Id[])[] {
  const pressed = spots.find((spot) => spot.id === id);
  if (pressed === undefined) return [];
  const centre = centreOf(pressed);
  const near = spots
    .map((spot) => ({ spot, distance: spot === pressed ? -1 : distanceTo(spot, centre) * scale }))
    .filter(({ distance }) => distance <= MEANT_PX)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, MOST_OFFERED)
    .map(({ spot }) => spot);
  return inRows(near).map((row) => row.map((spot) => spot.id));
}

/** Rows from far to near, each from left to right: what stands level on the bench stands level in the choice. */
export function inRows<S extends Box>(spots: readonly S[]): readonly (readonly S[])[] {
  const rows: S[][] = [];
  for (const spot of [...spots].sort((a, b) => centreOf(a).y - centreOf(b).y)) {
    const row = rows.at(-1);
    const first = row?.[0];
    if (row === undefined || first === undefined || centreOf(spot).y - centreOf(first).y > first.h / 2)
      rows.push([spot]);
    else row.push(spot);
  }
  return rows.map((row) => row.sort((a, b) => a.x - b.x));
}

function distanceTo(box: Box, at: Vec): number {
  const dx = Math.max(box.x - at.x, 0, at.x - (box.x + box.w));
  const dy = Math.max(box.y - at.y, 0, at.y - (box.y + box.h));
  return Math.hypot(dx, dy);
}
