import type { ParameterName } from '../parameters.ts';
import type { MeterFunction } from '../places.ts';

/** How one function of the meter works. */
export interface MeterSpec {
  /** What it looks at: the volts jack, or one of the two shunts, whichever jack the lead is in. */
  readonly looksAt: 'input' | 'milliamp-shunt' | 'amp-shunt';
  /** What it makes of the volts there: their mean, the RMS of their alternating part, ohms, or amps. */
  readonly makes: 'mean' | 'rms' | 'ohms' | 'amps';
  /** Resistance between the jacks where the function has no source of its own. */
  readonly inputOhms: number | null;
  /** Range it tries first. */
  readonly firstRange: number;
  /** Which of the instrument's own errors goes into its readings. */
  readonly error: ParameterName;
}

/** Input of an ordinary digital voltmeter. */
export const INPUT_OHMS = 10e6;
/** Input of the low-impedance volts: a ghost voltage cannot feed it. */
export const LOW_Z_OHMS = 3000;
export const MILLIAMP_SHUNT_OHMS = 1;
export const AMP_SHUNT_OHMS = 0.01;

const VOLTS: MeterSpec = {
  looksAt: 'input',
  makes: 'mean',
  inputOhms: INPUT_OHMS,
  firstRange: 2,
  error: 'meterVoltsError',
};
const OHMS: MeterSpec = {
  looksAt: 'input',
  makes: 'ohms',
  inputOhms: null,
  firstRange: 0,
  error: 'meterOhmsError',
};

export const METER_SPECS: Readonly<Record<Exclude<MeterFunction, 'off'>, MeterSpec>> = {
  'volts-dc': VOLTS,
  'volts-ac': { ...VOLTS, makes: 'rms', error: 'meterAcError' },
  'volts-low-z': { ...VOLTS, inputOhms: LOW_Z_OHMS },
  ohms: OHMS,
  continuity: OHMS,
  diode: { ...VOLTS, inputOhms: null, firstRange: 0 },
  'milliamps-dc': {
    looksAt: 'milliamp-shunt',
    makes: 'amps',
    inputOhms: null,
    firstRange: 1,
    error: 'meterAmpsError',
  },
  'amps-dc': {
    looksAt: 'amp-shunt',
    makes: 'amps',
    inputOhms: null,
    firstRange: 1,
    error: 'meterAmpsError',
  },
};
