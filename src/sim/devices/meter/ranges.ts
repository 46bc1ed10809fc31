import type { MeterFunction } from '../places.ts';

/** Accuracy as a maker states it: ±(`percent` of reading + `counts` of the last digit). */
export interface Accuracy {
  readonly percent: number;
  readonly counts: number;
}

/** One range of the meter. Numbers are in SI: volts, ohms or amps. */
export interface MeterRange {
  readonly fullScale: number;
  /** One count of the last digit. */
  readonly resolution: number;
  /** The largest number of counts it can show. */
  readonly mostCounts: number;
  readonly unit: 'mV' | 'V' | 'Ω' | 'kΩ' | 'MΩ' | 'mA' | 'A';
  /** Displayed number = SI value ÷ scale, with this many decimals. */
  readonly scale: number;
  readonly decimals: number;
  readonly accuracy: Accuracy;
  /** The source the meter puts behind its jacks; 0 where it puts none. */
  readonly sourceVolts: number;
  readonly sourceOhms: number;
}

const COUNTS = 6000;
/** The meter ranges down below this share of the next smaller range; the gap to a whole one keeps it from hunting. */
export const RANGE_DOWN_SHARE = 0.9;

const SCALES: Readonly<Record<MeterRange['unit'], number>> = {
  mV: 1e-3,
  V: 1,
  Ω: 1,
  kΩ: 1e3,
  MΩ: 1e6,
  mA: 1e-3,
  A: 1,
};

/** A range written as the trade reads it: full scale and unit, decimals, accuracy in per cent and counts. */
function range(
  full: number,
  unit: MeterRange['unit'],
  decimals: number,
  percent: number,
  counts: number,
): MeterRange {
  const scale = SCALES[unit];
  let steps = 1;
  for (let i = 0; i < decimals; i++) steps *= 10;
  return {
    fullScale: full * scale,
    resolution: scale / steps,
    mostCounts: Math.min(full * steps, COUNTS - 1),
    unit,
    scale,
    decimals,
    accuracy: { percent, counts },
    sourceVolts: 0,
    sourceOhms: 0,
  };
}

/** Resistance functions: about 1 V open, 1 mA at most, half of the open voltage at full scale. */
function ohms(
  full: number,
  unit: 'Ω' | 'kΩ' | 'MΩ',
  decimals: number,
  percent: number,
  counts: number,
): MeterRange {
  const plain = range(full, unit, decimals, percent, counts);
  return { ...plain, sourceVolts: 1, sourceOhms: Math.max(plain.fullScale, 1000) };
}

const DC_VOLTS: readonly MeterRange[] = [
  range(600, 'mV', 1, 0.5, 2),
  range(6, 'V', 3, 0.5, 2),
  range(60, 'V', 2, 0.5, 2),
  range(600, 'V', 1, 0.8, 3),
];

/** Specified for 40 Hz to 1 kHz; slower waves read as each window of a quarter second happens to catch them. */
const AC_VOLTS: readonly MeterRange[] = [
  range(600, 'mV', 1, 1.5, 4),
  range(6, 'V', 3, 1, 3),
  range(60, 'V', 2, 1, 3),
  range(600, 'V', 1, 1, 3),
];

const LOW_Z_VOLTS: readonly MeterRange[] = [
  range(600, 'mV', 1, 1, 4),
  range(6, 'V', 3, 1, 4),
  range(60, 'V', 2, 1, 4),
  range(600, 'V', 1, 1, 4),
];

const OHMS: readonly MeterRange[] = [
  ohms(600, 'Ω', 1, 0.8, 2),
  ohms(6, 'kΩ', 3, 0.8, 2),
  ohms(60, 'kΩ', 2, 0.8, 2),
  ohms(600, 'kΩ', 1, 0.8, 2),
  ohms(6, 'MΩ', 3, 1.5, 3),
  ohms(60, 'MΩ', 2, 3, 5),
];

const CONTINUITY: readonly MeterRange[] = [ohms(600, 'Ω', 1, 1, 3)];

/** About 1 mA into a diode of 0.6 V, never more than 3 V: a white or blue lamp of any kind stays over range. */
const DIODE: readonly MeterRange[] = [{ ...range(2, 'V', 3, 1, 3), sourceVolts: 3, sourceOhms: 2400 }];

const MILLIAMPS: readonly MeterRange[] = [range(60, 'mA', 2, 1, 3), range(600, 'mA', 1, 1, 3)];

const AMPS: readonly MeterRange[] = [range(6, 'A', 3, 1.5, 3), range(10, 'A', 2, 1.5, 3)];

const RANGES: Readonly<Record<MeterFunction, readonly MeterRange[]>> = {
  off: [],
  'volts-dc': DC_VOLTS,
  'volts-ac': AC_VOLTS,
  'volts-low-z': LOW_Z_VOLTS,
  ohms: OHMS,
  continuity: CONTINUITY,
  diode: DIODE,
  'milliamps-dc': MILLIAMPS,
  'amps-dc': AMPS,
};

/** The ranges of a function, smallest first. */
export function rangesOf(meterFunction: MeterFunction): readonly MeterRange[] {
  return RANGES[meterFunction];
}

/** The ranges of a function as the trade writes them: '600 mV', '6 V'. */
export function rangeNames(meterFunction: MeterFunction): readonly string[] {
  return NAMES.get(meterFunction) ?? [];
}

/** One range likewise. */
export function rangeName({ fullScale, scale, unit }: MeterRange): string {
  return `${Math.floor(fullScale / scale + 0.5)} ${unit}`;
}

const NAMES: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries(RANGES).map(([meterFunction, ranges]) => [meterFunction, ranges.map(rangeName)]),
);
