import type { Box, Vec } from './geometry.ts';

/** The inset that shows the plug large: wire side above; below it the wires, and the plug closed or both its faces. */
export const PLUG_INSET: Box = { x: 722, y: 14, w: 480, h: 432 };
export const PLUG_TITLE: Vec = { x: 738, y: 40 };
export const CAVITY_Y = 168;
export const CAVITY_XS: readonly [number, number, number] = [880, 984, 1088];
/** Heads of the back-probe pins: the points a lead takes hold of. */
export const PIN_HEAD_Y = 112;
export const WIRE_LABEL_Y = 221;
export const PLUG_LATCH: Vec = { x: 1020, y: 336 };

/** Terminals of both halves: the open face of the harness half has its bare mouths above the test-pin sockets. */
export const HARNESS_XS: readonly [number, number, number] = [872, 920, 968];
export const UNIT_XS: readonly [number, number, number] = [1072, 1120, 1168];
export const BARE_TIP_Y = 312;
export const TERMINAL_Y = 364;
export const HALF_TITLE_Y = 272;

/** The harness's three wires on their way to the plug, and the place on them a needle would go through. */
export const PIERCE_X = 770;
export const WIRE_YS: readonly [number, number, number] = [300, 338, 376];
