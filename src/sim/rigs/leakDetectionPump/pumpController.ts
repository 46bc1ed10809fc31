import type { ControllerPlan } from '../../devices/controller/ControllerPlan.ts';
import type { DriveConditions, MonitorLimits } from '../../devices/controller/monitorLimits.ts';
import { NOMINAL } from '../../devices/parameters.ts';

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
const VENT_SECONDS = 8;

/** The limits at a fuel level (0 to 1): the controller knows the truck's nominal tank and canister. */
export function leakMonitorLimits(fuelLevel: number): MonitorLimits {
  const litres = ((1 - fuelLevel) * NOMINAL.tankM3 + NOMINAL.canisterM3) * 1000;
  const scale = litres / REFERENCE_LITRES;
  return {
    tripSeconds: TRIP_SECONDS * scale,
    smallSeconds: SMALL_SECONDS * scale,
    passSeconds: PASS_SECONDS * scale,
    longestHoldSeconds: LONGEST_HOLD_SECONDS * scale,
    leastStrokes: LEAST_STROKES_PER_LITRE * litres,
    ventSeconds: VENT_SECONDS,
  };
}

/** Soak 6 h, start at 4 to 35 °C, fuel 15 to 85 %, steady cruise. */
export function leakMonitorMayRun({ soaked, cruised, ambientC, fuelLevel }: DriveConditions): boolean {
  const temperate = ambientC >= 4 && ambientC <= 35;
  const partFull = fuelLevel >= 0.15 && fuelLevel <= 0.85;
  return soaked && cruised && temperate && partFull;
}

/** The vacuum-decay monitor: draws the vapour side down by strokes, holds it, and times how long it stays. */
export const PUMP_CONTROLLER: ControllerPlan = {
  circuits: {
    feedOpen: 'P2400',
    feedLow: 'P2401',
    feedHigh: 'P2402',
    senseHigh: 'P2406',
    senseImplausible: 'P2404',
  },
  monitor: {
    draws: 'pulsed',
    limits: leakMonitorLimits,
    mayRun: leakMonitorMayRun,
    codes: {
      erratic: 'P2407',
      closedAtRest: 'P2405',
      drawnTooSoon: 'P0441',
      notDrawn: 'P0455',
      lostAtOnce: 'P2404',
      lostSoon: 'P0442',
      lostEarly: 'P0456',
      notVented: 'P0446',
    },
    judgements: ['P0441', 'P0442', 'P0446', 'P0455', 'P0456', 'P0457'],
    afterFilling: { code: 'P0455', becomes: 'P0457' },
  },
};
