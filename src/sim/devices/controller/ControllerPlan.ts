import type { DriveConditions, MonitorLimits } from './monitorLimits.ts';
import type { TroubleCode } from './troubleCodes.ts';

/** Codes of the continuous tests of feed and sense. */
export interface CircuitCodes {
  readonly feedOpen: TroubleCode;
  readonly feedLow: TroubleCode;
  readonly feedHigh: TroubleCode;
  readonly senseHigh: TroubleCode;
  readonly senseImplausible: TroubleCode;
}

/** Codes of the monitor, by what it has seen. */
export interface MonitorCodes {
  /** The sense changes where it should stand still. */
  readonly erratic: TroubleCode;
  /** The switch is closed before anything was drawn. */
  readonly closedAtRest: TroubleCode;
  /** It closed after too few strokes. */
  readonly drawnTooSoon: TroubleCode;
  readonly notDrawn: TroubleCode;
  /** It opened at once, soon, or before its time, though the solenoid was held on. */
  readonly lostAtOnce: TroubleCode;
  readonly lostSoon: TroubleCode;
  readonly lostEarly: TroubleCode;
  /** It stayed closed after the solenoid was let go. */
  readonly notVented: TroubleCode;
}

/** How the monitor goes about it on the road. */
export interface MonitorPlan {
  /** Whether the solenoid is pulsed until the switch closes, or held on. */
  readonly draws: 'pulsed' | 'held';
  limits(fuelLevel: number): MonitorLimits;
  mayRun(conditions: DriveConditions): boolean;
  readonly codes: MonitorCodes;
  /** Codes that are a judgement of the monitor; the others say that a circuit would not let it judge. */
  readonly judgements: readonly TroubleCode[];
  /** A failure first seen right after the tank was filled is put down to the cap. */
  readonly afterFilling: { readonly code: TroubleCode; readonly becomes: TroubleCode } | null;
}

/** What the controller of a rig watches, and the codes that it sets. */
export interface ControllerPlan {
  readonly circuits: CircuitCodes;
  readonly monitor: MonitorPlan;
}
