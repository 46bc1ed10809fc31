import { secondsToTicks } from '../../src/base/ticks.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import { createWorld } from '../../src/sim/world/World.ts';
import type { FaultChoice, WorldPort } from '../../src/sim/world/WorldPort.ts';
import type { Environment } from '../../src/training/evidence/environment.ts';
import { ShownWatch } from '../../src/training/evidence/watchShown.ts';
import type { SittingAction } from '../../src/training/sitting/SittingAction.ts';

export const ROOM: Environment = { ambientC: 20, altitudeM: 100, fuelLevel: 0.5 };
const GRID = secondsToTicks(0.1);

/** A true bench with a watch on it, worked as a sitting works one: actions, and looks ten times a second. */
export class WatchedBench {
  readonly world: WorldPort;
  readonly watch: ShownWatch;

  constructor(faults: readonly FaultChoice[], seed = 'truth') {
    this.world = createWorld({ seed, faults, ...ROOM });
    this.watch = new ShownWatch(this.world.observe());
  }

  do(...actions: readonly SittingAction[]): this {
    for (const action of actions) {
      if (action.kind !== 'log' && action.kind !== 'read-codes') {
        const done = this.world.apply(action as Action);
        if (!done.ok) throw new Error(`${action.kind} refused: ${done.error}`);
      }
      this.watch.acted(action, this.world.observe());
    }
    return this;
  }

  wait(seconds: number): this {
    const end = this.world.tick + secondsToTicks(seconds);
    while (this.world.tick < end) {
      this.world.advanceTo((Math.floor(this.world.tick / GRID) + 1) * GRID);
      this.watch.passed(this.world.observe());
    }
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
