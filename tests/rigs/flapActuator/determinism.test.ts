import { describe, expect, test } from 'vitest';
import { Random } from '../../../src/base/Random.ts';
import { createWorld, restoreWorld, type World } from '../../../src/sim/world/World.ts';
import type { WorldSpec } from '../../../src/sim/world/WorldPort.ts';
import { randomActions } from '../../support/randomActions.ts';

const SPEC: WorldSpec = {
  rig: 'flap-actuator',
  seed: 'cuts',
  faults: [
    { fault: 'diaphragm-torn', severity: 0.2 },
    { fault: 'position-switch-intermittent', severity: 0.5 },
  ],
  ambientC: 24,
  altitudeM: 300,
  fuelLevel: 0.4,
};

/** Random hands, also for what this bench does not have: that is refused and leaves no trace. */
const ACTIONS = randomActions('one busy minute at the flap', 250);

function run(advance: (world: World, to: number) => void, world = createWorld(SPEC)): World {
  for (const { tick, action } of ACTIONS) {
    advance(world, tick);
    world.apply(action);
  }
  advance(world, (ACTIONS.at(-1)?.tick ?? 0) + 40_000);
  return world;
}

const inOneCall = (world: World, to: number): void => world.advanceTo(to);

describe('determinism of the second rig', () => {
  test('cutting time at random gives the same state to the last bit', () => {
    const whole = run(inOneCall);
    expect(whole.unsolvedSteps).toBe(0);
    for (const seed of ['a', 'b', 'c']) {
      const random = Random.of(seed, 'cuts');
      const cut = run((world, to) => {
        while (world.tick < to)
          world.advanceTo(Math.min(world.tick + 1 + Math.floor(random.next() * 4000), to));
      });
      expect(cut.hash()).toBe(whole.hash());
    }
  });

  test('a snapshot goes on to the same last bit', () => {
    const whole = run(inOneCall);
    const half = ACTIONS.slice(0, 120);
    const first = createWorld(SPEC);
    for (const { tick, action } of half) {
      first.advanceTo(tick);
      first.apply(action);
    }
    const resumed = restoreWorld(SPEC, JSON.parse(JSON.stringify(first.snapshot())));
    for (const { tick, action } of ACTIONS.slice(120)) {
      resumed.advanceTo(tick);
      resumed.apply(action);
    }
    resumed.advanceTo((ACTIONS.at(-1)?.tick ?? 0) + 40_000);
    expect(resumed.hash()).toBe(whole.hash());
  });

  test('what the bench does not have cannot be reached, and nothing can be put there', () => {
    const world = createWorld(SPEC);
    for (const action of [
      { kind: 'fit', item: 'pump-hose', site: 'canister-port' },
      { kind: 'fit', item: 'canister-hose', site: 'air-port' },
      { kind: 'look', at: 'canister' },
      { kind: 'listen', at: 'purge-valve' },
      { kind: 'renew', item: 'filler-cap' },
    ] as const)
      expect(world.apply(action)).toEqual({ ok: false, error: 'cannot-be-reached' });
    expect(world.hash()).toBe(createWorld(SPEC).hash());
  });
});
