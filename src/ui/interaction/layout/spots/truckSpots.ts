import { type HoseEnd, WIGGLE_PLACES, type WigglePlace } from '../../../../sim/devices/places.ts';
import { BATTERY, HOSES, TRUCK_PLACES, UNIT_LID } from '../benchPlan.ts';
import { type Box, boxAround, centreOf } from '../geometry.ts';
import { LOOKED_AT, type LookedAt } from '../lookedAt.ts';
import type { PlacedHotspot } from '../PlacedHotspot.ts';
import { spot } from './spot.ts';

/** Where a hand takes hold of the harness to move it. */
export const WIGGLE_BOXES: Readonly<Record<WigglePlace, Box>> = {
  feed: boxAround({ x: 606, y: 174 }, 44, 36),
  ground: boxAround({ x: 540, y: 251 }, 48, 36),
  sense: boxAround({ x: 700, y: 214 }, 36, 48),
  plug: boxAround({ x: 664, y: 365 }, 36, 58),
};

/** The first stretch of a truck hose, which lies there whatever its end is on. */
function runOf(end: HoseEnd): Box {
  const { root } = HOSES[end];
  return { x: root.x + 8, y: root.y - 18, w: 50, h: 36 };
}

const LOOKED_AT_BOXES: Readonly<Record<LookedAt, Box>> = {
  battery: boxAround({ x: centreOf(BATTERY).x, y: 164 }, 110, 36),
  unit: boxAround(centreOf(UNIT_LID), 150, 38),
  'air-hose': runOf('air-hose-end'),
  'canister-hose': runOf('canister-hose-end'),
  'engine-hose': runOf('engine-hose-end'),
  ...TRUCK_PLACES,
};

/** What an eye goes to, and where the harness is wiggled. */
export function truckSpots(): readonly PlacedHotspot[] {
  return [
    ...LOOKED_AT.map((place) => spot(`place:${place}`, 'truck', LOOKED_AT_BOXES[place])),
    ...WIGGLE_PLACES.map((place) => spot(`wiggle:${place}`, 'truck', WIGGLE_BOXES[place])),
  ];
}
