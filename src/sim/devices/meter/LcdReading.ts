import type { MeterRange } from './ranges.ts';

/** What stands on the LCD. Plain JSON. */
export interface LcdReading {
  readonly digits: string;
  readonly unit: '' | MeterRange['unit'];
  readonly value: number | null;
  readonly bar: number;
  readonly settled: boolean;
}

export const DARK: LcdReading = { digits: '', unit: '', value: null, bar: 0, settled: false };
