import type { Result } from '../../base/Result.ts';
import type { Tick } from '../../base/ticks.ts';
import type { Action, Refusal } from '../../sim/world/Action.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { WorldPort } from '../../sim/world/WorldPort.ts';
import { GRID_TICKS } from '../sitting/Recorder.ts';
import { ShownWatch } from './watchShown.ts';

/** A bench without a sitting around it, watched as a sitting is: at every action and ten times a second. */
export class WatchedWorld {
  readonly watch: ShownWatch;

  constructor(private readonly world: WorldPort) {
    this.watch = new ShownWatch(world.observe());
  }

  get tick(): Tick {
    return this.world.tick;
  }

  apply(action: Action): Result<void, Refusal> {
    const done = this.world.apply(action);
    if (done.ok) this.watch.acted(action, this.world.observe());
    return done;
  }

  advanceTo(tick: Tick): void {
    let next = (Math.floor(this.world.tick / GRID_TICKS) + 1) * GRID_TICKS;
    for (; next <= tick; next += GRID_TICKS) {
      this.world.advanceTo(next);
      this.watch.passed(this.world.observe());
    }
    if (tick > this.world.tick) this.world.advanceTo(tick);
  }

  observe(): Observation {
    return this.world.observe();
  }
}
