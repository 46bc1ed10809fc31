import type { WorldState } from './WorldState.ts';

/** What coil current and any node may still move by in one longest step of a network called calm. */
const CALM_AMPS = 1e-7;
const CALM_VOLTS = 1e-6;
const CALM_STEPS = 2;
/** The step may double while current moves by less than this share of itself in one step. */
const GROW_SHARE = 0.004;
const LEAST_SCALE_AMPS = 0.02;
/** 20 ms: short against a fuse's warming, long against a coil's settling. */
const LONGEST_TICKS = 400;

/** Something electrical has changed: solve finely from here. */
export function wakeElectrical(state: WorldState): void {
  const { electrical } = state;
  electrical.calm = false;
  electrical.quiet = 0;
  electrical.stepTicks = 1;
}

/**
 * Chooses the next electrical step from what the last one did: one tick (50 µs) after an event, so that backward Euler
 * holds half a per cent of a coil's rise; doubling while current hardly moves; none at all once nothing moves.
 */
export function paceElectrical(
  state: WorldState,
  coilAmps: number,
  largestMoveVolts: number,
  fuseIsHot: boolean,
  plungerMoves: boolean,
): void {
  const { electrical } = state;
  const moved = Math.abs(coilAmps - electrical.lastCoilAmps);
  electrical.lastCoilAmps = coilAmps;
  const still = moved <= CALM_AMPS && largestMoveVolts <= CALM_VOLTS && electrical.stepTicks >= LONGEST_TICKS;
  electrical.quiet = still ? electrical.quiet + 1 : 0;
  if (plungerMoves) {
    electrical.stepTicks = 1;
    return;
  }
  const scale = Math.max(Math.abs(coilAmps), LEAST_SCALE_AMPS);
  if (moved < GROW_SHARE * scale) electrical.stepTicks = Math.min(electrical.stepTicks * 2, LONGEST_TICKS);
  electrical.calm = electrical.quiet >= CALM_STEPS && !fuseIsHot;
}
