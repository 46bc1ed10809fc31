import type { Fitting, JarTee, LeadEnd, SmokeGas } from '../../../sim/devices/places.ts';
import type { Box, Vec } from './geometry.ts';

/** The tool shelf along the near edge: stoppers left, the reader right, and between them one open compartment. */
export const SHELF_TABS = ['leads', 'air', 'smoke', 'hands'] as const;
export type ShelfTab = (typeof SHELF_TABS)[number];

export const SHELF: Box = { x: 14, y: 748, w: 1188, h: 124 };
export const COMPARTMENT: Box = { x: 176, y: 748, w: 786, h: 88 };
export const READER: Box = { x: 968, y: 754, w: 228, h: 112 };

const TAB_W = 195;
const tab = (place: number): Box => ({ x: 178 + place * (TAB_W + 1), y: 836, w: TAB_W, h: 36 });
export const TAB_BOXES: Readonly<Record<ShelfTab, Box>> = {
  leads: tab(0),
  air: tab(1),
  smoke: tab(2),
  hands: tab(3),
};

type Stopper = Extract<Fitting, `${'cap' | 'plug'}-${string}`>;
export const STOPPERS: readonly Stopper[] = ['cap-a', 'cap-b', 'cap-c', 'plug-a', 'plug-b', 'plug-c'];
export const STOPPERS_AT_REST: Readonly<Record<Stopper, Vec>> = {
  'cap-a': { x: 44, y: 768 },
  'cap-b': { x: 92, y: 768 },
  'cap-c': { x: 140, y: 768 },
  'plug-a': { x: 42, y: 827 },
  'plug-b': { x: 90, y: 827 },
  'plug-c': { x: 138, y: 827 },
};

/** Leads and lamps. */
const LEADS_Y = 780;
export const PIN_TRAY: Box = { x: 194, y: 760, w: 98, h: 44 };
export const JUMPER_ON_SHELF: Vec = { x: 559, y: LEADS_Y };

/** A lead end at rest: its tip, the middle of its grip. */
export interface RestingEnd {
  readonly tip: Vec;
  readonly grip: Vec;
}

const onShelf = (tip: number, grip: number): RestingEnd => ({
  tip: { x: tip, y: LEADS_Y },
  grip: { x: grip, y: LEADS_Y },
});
const onMat = (tip: number, grip: number, y: number): RestingEnd => ({
  tip: { x: tip, y },
  grip: { x: grip, y },
});

export const METER_ENDS_AT_REST: Readonly<Record<'meter-red' | 'meter-black', RestingEnd>> = {
  'meter-black': onMat(606, 668, 500),
  'meter-red': onMat(606, 668, 548),
};

/** Ends of the two-ended tools on the shelf, and where a free end lies while its partner is in use. */
export const TOOL_ENDS_AT_REST: Readonly<
  Record<
    Exclude<LeadEnd, 'meter-red' | 'meter-black'>,
    { readonly shelf: RestingEnd; readonly mat: RestingEnd }
  >
> = {
  'plain-a': { shelf: onShelf(316, 343), mat: onMat(604, 644, 588) },
  'plain-b': { shelf: onShelf(426, 399), mat: onMat(604, 644, 588) },
  'jumper-supply': { shelf: onShelf(445, 470), mat: onMat(440, 470, 238) },
  'jumper-far': { shelf: onShelf(673, 648), mat: onMat(672, 646, 238) },
  'lamp-clip': { shelf: onShelf(692, 719), mat: onMat(604, 644, 628) },
  'lamp-tip': { shelf: onShelf(814, 778), mat: onMat(604, 644, 628) },
  'led-clip': { shelf: onShelf(832, 858), mat: onMat(604, 644, 668) },
  'led-tip': { shelf: onShelf(954, 918), mat: onMat(604, 644, 668) },
};

/** Vacuum and water. */
export const MANOMETER: Box = { x: 184, y: 753, w: 392, h: 79 };
/** The inclined tube, from the well (0 inH2O) to its far end (30 inH2O). */
export const TUBE_LOW: Vec = { x: 236, y: 805 };
export const TUBE_HIGH: Vec = { x: 566, y: 793 };
/** The reading lens: the water's edge and its scale, enlarged. */
export const LENS: Box = { x: 254, y: 757, w: 170, h: 35 };
/** Tube and lens together: what is read. */
export const TUBE_READ: Box = { x: 240, y: 756, w: 324, h: 74 };
export const REFILL: Vec = { x: 213, y: 775 };
export const JAR: Box = { x: 612, y: 790, w: 132, h: 42 };
export const JAR_TEES_PLAN: Readonly<Record<JarTee, Vec>> = {
  'jar-tee-a': { x: 634, y: 768 },
  'jar-tee-b': { x: 678, y: 768 },
};
export const BLEED: Vec = { x: 788, y: 814 };
export const BLEED_LESS: Vec = { x: 838, y: 814 };
export const BLEED_MORE: Vec = { x: 936, y: 814 };

/** Smoke. */
export const SMOKE_MACHINE: Box = { x: 184, y: 753, w: 512, h: 79 };
export const GAS_BOXES: Readonly<Record<SmokeGas, Box>> = {
  off: { x: 192, y: 757, w: 50, h: 36 },
  inert: { x: 248, y: 757, w: 64, h: 36 },
  'shop-air': { x: 318, y: 757, w: 88, h: 36 },
};
export const REGULATOR: Vec = { x: 356, y: 812 };
export const REGULATOR_LESS: Vec = { x: 310, y: 812 };
export const REGULATOR_MORE: Vec = { x: 402, y: 812 };
export const SMOKE_GAUGE: Vec = { x: 482, y: 792 };
export const SMOKE_GAUGE_RADIUS = 36;
export const FLOW_TUBE: Box = { x: 652, y: 759, w: 26, h: 52 };

/** Hands and eyes. */
export const EYE: Box = { x: 216, y: 754, w: 96, h: 50 };
export const EAR: Box = { x: 356, y: 754, w: 96, h: 50 };
export const DRAG_GAUGE: Box = { x: 496, y: 754, w: 130, h: 50 };

/** Where a hose of a closed compartment comes over the shelf's edge, and where what is on a hidden tee is taken off. */
export const SHELF_EDGE_Y = 748;
