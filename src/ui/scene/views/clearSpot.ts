import { type Box, centreOf, overlap, SHEET, shared } from '../../interaction/layout/geometry.ts';
import { LABEL_BOXES } from '../../interaction/layout/labels.ts';
import { LCD } from '../../interaction/layout/meterPlan.ts';
import type { PlacedHotspot } from '../../interaction/layout/PlacedHotspot.ts';
import { READER } from '../../interaction/layout/shelfPlan.ts';

const STEP = 14;
const FAR = 420;
const EDGE = 8;
/** Units of distance that covering a whole control, or as much print, is worth. */
const CONTROL_COSTS = 1600;
const PRINT_COSTS = 500;

function sharedArea(a: Box, b: Box): number {
  if (!overlap(a, b)) return 0;
  const w = Math.min(a.x + a.w, b.x + b.w) - Math.max(a.x, b.x);
  const h = Math.min(a.y + a.h, b.y + b.h) - Math.max(a.y, b.y);
  return w * h;
}

function covered(box: Box, others: readonly Box[]): number {
  let shares = 0;
  for (const other of others) shares += sharedArea(box, other) / Math.min(other.w * other.h, box.w * box.h);
  return shares;
}

/** How far two boxes stand apart, edge to edge. */
function gap(a: Box, b: Box): number {
  const x = Math.max(0, a.x - (b.x + b.w), b.x - (a.x + a.w));
  const y = Math.max(0, a.y - (b.y + b.h), b.y - (a.y + a.h));
  return Math.hypot(x, y);
}

/**
 * Where words of this size stand nearest to what they are about without covering it, anything else a hand may want, or, if it can
 * be helped, the print on the bench; always in sight, where `window` says what is.
 */
export function clearSpot(
  size: Pick<Box, 'w' | 'h'>,
  about: Box,
  hotspots: Iterable<PlacedHotspot>,
  window: Box = SHEET,
): Box {
  const room = shared(window, SHEET);
  const [right, low] = [room.x + room.w - EDGE, room.y + room.h - EDGE];
  const controls: Box[] = [about, LCD, READER];
  for (const each of hotspots) if (each.enabled) controls.push(each);
  const middle = centreOf(about);
  let best: Box = { x: room.x + EDGE, y: room.y + EDGE, ...size };
  let least = Number.POSITIVE_INFINITY;
  for (let dy = -FAR; dy <= FAR; dy += STEP) {
    for (let dx = -FAR; dx <= FAR; dx += STEP) {
      const box = { x: middle.x + dx - size.w / 2, y: middle.y + dy - size.h / 2, ...size };
      if (box.x < room.x + EDGE || box.y < room.y + EDGE) continue;
      if (box.x + box.w > right || box.y + box.h > low) continue;
      // Side by side reads best: a little is paid for standing off the middle.
      const distance = gap(box, about) + 0.15 * Math.hypot(dx, dy);
      if (distance >= least) continue;
      const cost =
        distance + CONTROL_COSTS * covered(box, controls) + PRINT_COSTS * covered(box, LABEL_BOXES);
      if (cost >= least) continue;
      least = cost;
      best = box;
    }
  }
  return best;
}
