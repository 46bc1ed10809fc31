import { type SmokePlace, UNIT_PORTS } from '../../../sim/devices/places.ts';
import type { Observation } from '../../../sim/world/Observation.ts';
import { say } from '../../../text/translate.ts';
import { BARBS, HOSES, SWITCH_CAPSULE } from '../../interaction/layout/benchPlan.ts';
import {
  along,
  type Box,
  centreOf,
  inside,
  overlap,
  SHEET,
  type Vec,
} from '../../interaction/layout/geometry.ts';
import { siteIsOpen, siteIsShown, siteOf } from '../../interaction/layout/hoses.ts';
import { LABEL_BOXES } from '../../interaction/layout/labels.ts';
import { SHELF_EDGE_Y, type ShelfTab } from '../../interaction/layout/shelfPlan.ts';
import { SIZE } from '../../theme/type.ts';
import type { Art } from '../Art.ts';
import type { Layer } from '../Frame.ts';

const PLACES: Readonly<Record<Exclude<SmokePlace, 'loose-end'>, Vec>> = {
  'unit-body': { x: 500, y: 408 },
  'unit-capsule': SWITCH_CAPSULE,
  'canister-port': { x: 388, y: 424 },
  'air-port': { x: 388, y: 356 },
  'engine-port': { x: 606, y: 516 },
  'canister-hose': { x: 224, y: 428 },
  'air-hose': { x: 224, y: 360 },
  'engine-hose': { x: 224, y: 516 },
  filter: { x: 92, y: 342 },
  canister: { x: 82, y: 410 },
  'filler-cap': { x: 30, y: 326 },
  'tank-seal': { x: 28, y: 378 },
  'purge-valve': { x: 30, y: 468 },
  jar: { x: 700, y: SHELF_EDGE_Y },
  pump: { x: 356, y: 684 },
};

const LOOSE_ENDS = ['canister-hose-end', 'air-hose-end', 'engine-hose-end', 'pump-hose-end'] as const;

/** Where a place's smoke is drawn. A loose end's: the smoke hose's own while it lies free, else the first that is open. */
export function smokeAt(place: SmokePlace, seen: Observation, shelf: ShelfTab): Vec {
  const port = UNIT_PORTS.find((each) => each === place);
  // Out of a bare barb it comes at its mouth; past a hose or a cap it comes behind the clamp.
  if (port !== undefined && seen.sites[port] === null)
    return along(BARBS[port].tip, BARBS[port].direction, 8);
  if (place !== 'loose-end') return PLACES[place];
  const own = HOSES['smoke-hose-end'];
  if (siteOf(seen, 'smoke-hose') === null)
    return siteIsShown('smoke-hose-end', shelf) ? own.mouth : { x: own.root.x, y: SHELF_EDGE_Y };
  return HOSES[LOOSE_ENDS.find((each) => siteIsOpen(seen, each, shelf)) ?? 'smoke-hose-end'].mouth;
}

/** How far over its place the word beside a puff may stand, the likeliest first. */
const WORD_RISES = [46, 36, 26, 16, 60, 74] as const;

/** Where the word beside a puff stands: to its right, else to its left, on no printed word if that can be helped. */
export function smokeWord(at: Vec): Box {
  const [right, left] = [Math.min(SHEET.w - 76, at.x + 20), at.x - 88];
  const boxes = [right, left].flatMap((x) => WORD_RISES.map((rise) => ({ x, y: at.y - rise, w: 66, h: 26 })));
  const clear = boxes.find((box) => inside(box, SHEET) && !LABEL_BOXES.some((label) => overlap(label, box)));
  return clear ?? { x: right, y: at.y - WORD_RISES[0], w: 66, h: 26 };
}

/** A curl of smoke, outlined, and the word beside it. */
function paintPuff(art: Art, at: Vec): void {
  const { tokens } = art;
  const balls = [
    { dx: 0, dy: -6, r: 8 },
    { dx: 9, dy: -18, r: 10 },
    { dx: -7, dy: -24, r: 11 },
    { dx: 5, dy: -36, r: 13 },
  ];
  for (const { dx, dy, r } of balls) art.circle({ x: at.x + dx, y: at.y + dy }, r, { line: 4 });
  for (const { dx, dy, r } of balls)
    art.circle({ x: at.x + dx, y: at.y + dy }, r, { fill: tokens.steelLight });
  const pill = smokeWord(at);
  art.box(pill, 13, { fill: tokens.cream, line: 1.8 });
  art.print(say('drawing.smokeSeen'), centreOf(pill), {
    size: SIZE.small,
    weight: '700',
    colour: tokens.live,
  });
}

/** Smoke wherever it is seen to come out. */
export const smokePuffs: Layer = {
  name: 'smoke',
  key: ({ observation, view }) =>
    observation.smoke.seenAt
      .map((place) => {
        const { x, y } = smokeAt(place, observation, view.shelf);
        return `${place} ${x} ${y}`;
      })
      .join(),
  paint(art, { observation, view }) {
    for (const place of observation.smoke.seenAt) paintPuff(art, smokeAt(place, observation, view.shelf));
  },
};
