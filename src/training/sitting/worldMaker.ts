import { createWorld } from '../../sim/world/World.ts';
import type { WorldPort, WorldSpec } from '../../sim/world/WorldPort.ts';
import type { Scenario } from '../scenario/Scenario.ts';

/** Makes the world a sitting works on. Tests may give another than the real one. */
export type WorldMaker = (spec: WorldSpec) => WorldPort;

/** The world of a scenario under a seed. */
export function worldSpec(scenario: Scenario, seed: string): WorldSpec {
  return {
    seed,
    ...(scenario.rig === undefined ? {} : { rig: scenario.rig }),
    faults: scenario.faults,
    ...(scenario.workOrder.renewed === undefined ? {} : { renewedBefore: scenario.workOrder.renewed }),
    drives: scenario.drives,
    ambientC: scenario.bench.ambientC,
    altitudeM: scenario.bench.altitudeM,
    fuelLevel: scenario.bench.fuelPercent / 100,
  };
}

/** The world every sitting works on unless told otherwise. */
export const theWorld: WorldMaker = createWorld;
