/**
 * What the air network asks of a part. A path carries air between two nodes; a trade is a moving wall that gives
 * volume to one node and takes it from the other. Both are pure functions of pressures and of their own settings.
 */
export type AirPart = AirPath | AirTrade;

/**
 * Counts up with every setting or boundary pressure that is set, in any network: where it stands as it stood, nothing has
 * changed. A part calls `settingsChanged` whenever it writes to its settings.
 */
let changes = 0;

export function settingsChanged(): void {
  changes++;
}

export function settingChanges(): number {
  return changes;
}

/** Filled in by a path. One record is used again and again, so that a step allocates nothing. */
export interface FlowSlope {
  /** Mass flow in kg/s, positive into the part at `from`. */
  q: number;
  /** Derivative of q by the pressure at `from`, kg/(s·Pa), never negative. */
  dFrom: number;
  /** Derivative of q by the pressure at `to`, kg/(s·Pa), never positive. */
  dTo: number;
}

/** Filled in by a trade. */
export interface ShiftSlope {
  /** Volume given to `lower` and taken from `upper`, m³, never negative. */
  shift: number;
  /** Derivative of the shift by (lower − upper) pressure, m³/Pa, never negative. */
  slope: number;
}

export interface AirPath {
  readonly kind: 'path';
  readonly from: number;
  readonly to: number;
  /** Numbers that may change in time (openness and the like); saved with the network's state. As many as there ever are. */
  readonly settings: number[];
  /** True while its settings let no air through at any pressure. */
  readonly closed: boolean;
  /** Pressures absolute in Pa, above zero; temperature in K. */
  flow(pFrom: number, pTo: number, temperatureK: number, out: FlowSlope): void;
}

export interface AirTrade {
  readonly kind: 'trade';
  readonly upper: number;
  readonly lower: number;
  readonly settings: number[];
  /** The largest volume that may be taken from `upper`, m³. */
  readonly fullShiftM3: number;
  /** dp is the pressure of `lower` less that of `upper`, Pa. */
  volumeShift(dp: number, out: ShiftSlope): void;
}
