import { SECONDS_PER_TICK, secondsToTicks, type Tick } from '../../base/ticks.ts';
import { LONGEST_AIR_STEP_S } from '../network/airStepRule.ts';
import { watchAirDamage } from './airDamage.ts';
import { watchAir } from './airThresholds.ts';
import { handleAt, handleDeadline } from './handleMotion.ts';
import type { Rig } from './Rig.ts';
import { driftSmoke, smokeMoves } from './smokeDrift.ts';

const LONGEST_TICKS: Tick = secondsToTicks(LONGEST_AIR_STEP_S);
/** While smoke travels with the air, it is followed at least this often. */
const SMOKE_TICKS: Tick = secondsToTicks(0.5);

/** Solves the air up to a tick and looks what thresholds it has passed. */
export function stepAir(rig: Rig, tick: Tick): void {
  const { state, air } = rig;
  const ticks = tick - state.air.tick;
  if (ticks <= 0) return;
  const { handle } = state.bench;
  handle.position = handleAt(rig, tick);
  if (air.step(ticks * SECONDS_PER_TICK, handle.position)) driftSmoke(rig, tick);
  else state.unsolved += 1;
  state.air.tick = tick;
  replanAir(rig);
  watchAir(rig, tick);
  watchAirDamage(rig, tick);
}

/**
 * Drops the plan of the air's next step: something is otherwise than when it was made. A new one is made when it is asked
 * for, so that of several changes at one moment only the last is planned for.
 */
export function replanAir({ state: { air } }: Rig): void {
  air.next = air.tick;
}

/** The air's next stop, later than where it stands now. */
export function nextAirStop(rig: Rig): Tick {
  const { air } = rig.state;
  if (air.next <= air.tick) planAir(rig);
  return air.next;
}

/**
 * Chooses the next stop of the air from its own state; the step up to it is worked out now and taken when its time comes,
 * unless something is done before. It never reaches past a moment at which a valve or the pump's handle is due to turn.
 */
function planAir(rig: Rig): void {
  const { air, deadlines } = rig.state;
  const due = Math.min(handleDeadline(rig), deadlines.plunger, deadlines.capsule) - air.tick;
  const longest = smokeMoves(rig.state) ? SMOKE_TICKS : LONGEST_TICKS;
  air.next =
    air.tick +
    rig.air.plan({
      secondsPerTick: SECONDS_PER_TICK,
      longestTicks: Math.max(Math.min(due, longest), 1),
      drawnAfter: (ticks) => handleAt(rig, air.tick + ticks),
    });
}

/** How far a tick lies through the step that is worked out ahead, 0 to 1. */
export function shareAtTick(rig: Rig, tick: Tick): number {
  const from = rig.state.air.tick;
  if (tick <= from) return 0;
  const next = nextAirStop(rig);
  rig.air.foresee((next - from) * SECONDS_PER_TICK, handleAt(rig, next));
  return Math.min((tick - from) / (next - from), 1);
}
