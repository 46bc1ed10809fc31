import { expect, test } from 'vitest';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import type { Action } from '../../../src/sim/world/Action.ts';
import { createWorld, type World } from '../../../src/sim/world/World.ts';
import { randomActions } from '../../support/randomActions.ts';

/** Whatever a hand can do to the air without putting in new parts, which bring air of their own. */
const AIR_ACTIONS: readonly Action['kind'][] = [
  'set-key',
  'fit',
  'take-off',
  'clamp',
  'pump-handle',
  'stroke',
  'release',
  'set-bleed',
  'refill-manometer',
  'set-smoke',
  'command-solenoid',
];

/** Mass in all volumes less what the room, the engine and the smoke machine have given, kg. */
function balance({ air }: World): number {
  let given = 0;
  for (let node = 0; node < air.nodeCount; node++) {
    if (air.isBoundary(node)) given += air.boundaryInflow(node);
  }
  return air.totalMass() - given;
}

test('mass is conserved to 1e-9 in an hour of random hands on the bench’s own air', () => {
  const world = createWorld({
    seed: 'conserved',
    faults: [
      { fault: 'canister-hose-split', severity: 0.4 },
      { fault: 'diaphragm-torn', severity: 0.2 },
      { fault: 'inlet-check-leaking', severity: 0.3 },
    ],
    ambientC: 25,
    altitudeM: 400,
    fuelLevel: 0.6,
  });
  const start = balance(world);
  const mass = world.air.totalMass();
  const hour = secondsToTicks(3600);
  const actions = randomActions('an hour of air', 6000).filter(({ action }) =>
    AIR_ACTIONS.includes(action.kind),
  );
  const stretch = hour / (actions.at(-1)?.tick ?? 1);
  let done = 0;
  let moved = 0;
  for (const { tick, action } of actions) {
    world.advanceTo(Math.floor(tick * stretch));
    if (world.apply(action).ok) done++;
    moved = Math.max(moved, Math.abs(world.air.totalMass() - mass));
    expect(Math.abs(balance(world) - start)).toBeLessThan(1e-9 * mass);
  }
  expect(world.tick).toBeGreaterThan(0.99 * hour);
  expect(done).toBeGreaterThan(500);
  expect(moved).toBeGreaterThan(1e-3 * mass); // something happened
  expect(world.unsolvedSteps).toBe(0);
}, 60_000);
