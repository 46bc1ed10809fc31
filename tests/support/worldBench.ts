import { secondsToTicks } from '../../src/base/ticks.ts';
import { paToInHg } from '../../src/base/units.ts';
import type { Cavity, LeadEnd, LeadPoint, MeterFunction } from '../../src/sim/devices/places.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import { createWorld, type World } from '../../src/sim/world/World.ts';
import type { FaultChoice, WorldSpec } from '../../src/sim/world/WorldPort.ts';

/** The bare world (no sitting around it), worked with a technician's words. */
export class WorldBench {
  readonly world: World;

  constructor(faults: readonly FaultChoice[] = [], spec: Partial<WorldSpec> = {}) {
    this.world = createWorld({
      seed: 'bench',
      faults,
      ambientC: 20,
      altitudeM: 0,
      fuelLevel: 0.5,
      ...spec,
    });
  }

  do(...actions: readonly Action[]): this {
    for (const action of actions) {
      const done = this.world.apply(action);
      if (!done.ok) throw new Error(`${JSON.stringify(action)} was refused: ${done.error}`);
    }
    return this;
  }

  wait(seconds: number): this {
    this.world.advanceTo(this.world.tick + secondsToTicks(seconds));
    return this;
  }

  meter(to: MeterFunction): this {
    return this.do({ kind: 'set-meter', function: to });
  }

  lead(end: LeadEnd, point: LeadPoint): this {
    return this.do({ kind: 'place-lead', end, point });
  }

  pin(cavity: Cavity): this {
    return this.do({ kind: 'insert-pin', cavity });
  }

  /** Sense to battery negative with the key on. */
  senseWatched(): this {
    return this.pin(3)
      .meter('volts-dc')
      .lead('meter-red', 'cavity-3-back')
      .lead('meter-black', 'battery-negative')
      .do({ kind: 'set-key', position: 'on' })
      .wait(2);
  }

  /** Hand pump on the canister port, all joints hand tight; the air port capped unless told otherwise. */
  pumpOn(airPort: 'capped' | 'open' = 'capped'): this {
    this.do({ kind: 'take-off', item: 'canister-hose' }, { kind: 'take-off', item: 'air-hose' });
    this.do(
      { kind: 'fit', item: 'pump-hose', site: 'canister-port' },
      { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
    );
    if (airPort === 'capped') {
      this.do(
        { kind: 'fit', item: 'cap-a', site: 'air-port' },
        { kind: 'clamp', port: 'air-port', setting: 'hand-tight' },
      );
    }
    return this;
  }

  stroke(depth = 1): this {
    return this.do({ kind: 'stroke', depth }).wait(0.35);
  }

  release(): this {
    return this.do({ kind: 'release', open: true }).wait(3).do({ kind: 'release', open: false });
  }

  /** Waits two seconds for the digits, then gives the displayed value in volts or ohms. */
  reading(): number | null {
    return this.wait(2).world.observe().meter.display.value;
  }

  get inHg(): number {
    return paToInHg(this.world.observe().gauge.needleKPa * 1000);
  }

  clicks(): number {
    return this.world.observe().happenings.filter((one) => one.kind === 'click-on').length;
  }
}
