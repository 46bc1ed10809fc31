import { METER_FUNCTIONS, METER_JACKS } from '../../../../sim/devices/places.ts';
import { boxAround } from '../geometry.ts';
import { JACKS, KEY_BOXES, LCD, METER_KEYS, SELECTOR_STOPS } from '../meterPlan.ts';
import type { PlacedHotspot } from '../PlacedHotspot.ts';
import { spot } from './spot.ts';

/** Window, jacks, keys and the selector's row. */
export function meterSpots(): readonly PlacedHotspot[] {
  return [
    spot('lcd', 'meter', LCD),
    ...METER_JACKS.map((jack) =>
      spot(`meter-jack:${jack}`, 'meter', boxAround({ x: JACKS[jack].x, y: JACKS[jack].y + 8 }, 46, 62)),
    ),
    ...METER_KEYS.map((key) => spot(`meter-key:${key}`, 'meter', KEY_BOXES[key])),
    ...METER_FUNCTIONS.map((which) =>
      spot(`meter-selector:${which}`, 'meter', boxAround(SELECTOR_STOPS[which], 48)),
    ),
  ];
}
