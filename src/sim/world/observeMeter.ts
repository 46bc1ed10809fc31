import { displayOf } from '../devices/meter/display.ts';
import { DARK } from '../devices/meter/LcdReading.ts';
import { toneSounds } from '../devices/meter/MeterState.ts';
import { batteryIsFlat, batteryIsLow } from '../devices/meter/meterBattery.ts';
import { rangeNames } from '../devices/meter/ranges.ts';
import type { MeterObservation } from './Observation.ts';
import type { Rig } from './Rig.ts';

/** The meter as an eye and an ear know it. With a flat battery the display is dark and nothing sounds. */
export function observeMeter({ state, parameters }: Rig, before?: MeterObservation): MeterObservation {
  const { bench, meter } = state;
  const charge = parameters.meterBattery;
  const alive = bench.meterFunction !== 'off' && !batteryIsFlat(charge);
  const batteryLow = alive && batteryIsLow(charge);
  const display = alive ? displayOf(meter, bench.meterFunction, bench.meterExtremes) : DARK;
  const tone = alive && toneSounds(meter, state.tick);
  const still =
    before?.function === bench.meterFunction &&
    before.jack === bench.meterJack &&
    before.heldRange === bench.meterRange &&
    before.hold === bench.meterHold &&
    before.extremes === bench.meterExtremes &&
    before.relative === bench.meterRelative &&
    before.batteryLow === batteryLow &&
    before.display === display &&
    before.tone === tone;
  if (still) return before;
  return {
    function: bench.meterFunction,
    jack: bench.meterJack,
    heldRange: bench.meterRange,
    ranges: rangeNames(bench.meterFunction),
    hold: bench.meterHold,
    extremes: bench.meterExtremes,
    relative: bench.meterRelative,
    batteryLow,
    display,
    tone,
  };
}
