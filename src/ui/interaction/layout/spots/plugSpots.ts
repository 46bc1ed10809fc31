import { CAVITIES, needsPartedPlug } from '../../../../sim/devices/places.ts';
import type { Observation } from '../../../../sim/world/Observation.ts';
import { type Box, boxAround } from '../geometry.ts';
import type { PlacedHotspot } from '../PlacedHotspot.ts';
import { CAVITY_XS, CAVITY_Y, PLUG_LATCH } from '../plugPlan.ts';
import { type FixedPoint, POINTS } from '../points.ts';
import { spot } from './spot.ts';

/** Proper places are large; those a careless tip gets to are as small as a finger allows. */
const NUMBERED = ['cavity-1-back', 'cavity-2-back', 'cavity-3-back'] as const;
const PLUG_POINTS: readonly FixedPoint[] = [
  ...NUMBERED,
  ...CAVITIES.map((cavity) => `harness-${cavity}` as const),
  ...CAVITIES.map((cavity) => `unit-${cavity}` as const),
  ...CAVITIES.map((cavity) => `front-${cavity}` as const),
  ...CAVITIES.map((cavity) => `wire-${cavity}` as const),
  'slip-1-2',
  'slip-2-3',
];

function boxOf(point: FixedPoint): Box {
  const at = POINTS[point];
  if (point.startsWith('cavity-')) return boxAround(at, 38);
  if (point.startsWith('slip-')) return boxAround(at, 36, 40);
  if (point.startsWith('front-')) return boxAround(at, 36, 36);
  return point.startsWith('wire-') ? boxAround(at, 44, 36) : boxAround(at, 40);
}

/** The plug's inset: cavities, terminals, wires, the latch. */
export function plugSpots(observation: Observation): readonly PlacedHotspot[] {
  return [
    ...CAVITIES.map((cavity) =>
      spot(`cavity-pin:${cavity}`, 'plug', boxAround({ x: CAVITY_XS[cavity - 1] ?? 0, y: CAVITY_Y }, 52)),
    ),
    spot('plug', 'plug', boxAround(PLUG_LATCH, 52, 46)),
    ...PLUG_POINTS.map((point) => {
      const enabled = !needsPartedPlug(point) || !observation.plug.mated;
      return spot(`point:${point}`, 'plug', boxOf(point), enabled);
    }),
  ];
}
