import type { LeadPoint } from '../../../sim/devices/places.ts';
import type { Vec } from './geometry.ts';
import {
  BARE_TIP_Y,
  CAVITY_XS,
  CAVITY_Y,
  HARNESS_XS,
  PIERCE_X,
  PIN_HEAD_Y,
  TERMINAL_Y,
  UNIT_XS,
  WIRE_YS,
} from './plugPlan.ts';

/** Electrical points that never move. The meter's tips move with their leads. */
export type FixedPoint = Exclude<LeadPoint, 'meter-red-tip' | 'meter-black-tip'>;

/** Places a careless tip gets to: they can be used, and nobody is invited to. */
export function isCareless(point: LeadPoint): boolean {
  return /^(front|wire|slip)-/.test(point);
}

export const POINTS: Readonly<Record<FixedPoint, Vec>> = {
  'battery-negative': { x: 54, y: 88 },
  'battery-positive': { x: 130, y: 88 },
  'supply-negative': { x: 224, y: 88 },
  'supply-positive': { x: 304, y: 88 },
  'fuse-in': { x: 386, y: 88 },
  'fuse-out': { x: 454, y: 88 },
  'controller-feed': { x: 558, y: 122 },
  'controller-sense': { x: 640, y: 122 },
  'chassis-stud': { x: 258, y: 246 },
  'ground-splice': { x: 340, y: 226 },
  'cavity-1-back': { x: CAVITY_XS[0], y: PIN_HEAD_Y },
  'cavity-2-back': { x: CAVITY_XS[1], y: PIN_HEAD_Y },
  'cavity-3-back': { x: CAVITY_XS[2], y: PIN_HEAD_Y },
  'slip-1-2': { x: (CAVITY_XS[0] + CAVITY_XS[1]) / 2, y: CAVITY_Y },
  'slip-2-3': { x: (CAVITY_XS[1] + CAVITY_XS[2]) / 2, y: CAVITY_Y },
  'harness-1': { x: HARNESS_XS[0], y: TERMINAL_Y },
  'harness-2': { x: HARNESS_XS[1], y: TERMINAL_Y },
  'harness-3': { x: HARNESS_XS[2], y: TERMINAL_Y },
  'front-1': { x: HARNESS_XS[0], y: BARE_TIP_Y },
  'front-2': { x: HARNESS_XS[1], y: BARE_TIP_Y },
  'front-3': { x: HARNESS_XS[2], y: BARE_TIP_Y },
  'unit-1': { x: UNIT_XS[0], y: TERMINAL_Y },
  'unit-2': { x: UNIT_XS[1], y: TERMINAL_Y },
  'unit-3': { x: UNIT_XS[2], y: TERMINAL_Y },
  'wire-1': { x: PIERCE_X, y: WIRE_YS[0] },
  'wire-2': { x: PIERCE_X, y: WIRE_YS[1] },
  'wire-3': { x: PIERCE_X, y: WIRE_YS[2] },
};
