import { useComputed } from '@preact/signals';
import type { MeterObservation } from '../../sim/world/Observation.ts';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';

/** The meter's window once more, without its bar: digits, unit, and what keeps them from being the plain reading. */
export function SmallMeter({ desk }: { readonly desk: Desk }) {
  const digits = useComputed(() => shownDigits(desk.observation.value.meter));
  const unit = useComputed(() => desk.observation.value.meter.display.unit);
  const kind = useComputed(() => kindOf(desk.observation.value.meter));
  const signs = useComputed(() => signsOf(desk.observation.value.meter));
  return (
    <div class="small-meter">
      <span class="small-signs">
        <span>{kind.value}</span>
        <b class="small-marks">{signs.value}</b>
        <b>{unit.value}</b>
      </span>
      {digits.value === '' ? (
        <span class="small-off">{say('meterFunctions.off')}</span>
      ) : (
        <span class="small-digits">{digits.value}</span>
      )}
    </div>
  );
}

/** The seven-segment face has no capital L beside an O in one width: a zero stands for it, as in the drawn window. */
function shownDigits({ display }: MeterObservation): string {
  return display.digits.replace('OL', '0L');
}

function kindOf(meter: MeterObservation): string {
  switch (meter.function) {
    case 'volts-dc':
    case 'milliamps-dc':
    case 'amps-dc':
      return say('drawing.direct');
    case 'volts-low-z':
      return `${say('drawing.direct')} ${say('drawing.lowInput')}`;
    case 'volts-ac':
      return say('drawing.alternating');
    case 'off':
      return '';
    case 'ohms':
    case 'continuity':
    case 'diode':
      return say(`meterFunctions.${meter.function}`);
  }
}

function signsOf(meter: MeterObservation): string {
  const signs = [
    ...(meter.hold ? [say('drawing.meterMarks.hold')] : []),
    ...(meter.extremes === 'off' ? [] : [say(`drawing.meterMarks.${meter.extremes}`)]),
    ...(meter.relative ? ['Δ'] : []),
  ];
  return signs.join(' ');
}
