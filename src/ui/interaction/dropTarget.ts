import type { Observation } from '../../sim/world/Observation.ts';
import { type Grip, placeOf, sameTarget, type Target } from './Grip.ts';
import { nameOf, targetAt } from './HotspotMeaning.ts';
import { type Box, contains, inside, SHEET, type Vec } from './layout/geometry.ts';
import { placeHotspots } from './layout/hotspots.ts';
import type { PlacedHotspot } from './layout/PlacedHotspot.ts';
import { SHELF_TABS, type ShelfTab, TAB_BOXES } from './layout/shelfPlan.ts';
import { legalTargets } from './targets.ts';

/** How far beside a place a thing may be let go and still go there, bench units. */
const REACH = 16;

/**
 * Where a held thing let go at `at` (bench units) goes: the nearest place it can use within reach, else a place that will refuse it
 * with a reason, else the mat; null outside the bench.
 */
export function dropTarget(grip: Grip, at: Vec, seen: Observation, shelf: ShelfTab): Target | null {
  const legal = legalTargets(grip, seen);
  let best: { target: Target; distance: number; allowed: boolean } | null = null;
  for (const spot of placeHotspots(seen, shelf)) {
    if (!spot.enabled) continue;
    const target = targetAt(spot.id, grip, seen);
    if (target === null) continue;
    const distance = distanceTo(spot, at);
    const allowed = legal.some((each) => sameTarget(each, target));
    if (distance > (allowed && !isTip(target) ? REACH : 0)) continue;
    if (best !== null && (best.allowed === allowed ? best.distance <= distance : best.allowed)) continue;
    best = { target, distance, allowed };
  }
  if (best !== null) return best.target;
  return inside({ x: at.x, y: at.y, w: 0, h: 0 }, SHEET) ? { kind: 'mat' } : null;
}

/** A place a held thing may have been let go for. */
export interface Dropped {
  readonly spot: PlacedHotspot;
  readonly target: Target;
}

/** The places the held thing can go to within `reach` bench units of where it is let go, the nearest first. */
export function droppedNear(
  grip: Grip,
  at: Vec,
  seen: Observation,
  shelf: ShelfTab,
  reach: number,
): readonly Dropped[] {
  const legal = legalTargets(grip, seen);
  return placeHotspots(seen, shelf)
    .flatMap((spot) => {
      const target = spot.enabled ? targetAt(spot.id, grip, seen) : null;
      const distance = distanceTo(spot, at);
      if (target === null || distance > (isTip(target) ? 0 : reach)) return [];
      return legal.some((each) => sameTarget(each, target)) ? [{ spot, target, distance }] : [];
    })
    .sort((a, b) => a.distance - b.distance);
}

/** True right on the place where the held thing is already: a hand that hardly moved means nothing by it. */
export function isAtHome(grip: Grip, at: Vec, seen: Observation, shelf: ShelfTab): boolean {
  const home = placeOf(grip, seen);
  if (home === null) return false;
  return placeHotspots(seen, shelf).some((spot) => {
    if (distanceTo(spot, at) > 0) return false;
    const name = nameOf(spot.id);
    return (name.kind === 'point' || name.kind === 'site') && name.of === home;
  });
}

/** A loose lead's tip lies on the mat and is in the way: only letting go right on it is meant for it. */
function isTip(target: Target): boolean {
  return target.kind === 'point' && target.point.startsWith('meter-');
}

function distanceTo(box: Box, at: Vec): number {
  const dx = Math.max(box.x - at.x, 0, at.x - (box.x + box.w));
  const dy = Math.max(box.y - at.y, 0, at.y - (box.y + box.h));
  return Math.sqrt(dx * dx + dy * dy);
}

/** The shelf's tab at a place, or null. */
export function tabUnder(at: Vec): ShelfTab | null {
  return SHELF_TABS.find((tab) => contains(TAB_BOXES[tab], at)) ?? null;
}
