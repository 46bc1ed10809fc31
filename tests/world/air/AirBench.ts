import { paToInH2O } from '../../../src/base/units.ts';
import type { AirSite, Fitting, UnitPort } from '../../../src/sim/devices/places.ts';
import { WorldBench } from '../../support/worldBench.ts';

/** The bench with the set-ups of the air side. */
export class AirBench extends WorldBench {
  bare(...hoses: readonly Fitting[]): this {
    for (const item of hoses) this.do({ kind: 'take-off', item });
    return this;
  }

  put(item: Fitting, site: AirSite): this {
    this.do({ kind: 'fit', item, site });
    if (site.endsWith('-port')) this.do({ kind: 'clamp', port: site as UnitPort, setting: 'hand-tight' });
    return this;
  }

  /** 1 L jar on the canister port with pump and manometer on its tees, air port capped. */
  jarOnCappedUnit(): this {
    return this.bare('canister-hose', 'air-hose')
      .put('cap-a', 'air-port')
      .put('jar-hose', 'canister-port')
      .put('pump-hose', 'jar-tee-a')
      .put('manometer-hose', 'jar-tee-b');
  }

  /** 1 L jar with the gauge on the canister port of the unit on the running truck, air hose on. */
  jarOnRunningTruck(): this {
    return this.bare('canister-hose')
      .put('jar-hose', 'canister-port')
      .put('pump-hose', 'jar-tee-a')
      .put('cap-b', 'jar-tee-b')
      .do({ kind: 'set-key', position: 'running' })
      .wait(3);
  }

  /** Hand pump on the engine port, all other ports bare, key on. */
  pumpOnEnginePort(): this {
    return this.bare('engine-hose', 'air-hose', 'canister-hose')
      .put('pump-hose', 'engine-port')
      .do({ kind: 'set-key', position: 'on' });
  }

  /** Smoke into the air port, the air hose plugged. */
  smokeInAirPort(pa: number): this {
    return this.bare('air-hose')
      .put('plug-a', 'air-hose-end')
      .put('smoke-hose', 'air-port')
      .do({ kind: 'set-smoke', gas: 'inert', pa });
  }

  solenoid(command: 'on' | 'off' | 'pulse'): this {
    return this.do({ kind: 'command-solenoid', command });
  }

  /** Full strokes until the gauge is past so many inHg. */
  drawTo(inHg: number): this {
    for (let strokes = 0; strokes < 20 && this.inHg < inHg; strokes++) this.stroke();
    return this;
  }

  /** Fall of the gauge over some seconds, inHg. */
  loss(seconds: number): number {
    const before = this.inHg;
    return before - this.wait(seconds).inHg;
  }

  get inH2O(): number {
    return paToInH2O((this.world.observe().manometer.kPa ?? Number.NaN) * 1000);
  }

  /** True while the controller reads the switch as closed. */
  get senseClosed(): boolean {
    return this.world.observe().reader.senseState === 'closed';
  }

  heard(kind: string): number {
    return this.world.observe().happenings.filter((one) => one.kind === kind).length;
  }

  get smokeSeen(): readonly string[] {
    return this.world.observe().smoke.seenAt;
  }
}
