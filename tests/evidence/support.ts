import { secondsToTicks } from '../../src/base/ticks.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import { createWorld } from '../../src/sim/world/World.ts';
import type { FaultChoice, WorldPort } from '../../src/sim/world/WorldPort.ts';
import type { Environment } from '../../src/training/evidence/environment.ts';
import { WatchedWorld } from '../../src/training/evidence/WatchedWorld.ts';
import type { ShownWatch } from '../../src/training/evidence/watchShown.ts';

export const ROOM: Environment = { ambientC: 20, altitudeM: 100, fuelLevel: 0.5 };

/** A true bench with a watch on it, worked as a sitting works one: actions, and looks ten times a second. */
export class WatchedBench {
  readonly world: WorldPort;
  private readonly watched: WatchedWorld;

  constructor(faults: readonly FaultChoice[], seed = 'truth') {
    this.world = createWorld({ seed, faults, ...ROOM });
    this.watched = new WatchedWorld(this.world);
  }

  get watch(): ShownWatch {
    return this.watched.watch;
  }

  do(...actions: readonly Action[]): this {
    for (const action of actions) {
      const done = this.watched.apply(action);
      if (!done.ok) throw new Error(`${action.kind} refused: ${done.error}`);
    }
    return this;
  }

  wait(seconds: number): this {
    this.watched.advanceTo(this.world.tick + secondsToTicks(seconds));
    return this;
  }

  /** What was shown about something, in order. */
  shown(about: string): readonly unknown[] {
    return this.watch.asked
      .filter(({ question }) => question.about === about)
      .map(({ shown }) => shown.value);
  }

  meterOn(
    red: 'cavity-3-back' | 'unit-1',
    black: 'battery-negative' | 'unit-2',
    what: 'volts-dc' | 'ohms',
  ): this {
    if (red === 'cavity-3-back') this.do({ kind: 'insert-pin', cavity: 3 });
    return this.do(
      { kind: 'set-meter', function: what },
      { kind: 'place-lead', end: 'meter-red', point: red },
      { kind: 'place-lead', end: 'meter-black', point: black },
    );
  }

  /** Unit alone on the hand pump, air port capped. */
  pumpOn(): this {
    return this.do(
      { kind: 'take-off', item: 'canister-hose' },
      { kind: 'fit', item: 'plug-a', site: 'canister-hose-end' },
      { kind: 'fit', item: 'pump-hose', site: 'canister-port' },
      { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
      { kind: 'take-off', item: 'air-hose' },
      { kind: 'fit', item: 'cap-a', site: 'air-port' },
      { kind: 'clamp', port: 'air-port', setting: 'hand-tight' },
    );
  }

  strokes(count: number): this {
    for (let i = 0; i < count; i++) this.do({ kind: 'stroke', depth: 1 }).wait(2.5);
    return this;
  }
}
