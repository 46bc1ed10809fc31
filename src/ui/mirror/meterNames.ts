import type { MeterDisplay, MeterObservation } from '../../sim/world/Observation.ts';
import { say } from '../../text/translate.ts';
import type { MeterKey } from '../interaction/layout/meterPlan.ts';

/** A reading in words a speech engine says well. */
export function spokenReading({ digits, unit }: MeterDisplay): string {
  if (digits.includes('OL')) return say('hand.overRange');
  if (/^-+$/.test(digits)) return say('controls.noReading');
  return say('hand.reading', { digits, unit: unit === '' ? '' : say(`hand.unitSpoken.${unit}`) });
}

/** The window of the meter with the signs beside its digits. */
export function displayName(meter: MeterObservation): string {
  if (meter.display.digits === '') return say('hand.displayOff');
  const display = say('hand.display', { reading: spokenReading(meter.display) });
  const signs = displaySigns(meter);
  if (signs.length === 0) return display;
  return say('controls.displaySigns', { display, signs: signs.join(', ') });
}

function displaySigns(meter: MeterObservation): readonly string[] {
  return [
    ...(meter.hold ? [say('controls.signHold')] : []),
    ...(meter.extremes === 'low' ? [say('controls.signLow')] : []),
    ...(meter.extremes === 'high' ? [say('controls.signHigh')] : []),
    ...(meter.relative ? [say('controls.signRelative')] : []),
    ...(meter.batteryLow ? [say('controls.signBattery')] : []),
  ];
}

/** A key of the meter and how it stands. */
export function meterKeyName(key: MeterKey, meter: MeterObservation): string {
  switch (key) {
    case 'range': {
      const held = meter.heldRange === null ? undefined : meter.ranges[meter.heldRange];
      if (held === undefined) return say('controls.range.auto');
      return say('controls.range.held', { range: held });
    }
    case 'hold':
      return say(meter.hold ? 'controls.hold.on' : 'controls.hold.off');
    case 'extremes':
      return say(`controls.extremes.${meter.extremes}`);
    case 'relative':
      return say(meter.relative ? 'controls.relative.on' : 'controls.relative.off');
  }
}
