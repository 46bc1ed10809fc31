import type { MeterFunction } from '../places.ts';

/** One range of the meter: 6000 counts. `resolution` is one count, in volts or ohms. */
export interface MeterRange {
  readonly fullScale: number;
  readonly resolution: number;
  readonly unit: 'mV' | 'V' | 'Ω' | 'kΩ' | 'MΩ';
  /** Displayed number = SI value ÷ scale, with this many decimals. */
  readonly scale: number;
  readonly decimals: number;
  /** Ohms only: the source the meter puts behind its terminals. */
  readonly sourceVolts: number;
  readonly sourceOhms: number;
}

export const COUNTS = 6000;
/** Below this share of full scale the meter ranges down; the gap to 100 % keeps it from hunting for ever. */
export const RANGE_DOWN_SHARE = 0.09;
export const TONE_BELOW_OHMS = 20;
export const INPUT_OHMS = 10e6;

function volts(fullScale: number, unit: 'mV' | 'V', decimals: number): MeterRange {
  const scale = unit === 'mV' ? 1e-3 : 1;
  return {
    fullScale,
    resolution: fullScale / COUNTS,
    unit,
    scale,
    decimals,
    sourceVolts: 0,
    sourceOhms: 0,
  };
}

function ohms(fullScale: number, unit: 'Ω' | 'kΩ' | 'MΩ', decimals: number): MeterRange {
  const scale = unit === 'Ω' ? 1 : unit === 'kΩ' ? 1e3 : 1e6;
  return {
    fullScale,
    resolution: fullScale / COUNTS,
    unit,
    scale,
    decimals,
    sourceVolts: 1,
    sourceOhms: Math.max(fullScale, 1000),
  };
}

const VOLT_RANGES: readonly MeterRange[] = [volts(0.6, 'mV', 1), volts(6, 'V', 3), volts(60, 'V', 2)];

const OHM_RANGES: readonly MeterRange[] = [
  ohms(600, 'Ω', 1),
  ohms(6e3, 'kΩ', 3),
  ohms(60e3, 'kΩ', 2),
  ohms(600e3, 'kΩ', 1),
  ohms(6e6, 'MΩ', 3),
  ohms(60e6, 'MΩ', 2),
];

/** The ranges of a function, smallest first. Continuity stays on the lowest ohms range. */
export function rangesOf(meterFunction: MeterFunction): readonly MeterRange[] {
  switch (meterFunction) {
    case 'off':
    case 'volts-ac':
    case 'volts-low-z':
    case 'diode':
    case 'milliamps-dc':
    case 'amps-dc':
      return [];
    case 'volts-dc':
      return VOLT_RANGES;
    case 'ohms':
      return OHM_RANGES;
    case 'continuity':
      return OHM_RANGES.slice(0, 1);
  }
}
