/** What a run of the monitor is held against. */
export interface MonitorLimits {
  /** Drawn later than this, or not at all: what is drawn leaks much, or is not drawn. */
  readonly tripSeconds: number;
  /** A hold under this is a small leak. */
  readonly smallSeconds: number;
  /** A hold under this is a very small leak. */
  readonly passSeconds: number;
  /** A hold is not timed for longer. */
  readonly longestHoldSeconds: number;
  readonly leastStrokes: number;
  /** Let go, the switch opens within this. */
  readonly ventSeconds: number;
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
