import { CAVITIES } from '../../../sim/devices/places.ts';
import { CAVITY_XS, GAUGE_CENTRE, GAUGE_RADIUS, LCD, WIRE_LABEL_Y } from './benchPlan.ts';
import { type Box, boxAround } from './geometry.ts';

/** Faces that must stay readable whatever lies on the bench. */
export const FACES: readonly Box[] = [LCD, boxAround(GAUGE_CENTRE, GAUGE_RADIUS * 2)];

/** Boxes of the printed words that leads and clips keep clear of. */
export const LABEL_BOXES: readonly Box[] = [
  ...CAVITIES.map((cavity) => boxAround({ x: CAVITY_XS[cavity - 1] ?? 0, y: WIRE_LABEL_Y + 10 }, 100, 50)),
  { x: 652, y: 354, w: 412, h: 30 }, // plug caption
  { x: 430, y: 40, w: 172, h: 40 }, // controller
  { x: 478, y: 138, w: 60, h: 24 }, // PK/BK
  { x: 566, y: 138, w: 60, h: 24 }, // GY/BU
  { x: 376, y: 210, w: 90, h: 28 }, // splice
  { x: 226, y: 258, w: 76, h: 24 }, // chassis
  { x: 630, y: 504, w: 124, h: 24 }, // COM, V Ω
  { x: 24, y: 328, w: 110, h: 24 }, // air filter
  { x: 24, y: 396, w: 110, h: 24 }, // canister
  { x: 24, y: 464, w: 110, h: 24 }, // engine
];
