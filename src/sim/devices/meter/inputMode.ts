import type { MeterInputMode } from '../../components/MeterInput.ts';
import type { MeterFunction } from '../places.ts';
import { batteryIsFlat } from './meterBattery.ts';
import { METER_SPECS } from './meterSpecs.ts';
import { rangesOf } from './ranges.ts';

const OPEN: MeterInputMode = { kind: 'open' };

/**
 * What the meter puts between its volts and common jacks. The current functions leave them open; a flat battery
 * leaves the divider of the volts functions and takes the source of the others.
 */
export function inputMode(meterFunction: MeterFunction, range: number, charge: number): MeterInputMode {
  if (meterFunction === 'off') return OPEN;
  const { inputOhms, looksAt } = METER_SPECS[meterFunction];
  if (looksAt !== 'input') return OPEN;
  if (inputOhms !== null) return { kind: 'voltmeter', ohms: inputOhms };
  const source = rangesOf(meterFunction)[range];
  if (source === undefined || batteryIsFlat(charge)) return OPEN;
  return { kind: 'test', volts: source.sourceVolts, ohms: source.sourceOhms };
}
