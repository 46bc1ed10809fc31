import { NOMINAL } from '../parameters.ts';

/** Vapour volume the service data's times are given for, litres. */
const REFERENCE_LITRES = 40;
/** At the reference volume, seconds. */
const TRIP_SECONDS = 120;
const SMALL_SECONDS = 12;
const PASS_SECONDS = 45;
const LONGEST_HOLD_SECONDS = 180;
/** Fewer strokes a litre than this cannot have been the pump alone. */
const LEAST_STROKES_PER_LITRE = 1;
/**
 * The vent delay does not hang on the vapour volume, so this one does not scale. A good unit's seat opens some 5 s after full
 * engine vacuum, a little more or less with its bleed.
 */
export const VENT_SECONDS = 8;

export interface MonitorLimits {
  /** A trip later than this, or none, is a large leak. */
  readonly tripSeconds: number;
  /** A hold under this is a small leak. */
  readonly smallSeconds: number;
  /** A hold under this is a very small leak. */
  readonly passSeconds: number;
  /** A hold is not timed for longer. */
  readonly longestHoldSeconds: number;
  readonly leastStrokes: number;
}

/** The limits at a fuel level (0 to 1): the controller knows the truck's nominal tank and canister. */
export function monitorLimits(fuelLevel: number): MonitorLimits {
  const litres = ((1 - fuelLevel) * NOMINAL.tankM3 + NOMINAL.canisterM3) * 1000;
  const scale = litres / REFERENCE_LITRES;
  return {
    tripSeconds: TRIP_SECONDS * scale,
    smallSeconds: SMALL_SECONDS * scale,
    passSeconds: PASS_SECONDS * scale,
    longestHoldSeconds: LONGEST_HOLD_SECONDS * scale,
    leastStrokes: LEAST_STROKES_PER_LITRE * litres,
  };
}

/** Conditions of a drive as the controller knows them. */
export interface DriveConditions {
  /** The engine stood long enough before the start. */
  readonly soaked: boolean;
  /** A steady cruise came. */
  readonly cruised: boolean;
  readonly ambientC: number;
  /** 0 to 1. */
  readonly fuelLevel: number;
}

/** Soak 6 h, start at 4 to 35 °C, fuel 15 to 85 %, steady cruise. */
export function monitorMayRun({ soaked, cruised, ambientC, fuelLevel }: DriveConditions): boolean {
  const temperate = ambientC >= 4 && ambientC <= 35;
  const partFull = fuelLevel >= 0.15 && fuelLevel <= 0.85;
  return soaked && cruised && temperate && partFull;
}
