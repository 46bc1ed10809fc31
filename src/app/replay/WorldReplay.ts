import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import type { Action } from '../../sim/world/Action.ts';
import { createWorld, restoreWorld, type World, type WorldSnapshot } from '../../sim/world/World.ts';
import type { WorldSpec } from '../../sim/world/WorldPort.ts';
import type { Scenario } from '../../training/scenario/Scenario.ts';
import { benchWith } from '../../training/sitting/benchWith.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import { worldSpec } from '../../training/sitting/worldMaker.ts';
import type { ReplayMoment } from '../../ui/panels/ReplayDesk.ts';
import { isOfWorld } from './isOfWorld.ts';

interface Keyframe {
  readonly tick: Tick;
  /** World actions done by then. */
  readonly done: number;
  readonly snapshot: WorldSnapshot;
}

interface WorldAction {
  readonly tick: Tick;
  readonly action: Action;
}

/** A snapshot is taken at least so far from the one before it. */
const KEYFRAME_TICKS = secondsToTicks(20);
/** So many snapshots at most, whatever the length of the sitting. */
const MOST_KEYFRAMES = 600;

/**
 * A recorded sitting's world at any moment of it, in any order, to the last digit. Going forward the world simply goes
 * on; going back it begins at the snapshot before. The paperwork is left out: it never moves the world.
 */
export class WorldReplay {
  readonly endTick: Tick;
  private readonly spec: WorldSpec;
  private readonly bench: ReturnType<typeof benchWith>;
  private readonly actions: readonly WorldAction[];
  private readonly apart: Tick;
  private readonly keyframes: Keyframe[];
  private world: World;
  private done = 0;

  constructor(scenario: Scenario, record: SittingRecord) {
    this.endTick = record.endTick;
    this.spec = worldSpec(scenario, record.seed);
    this.bench = benchWith(scenario.tools);
    this.actions = record.actions.flatMap(({ tick, action }) =>
      isOfWorld(action) ? [{ tick, action }] : [],
    );
    this.apart = Math.max(KEYFRAME_TICKS, Math.ceil(record.endTick / MOST_KEYFRAMES));
    this.world = createWorld(this.spec);
    this.keyframes = [{ tick: 0, done: 0, snapshot: this.world.snapshot() }];
  }

  /** The moment at `tick`, with everything done that was done at it. Ticks beyond the sitting give its first or last moment. */
  at(tick: Tick): ReplayMoment {
    const wanted = Math.min(Math.max(0, Math.floor(tick)), this.endTick);
    this.begin(wanted);
    for (let next = this.actions[this.done]; next !== undefined && next.tick <= wanted; ) {
      this.goTo(next.tick);
      this.world.apply(next.action);
      this.done += 1;
      next = this.actions[this.done];
    }
    this.goTo(wanted);
    return { tick: wanted, observation: this.bench(this.world.observe()), inside: this.world.inside() };
  }

  /** Goes to the last known moment before `wanted`: the present one, or a snapshot. */
  private begin(wanted: Tick): void {
    let from: Keyframe | undefined;
    for (const keyframe of this.keyframes) if (keyframe.tick <= wanted) from = keyframe;
    const goesOn = this.world.tick <= wanted && (from === undefined || this.world.tick >= from.tick);
    if (goesOn || from === undefined) return;
    this.world = restoreWorld(this.spec, from.snapshot);
    this.done = from.done;
  }

  /** Lets time pass, with a snapshot wherever the last one lies far enough behind. */
  private goTo(tick: Tick): void {
    const { world, keyframes } = this;
    for (;;) {
      const due = (keyframes.at(-1)?.tick ?? 0) + this.apart;
      if (due > tick || due < world.tick) break;
      world.advanceTo(due);
      keyframes.push({ tick: due, done: this.done, snapshot: world.snapshot() });
    }
    world.advanceTo(tick);
  }
}
