import type { MeterFunction, MeterJack } from '../../../sim/devices/places.ts';
import type { Box, Vec } from './geometry.ts';

/** The meter: jacks on its far edge where the leads arrive, window beside them, keys, and the row of its selector. */
export const METER: Box = { x: 722, y: 468, w: 480, h: 264 };
export const LCD: Box = { x: 954, y: 484, w: 228, h: 128 };
export const JACK_COM: Vec = { x: 758, y: 502 };
export const JACKS: Readonly<Record<MeterJack, Vec>> = {
  volts: { x: 814, y: 502 },
  milliamps: { x: 870, y: 502 },
  amps: { x: 926, y: 502 },
};

/** Keys under the window, in our own order. */
export const METER_KEYS = ['range', 'hold', 'extremes', 'relative'] as const;
export type MeterKey = (typeof METER_KEYS)[number];
export const KEY_BOXES: Readonly<Record<MeterKey, Box>> = {
  range: { x: 740, y: 622, w: 104, h: 38 },
  hold: { x: 853, y: 622, w: 104, h: 38 },
  extremes: { x: 966, y: 622, w: 104, h: 38 },
  relative: { x: 1079, y: 622, w: 104, h: 38 },
};

const ROW_Y = 696;
const stop = (place: number): Vec => ({ x: 758 + place * 51, y: ROW_Y });

/** The row of the selector: what is measured with no current on the left, currents on the right. */
export const SELECTOR_STOPS: Readonly<Record<MeterFunction, Vec>> = {
  off: stop(0),
  'volts-dc': stop(1),
  'volts-low-z': stop(2),
  'volts-ac': stop(3),
  ohms: stop(4),
  continuity: stop(5),
  diode: stop(6),
  'milliamps-dc': stop(7),
  'amps-dc': stop(8),
};
