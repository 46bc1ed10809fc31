import { describe, expect, test } from 'vitest';
import { Random } from '../../src/base/Random.ts';
import { createWorld, restoreWorld, type World } from '../../src/sim/world/World.ts';
import type { WorldSpec } from '../../src/sim/world/WorldPort.ts';
import { randomActions, type TimedWorldAction } from '../support/randomActions.ts';

const SPEC: WorldSpec = {
  seed: 'cuts',
  faults: [
    { fault: 'capsule-torn', severity: 0.4 },
    { fault: 'plunger-sticky', severity: 0.5 },
  ],
  ambientC: 24,
  altitudeM: 300,
  fuelLevel: 0.4,
};

type Cut = (world: World, to: number) => void;

const inOneCall: Cut = (world, to) => world.advanceTo(to);

function atRandom(seed: string): Cut {
  const random = Random.of(seed, 'cuts');
  return (world, to) => {
    while (world.tick < to) {
      const piece =
        random.next() < 0.5 ? 1 + Math.floor(random.next() * 5) : Math.floor(random.next() * 4000) + 1;
      world.advanceTo(Math.min(world.tick + piece, to));
    }
  };
}

function run(actions: readonly TimedWorldAction[], cut: Cut, world = createWorld(SPEC)): World {
  for (const { tick, action } of actions) {
    cut(world, tick);
    world.apply(action);
  }
  cut(world, (actions.at(-1)?.tick ?? 0) + 40_000);
  return world;
}

describe('determinism', () => {
  const actions = randomActions('one busy minute', 200);

  test('cutting time at random gives the same state to the last bit', () => {
    const whole = run(actions, inOneCall);
    expect(whole.unsolvedSteps).toBe(0);
    for (const seed of ['a', 'b', 'c']) expect(run(actions, atRandom(seed)).hash()).toBe(whole.hash());
  });

  test('refused actions leave no trace: without them the hash is the same', () => {
    const world = createWorld(SPEC);
    const done = actions.filter(({ tick, action }) => {
      world.advanceTo(tick);
      return world.apply(action).ok;
    });
    expect(done.length).toBeLessThan(actions.length);
    const replayed = createWorld(SPEC);
    for (const { tick, action } of done) {
      replayed.advanceTo(tick);
      replayed.apply(action);
    }
    replayed.advanceTo(world.tick);
    expect(replayed.hash()).toBe(world.hash());
  });

  test('other actions give another hash', () => {
    const fewer = run(actions.slice(0, -1), inOneCall);
    expect(fewer.hash()).not.toBe(run(actions, inOneCall).hash());
  });

  test('a snapshot goes on to the same last bit, through JSON', () => {
    const half = Math.floor(actions.length / 2);
    const first = createWorld(SPEC);
    for (const { tick, action } of actions.slice(0, half)) {
      first.advanceTo(tick);
      first.apply(action);
    }
    const resumed = restoreWorld(SPEC, JSON.parse(JSON.stringify(first.snapshot())));
    expect(resumed.hash()).toBe(first.hash());
    const a = run(actions.slice(half), inOneCall, first);
    const b = run(actions.slice(half), inOneCall, resumed);
    expect(b.hash()).toBe(a.hash());
  });

  test('Kirchhoff holds and nothing is NaN in 4000 random actions', () => {
    const world = createWorld(SPEC);
    let worst = 0;
    for (const { tick, action } of randomActions('four thousand', 4000)) {
      world.advanceTo(tick);
      // Before the action: after it a lead stands elsewhere, and its current is not yet solved for.
      worst = Math.max(worst, world.circuit.kclResidual());
      world.apply(action);
      const inside = Object.values(world.inside()).filter((value) => typeof value === 'number');
      if (!inside.every(Number.isFinite)) expect(inside).toBe('finite');
    }
    expect(worst).toBeLessThan(1e-9);
    expect(world.unsolvedSteps).toBe(0);
  });
});
