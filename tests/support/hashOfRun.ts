import { createWorld } from '../../src/sim/world/World.ts';
import type { WorldSpec } from '../../src/sim/world/WorldPort.ts';
import { randomActions } from './randomActions.ts';

/** A busy stretch of work: what stands in it must come out the same on every machine. */
export const SPEC: WorldSpec = {
  seed: 'same everywhere',
  faults: [
    { fault: 'capsule-torn', severity: 0.3 },
    { fault: 'plunger-sticky', severity: 0.6 },
    { fault: 'ground-resistance', severity: 0.4 },
  ],
  ambientC: 31,
  altitudeM: 1200,
  fuelLevel: 0.35,
};

export interface HashedRun {
  readonly hash: string;
  /** Of a state half way, so that a difference can be placed. */
  readonly halfWay: string;
  readonly tick: number;
  readonly lcd: string;
  readonly needleKPa: number;
}

/** Runs seeded random hands on the bench and hashes the end. */
export function hashOfRun(actionsSeed: string, count: number): HashedRun {
  const world = createWorld(SPEC);
  const actions = randomActions(actionsSeed, count);
  let halfWay = '';
  actions.forEach(({ tick, action }, i) => {
    world.advanceTo(tick);
    world.apply(action);
    if (i === Math.floor(count / 2)) halfWay = world.hash();
  });
  world.advanceTo(world.tick + 60_000);
  const seen = world.observe();
  return {
    hash: world.hash(),
    halfWay,
    tick: world.tick,
    lcd: seen.meter.display.digits,
    needleKPa: seen.gauge.needleKPa,
  };
}
