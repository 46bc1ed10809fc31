import {
  type Box,
  centreOf,
  contains,
  distance,
  grow,
  inside,
  SHEET,
  shared,
  type Vec,
} from './layout/geometry.ts';
import { LCD, METER } from './layout/meterPlan.ts';
import { PLUG_INSET } from './layout/plugPlan.ts';
import { SHELF } from './layout/shelfPlan.ts';
import { bringingIn, fitWindow, type SheetFit, windowOf } from './viewFit.ts';

/** Parts of the bench that one goes close to, in the order of the job, after the whole of it. */
export const VIEWS = ['whole', 'power', 'ports', 'plug', 'meter', 'pump', 'tools'] as const;
export type ViewName = (typeof VIEWS)[number];

/** What a view must show, and what it shows as well where that does not make it small. */
interface ViewPlan {
  readonly needs: Box;
  readonly likes: Box;
  /** CSS pixels a bench unit that it never goes below; CLOSE_SCALE where left out. */
  readonly least?: number;
}

const PLUG_AND_WINDOW: Box = {
  x: PLUG_INSET.x - 8,
  y: PLUG_INSET.y - 8,
  w: PLUG_INSET.w + 16,
  h: LCD.y + LCD.h + 8 - (PLUG_INSET.y - 8),
};

const PLANS: Readonly<Record<ViewName, ViewPlan>> = {
  whole: { needs: SHEET, likes: SHEET },
  // Battery, supply, fuse, controller, grounds and key.
  power: { needs: { x: 8, y: 8, w: 700, h: 316 }, likes: { x: 8, y: 8, w: 700, h: 316 } },
  // The unit with its barbs and clamps, and its hoses' ends beside them.
  ports: { needs: { x: 224, y: 254, w: 440, h: 312 }, likes: { x: 8, y: 254, w: 656, h: 492 } },
  // A tip is placed here and read there.
  plug: { needs: grow(PLUG_INSET, 4), likes: PLUG_AND_WINDOW },
  // The meter with the grips of its loose leads and a ring around them, and the open faces of the plug.
  meter: {
    needs: { x: METER.x - 94, y: METER.y - 4, w: METER.w + 98, h: METER.h + 8 },
    likes: { x: 580, y: 264, w: 630, h: METER.y + METER.h + 8 - 264 },
    least: 0.58,
  },
  // Gauge, pump and release, and the ports they are used on.
  pump: { needs: { x: 8, y: 534, w: 572, h: 212 }, likes: { x: 8, y: 320, w: 652, h: 426 } },
  tools: { needs: grow(SHELF, 8), likes: grow(SHELF, 8) },
};

/** Share of its scale that a view gives up for what it likes to show as well. */
const GIVES_UP = 0.3;
/** CSS pixels a bench unit below which a close view is none: what would not fit is moved to instead. */
export const CLOSE_SCALE = 0.68;

/** How a view lies in a host of this size. */
export function fitView(view: ViewName, width: number, height: number): SheetFit {
  const { needs, likes, least = CLOSE_SCALE } = PLANS[view];
  const alone = scaleFor(needs, width, height);
  if (view === 'whole') return fitWindow(alone, needs, needs, width, height);
  const together = scaleFor(likes, width, height);
  const enough = together >= alone * (1 - GIVES_UP) && together >= least;
  return fitWindow(Math.max(enough ? together : alone, least), needs, likes, width, height);
}

/** Room left around a thing that is brought into view, CSS pixels. */
export const MARGIN_PX = 16;

/** The same view, moved as little as shows `meant` whole in it. */
export function fitShowing(view: ViewName, meant: Box | null, width: number, height: number): SheetFit {
  const fit = fitView(view, width, height);
  return meant === null ? fit : bringingIn(fit, meant, width, height, MARGIN_PX);
}

/** A ring around a place reaches so far past it, bench units. */
const RING_REACH = 12;

/** True when a place and a ring around it are in a window; of what is larger than the window, its middle. */
export function isInSight(box: Box, window: Box): boolean {
  const ring = shared(grow(box, RING_REACH), SHEET);
  if (ring.w > window.w || ring.h > window.h) return contains(window, centreOf(box));
  return inside(ring, window);
}

/** Which view to go to for a place: the one it belongs to where that shows it whole, else the nearest that does. */
export function viewShowing(box: Box, width: number, height: number): ViewName {
  const at = centreOf(box);
  const own = viewAt(at);
  const windowAt = (view: ViewName): Box => windowOf(fitView(view, width, height), width, height);
  if (isInSight(box, windowAt(own))) return own;
  const off = (view: ViewName): number => distance(centreOf(windowAt(view)), at);
  const close = VIEWS.filter((view) => view !== 'whole' && isInSight(box, windowAt(view)));
  return close.sort((a, b) => off(a) - off(b))[0] ?? own;
}

function scaleFor({ w, h }: Box, width: number, height: number): number {
  return Math.max(0.05, Math.min(width / w, height / h));
}

/** The view one opens the bench with: all of it, or the meter where all of it would be too small to work on. */
export function firstView(width: number, height: number): ViewName {
  return scaleFor(SHEET, width, height) >= 0.5 ? 'whole' : 'meter';
}

interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}

/** The view of a number key, 0 for the whole bench; null for every other key. */
export function viewOfKey({ key, ctrlKey, altKey, metaKey }: KeyPress): ViewName | null {
  if (ctrlKey || altKey || metaKey || !/^\d$/.test(key)) return null;
  return VIEWS[Number(key)] ?? null;
}

/** Which view moves in to a place of the sheet. */
export function viewAt({ x, y }: Vec): ViewName {
  const holds = (box: Box): boolean => x >= box.x && x <= box.x + box.w && y >= box.y && y <= box.y + box.h;
  if (holds(PLANS.plug.needs)) return 'plug';
  if (holds(grow(METER, 4))) return 'meter';
  if (y >= SHELF.y - 8) return 'tools';
  if (holds(PLANS.pump.needs) && y > 566) return 'pump';
  if (holds({ x: 0, y: 324, w: 700, h: 242 }) || holds({ x: 402, y: 254, w: 250, h: 312 })) return 'ports';
  return y < 324 ? 'power' : 'pump';
}
