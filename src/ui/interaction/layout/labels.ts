import { CAVITIES } from '../../../sim/devices/places.ts';
import {
  CAVITY_XS,
  CONTROLLER,
  GAUGE_CENTRE,
  GAUGE_RADIUS,
  LCD,
  PLUG_TITLE,
  UNIT_LID,
  WIRE_LABEL_Y,
} from './benchPlan.ts';
import { type Box, boxAround } from './geometry.ts';

/** Faces that must stay readable whatever lies on the bench. */
export const FACES: readonly Box[] = [LCD, boxAround(GAUGE_CENTRE, GAUGE_RADIUS * 2)];

/** Boxes of the printed words that leads and clips keep clear of. */
export const LABEL_BOXES: readonly Box[] = [
  ...CAVITIES.map((cavity) => boxAround({ x: CAVITY_XS[cavity - 1] ?? 0, y: WIRE_LABEL_Y + 11 }, 100, 50)),
  { x: PLUG_TITLE.x, y: PLUG_TITLE.y - 10, w: 84, h: 70 },
  { x: 664, y: 272, w: 160, h: 22 }, // harness half
  { x: 892, y: 272, w: 160, h: 22 }, // unit half
  { x: 440, y: 44, w: 152, h: 40 }, // controller
  { x: 480, y: 138, w: 56, h: 24 }, // PK/BK
  { x: 568, y: 130, w: 56, h: 24 }, // GY/BU
  { x: 354, y: 214, w: 80, h: 24 }, // splice
  { x: 212, y: 268, w: 68, h: 22 }, // chassis
  { x: 268, y: 146, w: 64, h: 22 }, // fuse
  { x: 370, y: 278, w: 158, h: 30 }, // leak detection pump
  { x: 340, y: 356, w: 44, h: 26 }, // AIR
  { x: 340, y: 424, w: 80, h: 26 }, // CANISTER
  { x: 444, y: 424, w: 80, h: 42 }, // ENGINE VACUUM
  { x: 630, y: 506, w: 120, h: 24 }, // COM, V Ω
  { x: 28, y: 332, w: 84, h: 22 }, // air filter
  { x: 28, y: 400, w: 84, h: 22 }, // canister
  { x: 28, y: 464, w: 84, h: 22 }, // engine
  { x: 84, y: 316, w: 40, h: 20 }, // key
];

/** Bodies and fine parts that a clip had better not lie on while there is room elsewhere. */
export const BODY_BOXES: readonly Box[] = [
  CONTROLLER,
  UNIT_LID,
  { x: 736, y: 140, w: 328, h: 80 }, // cavities
  { x: 16, y: 196, w: 214, h: 126 }, // key
  { x: 276, y: 318, w: 48, h: 140 }, // clamps of the two large barbs
  { x: 430, y: 470, w: 80, h: 80 }, // engine barb and its clamp
];
