import { exp } from '../../base/maths.ts';
import { SECONDS_PER_TICK, type Tick } from '../../base/ticks.ts';
import { inH2OToPa, paToInH2O } from '../../base/units.ts';
import { shareAtTick } from './airSteps.ts';
import { READING_TICKS, type Rig } from './Rig.ts';

const KEPT = 5;
const NEEDLE_STEADY_PA = 100;
/** The manometer is read to a tenth of an inch of water. */
const MANOMETER_STEP_INH2O = 0.1;
/**
 * A column of water in a narrow glass follows its pressure as a damped mass does; friction of the glass leaves little more
 * than a lag of half a second. Common practice, no source.
 */
const WATER_LAG_S = 0.5;
const WATER_FOLLOWS = 1 - exp((-READING_TICKS * SECONDS_PER_TICK) / WATER_LAG_S);

/** Moves needle and water on to what stands at them at this tick, a quarter of a second after the last time. */
export function moveAirInstruments(rig: Rig, tick: Tick): void {
  const { state, parameters } = rig;
  const { manometer } = state;
  const share = shareAtTick(rig, tick);
  const gauge = pumpGaugePa(rig, share);
  if (Math.abs(gauge - state.needlePa) > parameters.gaugeStickPa) state.needlePa = gauge;
  keep(state.gauge, state.needlePa);
  const vacuum = state.bench.waterLost ? 0 : rig.air.vacuum('manometer', share);
  manometer.waterPa += WATER_FOLLOWS * (vacuum - manometer.waterPa);
  keep(manometer.past, manometer.waterPa);
}

function keep(past: number[], value: number): void {
  past.push(value);
  if (past.length > KEPT) past.shift();
}

/** What the hand pump's gauge would show without friction, pascal below the room; its stop keeps the needle from going below zero. */
function pumpGaugePa(rig: Rig, share: number): number {
  return Math.max(rig.air.vacuum('pump-hose', share) * (1 + rig.parameters.gaugeGain), 0);
}

/** What the needle shows, pascal below the room. One that sticks stays until its pressure has left it far enough. */
function needleAt(rig: Rig, tick: Tick): number {
  const free = pumpGaugePa(rig, shareAtTick(rig, tick));
  const sticks = Math.abs(free - rig.state.needlePa) <= rig.parameters.gaugeStickPa;
  return sticks ? rig.state.needlePa : free;
}

/** What the hand pump's gauge shows at the present tick, pascal below the room. */
export function gaugePa(rig: Rig): number {
  return needleAt(rig, rig.state.tick);
}

/** True when the needle, now at `pa`, has not visibly moved over the last second. */
export function gaugeIsSteady(rig: Rig, pa: number): boolean {
  return hasStoodStill(rig.state.gauge, pa, NEEDLE_STEADY_PA);
}

/** What the water manometer shows, pascal below the room to a tenth of an inch of water; null while its water is gone. */
export function manometerPa(rig: Rig): number | null {
  if (rig.state.bench.waterLost) return null;
  const inH2O = paToInH2O(rig.state.manometer.waterPa);
  const steps = Math.floor(Math.abs(inH2O) / MANOMETER_STEP_INH2O + 0.5);
  return (inH2O < 0 ? -1 : 1) * inH2OToPa(steps * MANOMETER_STEP_INH2O);
}

export function manometerIsSteady(rig: Rig): boolean {
  const { past, waterPa } = rig.state.manometer;
  return hasStoodStill(past, waterPa, inH2OToPa(MANOMETER_STEP_INH2O));
}

function hasStoodStill(past: readonly number[], now: number, withinPa: number): boolean {
  if (past.length < KEPT) return false;
  for (const was of past) if (!(Math.abs(now - was) < withinPa)) return false;
  return true;
}

/** What the smoke machine shows: pressure of its hose in pascal above the room, and the share of its flow ball. */
export function smokeGauges(rig: Rig): { readonly pa: number; readonly flow: number } {
  const pa = -rig.air.vacuum('smoke-hose', shareAtTick(rig, rig.state.tick));
  return { pa: Math.max(pa, 0), flow: rig.air.smokeFlow };
}
