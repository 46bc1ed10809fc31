import { Random } from '../../src/base/Random.ts';
import type { RigId } from '../../src/sim/devices/BenchSurface.ts';
import { FIRST_RIG, rigNamed } from '../../src/sim/rigs/rigs.ts';
import { createWorld, type World } from '../../src/sim/world/World.ts';
import type { FaultChoice, WorldSpec } from '../../src/sim/world/WorldPort.ts';
import { randomActions } from '../support/randomActions.ts';

/** Largest sum of currents at a node that counts as solved, amps. */
export const KIRCHHOFF_AMPS = 1e-9;

/** What one seed's hands came to. `trouble` names the first thing that was wrong and the action it came after. */
export interface SoakResult {
  readonly seed: string;
  readonly actions: number;
  readonly done: number;
  readonly worstAmps: number;
  readonly trouble: string | null;
}

/** A world drawn from the seed: up to three faults of the rig, weather, altitude and fuel. */
export function soakSpec(seed: string, rig: RigId = FIRST_RIG): WorldSpec {
  const { faults: all } = rigNamed(rig);
  const random = Random.of(seed, 'soak');
  const faults: FaultChoice[] = [];
  const wanted = Math.floor(random.next() * 4);
  while (faults.length < wanted) {
    const fault = all[Math.floor(random.next() * all.length)];
    if (fault === undefined || faults.some((choice) => choice.fault === fault.id)) continue;
    const whenMoved = random.next() < 0.2 && fault.item.endsWith('-wire');
    faults.push({ fault: fault.id, severity: random.next(), ...(whenMoved ? { whenMoved } : {}) });
  }
  return {
    rig,
    seed,
    faults,
    ambientC: -20 + Math.floor(random.next() * 65),
    altitudeM: Math.floor(random.next() * 3000),
    fuelLevel: random.next(),
  };
}

/** Random hands on a random world: no assert, no NaN, no unsolved step, Kirchhoff kept whenever time has passed. */
export function soakRun(seed: string, count: number, rig: RigId = FIRST_RIG): SoakResult {
  let world: World;
  let worstAmps = 0;
  let done = 0;
  let at = 0;
  const answer = (trouble: string | null): SoakResult => ({
    seed,
    actions: count,
    done,
    worstAmps,
    trouble: trouble === null ? null : `action ${at}: ${trouble}`,
  });
  try {
    world = createWorld(soakSpec(seed, rig));
    for (const { tick, action } of randomActions(seed, count)) {
      at += 1;
      // After an action a lead stands elsewhere, and its current is not solved for until time goes on.
      const solved = tick > world.tick;
      world.advanceTo(tick);
      const amps = solved ? world.circuit.kclResidual() : 0;
      worstAmps = Math.max(worstAmps, amps);
      if (!(amps <= KIRCHHOFF_AMPS)) return answer(`${amps} A left over at a node`);
      if (world.apply(action).ok) done += 1;
      if (world.unsolvedSteps > 0) return answer('a network could not be solved');
      const odd = firstNotFinite(world.observe(), 'observation') ?? firstNotFinite(world.inside(), 'inside');
      if (odd !== null) return answer(`${odd} is not a number`);
    }
  } catch (error) {
    return answer(error instanceof Error ? error.message : String(error));
  }
  return answer(null);
}

function firstNotFinite(value: unknown, path: string): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : path;
  if (value === null || typeof value !== 'object') return null;
  for (const [key, inner] of Object.entries(value)) {
    const odd = firstNotFinite(inner, `${path}.${key}`);
    if (odd !== null) return odd;
  }
  return null;
}
