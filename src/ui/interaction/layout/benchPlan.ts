import type { HoseEnd, KeyPosition, UnitPort } from '../../../sim/devices/places.ts';
import type { Box, Vec } from './geometry.ts';

/**
 * Where the fixed things stand on the sheet. Left to right is the job: the truck and its power, the unit, the plug, the
 * meter; the hand pump near the port it serves, the tool shelf along the near edge.
 */

export const BATTERY: Box = { x: 20, y: 106, w: 142, h: 80 };
export const SUPPLY: Box = { x: 184, y: 106, w: 156, h: 80 };
export const SUPPLY_SWITCH: Vec = { x: 312, y: 158 };
export const FUSE_HOLDER: Box = { x: 360, y: 106, w: 120, h: 64 };
export const FUSE_FITTED: Vec = { x: 420, y: 130 };
export const FUSE_LAID_OUT: Vec = { x: 462, y: 196 };
export const CONTROLLER: Box = { x: 520, y: 22, w: 160, h: 78 };

export const KEY_CENTRE: Vec = { x: 104, y: 266 };
export const KEY_LABELS: Readonly<Record<KeyPosition, Vec>> = {
  off: { x: 38, y: 250 },
  on: { x: 104, y: 208 },
  running: { x: 186, y: 250 },
};

export const UNIT_LID: Box = { x: 412, y: 264, w: 222, h: 56 };
export const UNIT_BODY: Box = { x: 402, y: 320, w: 242, h: 148 };
/** The vacuum switch's can on the unit's body. */
export const SWITCH_CAPSULE: Vec = { x: 620, y: 440 };
export const UNIT_CONNECTOR: Box = { x: 618, y: 336, w: 30, h: 58 };

/** The truck's side of the bench: fuel system and filter as far as an eye can go to them. */
export const TRUCK_PANEL: Box = { x: -820, y: 318, w: 924, h: 208 };
export const TRUCK_PLACES: Readonly<
  Record<'filter' | 'canister' | 'filler-cap' | 'tank' | 'purge-valve', Box>
> = {
  'filler-cap': { x: 4, y: 320, w: 44, h: 44 },
  tank: { x: 4, y: 370, w: 44, h: 84 },
  'purge-valve': { x: 4, y: 462, w: 44, h: 58 },
  filter: { x: 54, y: 342, w: 46, h: 52 },
  canister: { x: 54, y: 402, w: 46, h: 66 },
};

export const GAUGE_CENTRE: Vec = { x: 96, y: 622 };
export const GAUGE_RADIUS = 80;
export const PUMP_TEE: Vec = { x: 204, y: 710 };
export const PUMP_RELEASE: Vec = { x: 248, y: 690 };
export const PUMP_BODY: Box = { x: 276, y: 688, w: 152, h: 44 };
/** Centre of the T-handle pushed in, and how far it comes out at full travel. */
export const PUMP_HANDLE_IN: Vec = { x: 448, y: 710 };
export const PUMP_TRAVEL = 104;

/** Tip of each barb and the way it points. */
export const BARBS: Readonly<
  Record<UnitPort, { readonly tip: Vec; readonly direction: Vec; readonly clamp: Vec }>
> = {
  'air-port': { tip: { x: 326, y: 368 }, direction: { x: -1, y: 0 }, clamp: { x: 374, y: 368 } },
  'canister-port': { tip: { x: 326, y: 436 }, direction: { x: -1, y: 0 }, clamp: { x: 374, y: 436 } },
  'engine-port': { tip: { x: 558, y: 532 }, direction: { x: 0, y: 1 }, clamp: { x: 558, y: 490 } },
};

/** From the middle of a clamp to the middle of the badge with its letter. */
export const BADGE_REACH = 36;
const BADGE_WAYS: Readonly<Record<UnitPort, Vec>> = {
  'air-port': { x: 0, y: -1 },
  'canister-port': { x: 0, y: -1 },
  'engine-port': { x: -1, y: 0 },
};

/** Across the barb, the way a clamp's ears and its badge stand. */
export function badgeWay(port: UnitPort): Vec {
  return BADGE_WAYS[port];
}

/** Where a hose comes from, and where its open end lies when it is on nothing. */
export interface HosePlan {
  readonly root: Vec;
  readonly rootDirection: Vec;
  readonly mouth: Vec;
  readonly lies: Vec;
}

const RIGHT: Vec = { x: 1, y: 0 };
const UP: Vec = { x: 0, y: -1 };

/** The jar's, the manometer's and the smoke machine's hoses rise from the shelf; see there for the closed shelf. */
export const HOSES: Readonly<Record<HoseEnd, HosePlan>> = {
  'air-hose-end': {
    root: { x: 108, y: 368 },
    rootDirection: RIGHT,
    mouth: { x: 242, y: 372 },
    lies: RIGHT,
  },
  'canister-hose-end': {
    root: { x: 108, y: 436 },
    rootDirection: RIGHT,
    mouth: { x: 242, y: 440 },
    lies: RIGHT,
  },
  'engine-hose-end': {
    root: { x: 108, y: 500 },
    rootDirection: RIGHT,
    mouth: { x: 400, y: 524 },
    lies: RIGHT,
  },
  'pump-hose-end': {
    root: { x: 204, y: 694 },
    rootDirection: UP,
    mouth: { x: 344, y: 644 },
    lies: RIGHT,
  },
  'jar-hose-end': {
    root: { x: 716, y: 776 },
    rootDirection: UP,
    mouth: { x: 842, y: 774 },
    lies: RIGHT,
  },
  'manometer-hose-end': {
    root: { x: 588, y: 768 },
    rootDirection: UP,
    // It stands up beside its board, clear of the jar's tees and of the jar hose on its way to the unit.
    mouth: { x: 594, y: 716 },
    lies: UP,
  },
  'smoke-hose-end': {
    root: { x: 724, y: 772 },
    rootDirection: UP,
    mouth: { x: 862, y: 778 },
    lies: RIGHT,
  },
};

/** Middle of the jumper's body in use on the mat. */
export const JUMPER_ON_MAT: Vec = { x: 560, y: 212 };
export const JUMPER_HALF = 66;
export const JUMPER_SWITCH_OFFSET = -34;
export const JUMPER_FUSE_OFFSET = 32;
