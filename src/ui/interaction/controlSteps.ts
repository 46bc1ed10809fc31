import type { ExtremesMode } from '../../sim/devices/places.ts';
import type { Action } from '../../sim/world/Action.ts';
import type { MeterObservation, Observation } from '../../sim/world/Observation.ts';
import type { MeterKey } from './layout/meterPlan.ts';

/**
 * Stops of the jar's needle bleed, shut to open. Its area goes with the square of how far it is open, so each stop lets
 * through about twice the air of the one before. The first lets the jar down by some 2 inH2O in a minute.
 */
export const BLEED_STOPS = [0, 0.14, 0.2, 0.28, 0.4, 0.57, 0.8, 1] as const;

/** Stops of the smoke machine's regulator, Pa above the room: fine up to the 14 inH2O (3.5 kPa) no tank may see more of. */
export const SMOKE_STOPS = [
  0, 250, 500, 750, 1000, 1500, 2000, 2500, 3000, 3500, 4500, 6000, 8000, 10_000, 12_000, 14_000,
] as const;

/** The next stop above or below a value; null at the end of the scale. */
export function nextStop(stops: readonly number[], value: number, turn: 1 | -1): number | null {
  const slack = 1e-6;
  if (turn === 1) return stops.find((stop) => stop > value + slack) ?? null;
  return [...stops].reverse().find((stop) => stop < value - slack) ?? null;
}

/** One step of the needle bleed; null at its end. */
export function bleedAction(seen: Observation, turn: 1 | -1): Action | null {
  const openness = nextStop(BLEED_STOPS, seen.bleed, turn);
  return openness === null ? null : { kind: 'set-bleed', openness };
}

/** One step of the smoke regulator; null at its end. */
export function smokeAction(seen: Observation, turn: 1 | -1): Action | null {
  const { gas, setKPa } = seen.smoke;
  const pa = nextStop(SMOKE_STOPS, Math.round(setKPa * 1000), turn);
  return pa === null ? null : { kind: 'set-smoke', gas, pa };
}

const NEXT_EXTREME: Readonly<Record<ExtremesMode, ExtremesMode>> = {
  off: 'live',
  live: 'low',
  low: 'high',
  high: 'off',
};

/** What one press of a key of the meter asks for. The range key goes up the ranges and then back to automatic. */
export function meterKeyAction(key: MeterKey, meter: MeterObservation): Action {
  switch (key) {
    case 'range': {
      const next = meter.heldRange === null ? 0 : meter.heldRange + 1;
      return { kind: 'meter-range', range: next < Math.max(1, meter.ranges.length) ? next : null };
    }
    case 'hold':
      return { kind: 'meter-hold', on: !meter.hold };
    case 'extremes':
      return { kind: 'meter-extremes', show: NEXT_EXTREME[meter.extremes] };
    case 'relative':
      return { kind: 'meter-relative', on: !meter.relative };
  }
}
