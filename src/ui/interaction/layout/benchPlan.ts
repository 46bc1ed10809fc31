import type {
  HoseEnd,
  KeyPosition,
  LeadEnd,
  LeadPoint,
  MeterFunction,
  UnitPort,
} from '../../../sim/devices/places.ts';
import type { Box, Vec } from './geometry.ts';

/** Where the fixed things stand on the sheet. Left to right is the job: power, unit, plug, meter; pump and tray near. */

export const BATTERY: Box = { x: 28, y: 106, w: 176, h: 80 };
export const FUSE_HOLDER: Box = { x: 228, y: 106, w: 144, h: 64 };
export const FUSE_FITTED: Vec = { x: 300, y: 130 };
export const FUSE_LAID_OUT: Vec = { x: 258, y: 198 };
export const CONTROLLER: Box = { x: 430, y: 24, w: 172, h: 78 };

export const KEY_CENTRE: Vec = { x: 104, y: 272 };
export const KEY_LABELS: Readonly<Record<KeyPosition, Vec>> = {
  off: { x: 38, y: 256 },
  on: { x: 104, y: 214 },
  running: { x: 186, y: 256 },
};

export const UNIT_LID: Box = { x: 338, y: 264, w: 222, h: 56 };
export const UNIT_BODY: Box = { x: 328, y: 320, w: 242, h: 148 };
export const UNIT_CONNECTOR: Box = { x: 544, y: 336, w: 30, h: 58 };

/** Electrical points that never move. The meter's tips move with their leads. */
export type FixedPoint = Exclude<LeadPoint, 'meter-red-tip' | 'meter-black-tip'>;

export const POINTS: Readonly<Record<FixedPoint, Vec>> = {
  'battery-negative': { x: 72, y: 88 },
  'battery-positive': { x: 160, y: 88 },
  'fuse-in': { x: 254, y: 88 },
  'fuse-out': { x: 346, y: 88 },
  'controller-feed': { x: 472, y: 122 },
  'controller-sense': { x: 560, y: 122 },
  'chassis-stud': { x: 246, y: 246 },
  'ground-splice': { x: 330, y: 226 },
  'cavity-1-back': { x: 800, y: 122 },
  'cavity-2-back': { x: 904, y: 122 },
  'cavity-3-back': { x: 1008, y: 122 },
  'harness-1': { x: 690, y: 326 },
  'harness-2': { x: 744, y: 326 },
  'harness-3': { x: 798, y: 326 },
  'unit-1': { x: 918, y: 326 },
  'unit-2': { x: 972, y: 326 },
  'unit-3': { x: 1026, y: 326 },
};

/** The inset that shows the plug large. */
export const PLUG_INSET: Box = { x: 652, y: 36, w: 412, h: 366 };
export const CAVITY_Y = 180;
export const CAVITY_XS: readonly [number, number, number] = [800, 904, 1008];
export const WIRE_LABEL_Y = 235;
export const PLUG_TITLE: Vec = { x: 668, y: 56 };
export const PLUG_LATCH: Vec = { x: 858, y: 322 };

export const METER: Box = { x: 616, y: 452, w: 488, h: 248 };
export const LCD: Box = { x: 762, y: 472, w: 252, h: 128 };
export const JACK_COM: Vec = { x: 658, y: 486 };
export const JACK_VOLTS: Vec = { x: 720, y: 486 };
export const SELECTOR_STOPS: Readonly<Record<MeterFunction, Vec>> = {
  off: { x: 1062, y: 492 },
  'volts-dc': { x: 1062, y: 548 },
  ohms: { x: 1062, y: 604 },
  continuity: { x: 1062, y: 660 },
};

export const GAUGE_CENTRE: Vec = { x: 108, y: 596 };
export const GAUGE_RADIUS = 80;
export const PUMP_TEE: Vec = { x: 212, y: 684 };
export const PUMP_RELEASE: Vec = { x: 256, y: 664 };
export const PUMP_BODY: Box = { x: 284, y: 662, w: 152, h: 44 };
/** Centre of the T-handle pushed in, and how far it comes out at full travel. */
export const PUMP_HANDLE_IN: Vec = { x: 456, y: 684 };
export const PUMP_TRAVEL = 104;

/** Tip of each barb and the way it points. */
export const BARBS: Readonly<
  Record<UnitPort, { readonly tip: Vec; readonly direction: Vec; readonly clamp: Vec }>
> = {
  'air-port': { tip: { x: 252, y: 368 }, direction: { x: -1, y: 0 }, clamp: { x: 300, y: 368 } },
  'canister-port': { tip: { x: 252, y: 436 }, direction: { x: -1, y: 0 }, clamp: { x: 300, y: 436 } },
  'engine-port': { tip: { x: 484, y: 532 }, direction: { x: 0, y: 1 }, clamp: { x: 484, y: 490 } },
};

/** Where each hose comes from, and where its open end lies on the mat when it is on nothing. */
export const HOSES: Readonly<
  Record<
    HoseEnd,
    { readonly root: Vec; readonly rootDirection: Vec; readonly mouth: Vec; readonly lies: Vec }
  >
> = {
  'air-hose-end': {
    root: { x: 16, y: 368 },
    rootDirection: { x: 1, y: 0 },
    mouth: { x: 168, y: 372 },
    lies: { x: 1, y: 0 },
  },
  'canister-hose-end': {
    root: { x: 16, y: 436 },
    rootDirection: { x: 1, y: 0 },
    mouth: { x: 168, y: 440 },
    lies: { x: 1, y: 0 },
  },
  'engine-hose-end': {
    root: { x: 16, y: 500 },
    rootDirection: { x: 1, y: 0 },
    mouth: { x: 326, y: 518 },
    lies: { x: 1, y: 0 },
  },
  'pump-hose-end': {
    root: { x: 212, y: 668 },
    rootDirection: { x: 0, y: -1 },
    mouth: { x: 352, y: 622 },
    lies: { x: 1, y: 0 },
  },
};

export const TRAY: Box = { x: 16, y: 716, w: 1088, h: 74 };
export const TRAY_Y = 742;
export const PIN_TRAY: Box = { x: 30, y: 722, w: 104, h: 40 };
export const TRAY_FITTINGS = {
  'cap-a': { x: 178, y: TRAY_Y },
  'cap-b': { x: 224, y: TRAY_Y },
  'plug-a': { x: 286, y: TRAY_Y },
  'plug-b': { x: 332, y: TRAY_Y },
} as const;
export const READER: Box = { x: 806, y: 722, w: 288, h: 62 };

/** Middle of the jumper's body (switch to the left, fuse to the right of it): in the tray, and in use on the mat. */
export const JUMPER_IN_TRAY: Vec = { x: 653, y: TRAY_Y };
export const JUMPER_ON_MAT: Vec = { x: 536, y: 216 };
export const JUMPER_HALF = 66;
export const JUMPER_SWITCH_OFFSET = -34;
export const JUMPER_FUSE_OFFSET = 32;

/** A lead end at rest: its tip, the middle of its grip. */
export interface RestingEnd {
  readonly tip: Vec;
  readonly grip: Vec;
}

export const METER_ENDS_AT_REST: Readonly<Record<'meter-red' | 'meter-black', RestingEnd>> = {
  'meter-black': { tip: { x: 534, y: 600 }, grip: { x: 534, y: 540 } },
  'meter-red': { tip: { x: 584, y: 600 }, grip: { x: 584, y: 540 } },
};

/** Plain lead and jumper ends in the tray, and where a free end lies while its partner is in use. */
export const TOOL_ENDS_AT_REST: Readonly<
  Record<
    Exclude<LeadEnd, 'meter-red' | 'meter-black'>,
    { readonly tray: RestingEnd; readonly mat: RestingEnd }
  >
> = {
  'plain-a': {
    tray: { tip: { x: 376, y: TRAY_Y }, grip: { x: 408, y: TRAY_Y } },
    mat: { tip: { x: 428, y: 632 }, grip: { x: 428, y: 592 } },
  },
  'plain-b': {
    tray: { tip: { x: 512, y: TRAY_Y }, grip: { x: 480, y: TRAY_Y } },
    mat: { tip: { x: 428, y: 632 }, grip: { x: 428, y: 592 } },
  },
  'jumper-supply': {
    tray: { tip: { x: 536, y: TRAY_Y }, grip: { x: 562, y: TRAY_Y } },
    mat: { tip: { x: 416, y: 178 }, grip: { x: 440, y: 178 } },
  },
  'jumper-far': {
    tray: { tip: { x: 770, y: TRAY_Y }, grip: { x: 744, y: TRAY_Y } },
    mat: { tip: { x: 640, y: 196 }, grip: { x: 626, y: 216 } },
  },
};
