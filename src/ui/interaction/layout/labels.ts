import { CAVITIES } from '../../../sim/devices/places.ts';
import { BATTERY, CONTROLLER, GAUGE_CENTRE, GAUGE_RADIUS, SUPPLY, UNIT_LID } from './benchPlan.ts';
import { type Box, boxAround } from './geometry.ts';
import { LCD, METER } from './meterPlan.ts';
import {
  CAVITY_XS,
  CAVITY_Y,
  HALF_TITLE_Y,
  HARNESS_XS,
  PLUG_TITLE,
  UNIT_XS,
  WIRE_LABEL_Y,
} from './plugPlan.ts';
import { TAB_BOXES } from './shelfPlan.ts';

/** Faces that must stay readable whatever lies on the bench. */
export const FACES: readonly Box[] = [LCD, boxAround(GAUGE_CENTRE, GAUGE_RADIUS * 2)];

/** Boxes of the printed words that leads and clips keep clear of. */
export const LABEL_BOXES: readonly Box[] = [
  ...CAVITIES.map((cavity) => boxAround({ x: CAVITY_XS[cavity - 1] ?? 0, y: WIRE_LABEL_Y + 11 }, 100, 50)),
  { x: PLUG_TITLE.x, y: PLUG_TITLE.y - 10, w: 84, h: 64 },
  boxAround({ x: HARNESS_XS[1], y: HALF_TITLE_Y }, 110, 20),
  boxAround({ x: UNIT_XS[1], y: HALF_TITLE_Y }, 90, 20),
  { x: 788, y: 286, w: 54, h: 90 }, // letters of the harness wires
  { x: CONTROLLER.x + 12, y: CONTROLLER.y + 20, w: CONTROLLER.w - 24, h: 40 },
  { x: 568, y: 138, w: 52, h: 24 }, // PK/BK
  { x: 648, y: 130, w: 52, h: 24 }, // GY/BU
  { x: 364, y: 214, w: 86, h: 24 }, // splice
  { x: 224, y: 268, w: 68, h: 22 }, // chassis
  { x: 398, y: 149, w: 44, h: 17 }, // fuse
  { x: SUPPLY.x + 8, y: SUPPLY.y + 24, w: 92, h: 50 }, // digits of the supply
  { x: SUPPLY.x + 22, y: SUPPLY.y + 84, w: 112, h: 22 }, // bench supply
  { x: UNIT_LID.x + 30, y: UNIT_LID.y + 14, w: 160, h: 30 }, // leak detection pump
  { x: 414, y: 356, w: 44, h: 26 }, // AIR
  { x: 414, y: 424, w: 80, h: 26 }, // CANISTER
  { x: 518, y: 424, w: 80, h: 42 }, // ENGINE VACUUM
  { x: 596, y: 400, w: 48, h: 64 }, // switch
  { x: METER.x + 10, y: METER.y + 56, w: 226, h: 84 }, // words under the jacks
  { x: 114, y: 332, w: 84, h: 22 }, // air filter
  { x: 114, y: 400, w: 84, h: 22 }, // canister
  { x: 114, y: 464, w: 84, h: 22 }, // engine
  { x: 144, y: 284, w: 40, h: 22 }, // key
  ...Object.values(TAB_BOXES),
];

/** Bodies and fine parts that a clip had better not lie on while there is room elsewhere. */
export const BODY_BOXES: readonly Box[] = [
  CONTROLLER,
  UNIT_LID,
  BATTERY,
  SUPPLY,
  { x: 826, y: CAVITY_Y - 40, w: 316, h: 82 }, // cavities
  { x: 16, y: 196, w: 214, h: 126 }, // key
  { x: 350, y: 318, w: 48, h: 140 }, // clamps of the two large barbs
  { x: 504, y: 470, w: 80, h: 80 }, // engine barb and its clamp
];
