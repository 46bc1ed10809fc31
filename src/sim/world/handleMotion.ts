import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { handleTable } from '../devices/modes/handle.ts';
import type { Rig } from './Rig.ts';
import { NEVER } from './WorldState.ts';

/** A hand draws a full stroke in 0.15 s and pushes it home in the same. Common practice, no source. */
const FULL_TRAVEL_TICKS: Tick = secondsToTicks(0.15);

/** Travel of the handle at a tick, 0 home to 1 drawn. */
export function handleAt(rig: Rig, tick: Tick): number {
  const { from, target, since, until } = rig.state.bench.handle;
  if (tick >= until) return target;
  return from + ((target - from) * (tick - since)) / (until - since);
}

/** When the present motion ends; never while the handle is still. */
export function handleDeadline(rig: Rig): Tick {
  const { mode, until } = rig.state.bench.handle;
  return mode === 'still' ? NEVER : until;
}

/** Sets the handle going from where it stands to its target. */
export function startHandle(rig: Rig, tick: Tick): void {
  const { handle } = rig.state.bench;
  handle.from = handle.position;
  handle.since = tick;
  const ticks = Math.floor(Math.abs(handle.target - handle.from) * FULL_TRAVEL_TICKS + 0.5);
  handle.until = tick + Math.max(ticks, 1);
  rig.air.announce((handle.target - handle.from) / ((handle.until - tick) / secondsToTicks(1)));
}

/** The handle has come to where it was going: a stroke turns back, anything else stands still. */
export function arriveHandle(rig: Rig, tick: Tick): void {
  const { handle } = rig.state.bench;
  handle.position = handle.target;
  handle.mode = handleTable.next(handle.mode, 'ARRIVE');
  if (handle.mode === 'returning') {
    handle.target = 0;
    startHandle(rig, tick);
  } else {
    rig.air.announce(0);
  }
}
