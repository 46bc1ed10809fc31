import { SECONDS_PER_TICK, type Tick } from '../../base/ticks.ts';
import { watchAir } from './airThresholds.ts';
import { handleAt } from './handleMotion.ts';
import type { Rig } from './Rig.ts';

/** Solves the air up to a tick and plans its next step. */
export function stepAir(rig: Rig, tick: Tick): void {
  const { state, air } = rig;
  const seconds = (tick - state.air.tick) * SECONDS_PER_TICK;
  if (seconds > 0) {
    const { handle } = state.bench;
    handle.position = handleAt(rig, tick);
    if (!air.step(seconds, handle.position)) state.unsolved += 1;
    state.air.tick = tick;
    watchAir(rig, tick);
  }
  planAir(rig);
}

/** Chooses the next air step from the air's own state. Needed again whenever a path has opened or shut. */
export function planAir(rig: Rig): void {
  const { state } = rig;
  const ticks = Math.floor(rig.air.network.suggestStep() / SECONDS_PER_TICK);
  state.air.next = state.air.tick + Math.max(ticks, 1);
}
