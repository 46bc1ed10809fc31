import type { AirPath, AirTrade } from './AirPart.ts';

/** A pressure at which something outside the network happens, such as a switch's trip point. */
export interface AirLevel {
  readonly node: number;
  /** Absolute, Pa. */
  readonly pa: number;
}

/** What never changes once an air network is compiled. Nodes are volumes and boundaries; rows are volumes alone. */
export interface AirLayout {
  readonly temperatureK: number;
  /** The row of a node's volume, −1 for a boundary. */
  readonly rowOf: Int32Array;
  /** The node of a row. */
  readonly nodeOf: Int32Array;
  readonly paths: readonly AirPath[];
  readonly trades: readonly AirTrade[];
  readonly levels: readonly AirLevel[];
  /** The node that counts as outside air, −1 where there is none. */
  readonly ambient: number;
}
