import type { Box, Vec } from './geometry.ts';

/** The inset that shows the plug large: wire side above; below it the wires, and the plug closed or both its faces. */
export const PLUG_INSET: Box = { x: 722, y: 14, w: 480, h: 432 };
export const PLUG_TITLE: Vec = { x: 1118, y: 40 };
export const CAVITY_Y = 178;
export const CAVITY_XS: readonly [number, number, number] = [856, 960, 1064];
/** Heads of the back-probe pins: the points a lead takes hold of. */
export const PIN_HEAD_Y = 122;
export const WIRE_LABEL_Y = 230;
export const PLUG_LATCH: Vec = { x: 1020, y: 334 };

/** Terminals of both halves: the open face of the harness half has its bare mouths above the test-pin sockets. */
export const HARNESS_XS: readonly [number, number, number] = [872, 920, 968];
export const UNIT_XS: readonly [number, number, number] = [1072, 1120, 1168];
export const BARE_TIP_Y = 311;
export const TERMINAL_Y = 359;
export const HALF_TITLE_Y = 277;

/** The harness's three wires on their way to the plug, and the place on them a needle would go through. */
export const PIERCE_X = 770;
export const WIRE_YS: readonly [number, number, number] = [300, 338, 376];
