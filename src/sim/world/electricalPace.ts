import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { WorldState } from './WorldState.ts';

/** What coil current and any node may still move by, at the rate of the last step, in one longest step of a calm network. */
const CALM_AMPS = 1e-7;
const CALM_VOLTS = 1e-7;
const CALM_STEPS = 2;
/** A step of less than 1 ms says nothing about calm. */
const TELLING_TICKS: Tick = secondsToTicks(0.001);
/** The step may grow while the resistance of a lamp moves by less than this share, and what it may move by in a calm network. */
const GROW_LAMP_SHARE = 0.02;
const CALM_LAMP_SHARE = 1e-6;
/** How rough a step is aimed at (see `Circuit.roughness`), and by how much a step may be longer than the one before. */
const AIM_ROUGHNESS = 0.5;
const MOST_GROWTH = 4;
/** 20 ms: short against a fuse's warming, long against a coil's settling. */
const LONGEST_TICKS: Tick = secondsToTicks(0.02);
/** 2 ms while the plunger travels: a quarter of its way. Shorter steps moved the coil's current by less than 2e-5 of it. */
const TRAVELLING_TICKS: Tick = secondsToTicks(0.002);
/** 0.4 ms: the first step of a plunger that sets out or arrives. */
const STIRRED_TICKS: Tick = secondsToTicks(0.0004);

/** What the last step of the circuit showed. */
export interface ElectricalStep {
  readonly ticks: Tick;
  readonly coilAmps: number;
  readonly roughness: number;
  readonly largestMoveVolts: number;
  readonly fuseWarms: boolean;
  readonly lampMove: number;
  readonly plungerMoves: boolean;
  /** Coil current, regardless of its direction, at which the plunger will set out. */
  readonly plungerAmps: number;
}

/** Something electrical has changed: solve finely from here. */
export function wakeElectrical(state: Pick<WorldState, 'electrical'>): void {
  const { electrical } = state;
  electrical.calm = false;
  electrical.quiet = 0;
  electrical.stepTicks = 1;
}

/** The plunger sets out or arrives: the circuit goes on from what it holds, and its coil otherwise than before. */
export function stirElectrical(state: Pick<WorldState, 'electrical'>): void {
  const { electrical } = state;
  electrical.calm = false;
  electrical.quiet = 0;
  electrical.stepTicks = Math.min(electrical.stepTicks, STIRRED_TICKS);
}

/**
 * Chooses the next electrical step from what the last one did: one tick (50 µs) after an event; then as long as the
 * circuit's two stages agree about it, at most four times the last; no further than where the coil's current, going on as it
 * goes, sets the plunger off; none at all once nothing moves.
 */
export function paceElectrical(state: Pick<WorldState, 'electrical'>, step: ElectricalStep): void {
  const { electrical } = state;
  const { ticks, coilAmps } = step;
  const change = coilAmps - electrical.lastCoilAmps;
  electrical.lastCoilAmps = coilAmps;
  const longest = LONGEST_TICKS / ticks;
  const still =
    ticks >= TELLING_TICKS &&
    Math.abs(change) * longest <= CALM_AMPS &&
    step.largestMoveVolts * longest <= CALM_VOLTS &&
    step.lampMove * longest <= CALM_LAMP_SHARE;
  electrical.quiet = still ? electrical.quiet + 1 : 0;
  const smooth = ticks * Math.sqrt(AIM_ROUGHNESS / Math.max(step.roughness, 1e-12));
  const lamp = (ticks * GROW_LAMP_SHARE) / Math.max(step.lampMove, 1e-12);
  const grown = MOST_GROWTH * Math.max(ticks, electrical.stepTicks);
  const most = step.plungerMoves ? TRAVELLING_TICKS : LONGEST_TICKS;
  const next = Math.min(smooth, lamp, grown, most, ticksTo(step.plungerAmps, coilAmps, change, ticks));
  electrical.stepTicks = Math.max(Math.floor(next), 1);
  electrical.calm = electrical.quiet >= CALM_STEPS && !step.fuseWarms;
}

/** Ticks until the current passes `level` if it goes on as in the last step, and one more; endless when it does not go there. */
function ticksTo(level: number, coilAmps: number, change: number, ticks: Tick): number {
  const now = Math.abs(coilAmps);
  const rate = (now - Math.abs(coilAmps - change)) / ticks;
  const left = (level - now) / rate;
  return left > 0 ? left + 1 : Number.POSITIVE_INFINITY;
}
