import { secondsToTicks } from '../../base/ticks.ts';
import { createWorld } from '../../sim/world/World.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { worldSpec } from '../sitting/worldMaker.ts';
import type { StatedCodes } from './ScenarioProof.ts';

/** What the work order says was read. */
export function statedCodes({ workOrder }: Scenario): StatedCodes {
  return byStatus(workOrder.codes);
}

/** What the controller holds after the drives before the order, under the scenario's own seed. Some tenths of a second. */
export function heldCodes(scenario: Scenario): StatedCodes {
  const world = createWorld(worldSpec(scenario, scenario.seed));
  world.apply({ kind: 'set-key', position: 'on' });
  world.advanceTo(secondsToTicks(1));
  const { stored, pending } = byStatus(world.observe().reader.codes);
  return { stored, pending: pending.filter((code) => !stored.includes(code)) };
}

function byStatus(codes: readonly { readonly code: string; readonly status: string }[]): StatedCodes {
  const of = (status: string): readonly string[] =>
    codes.filter((entry) => entry.status === status).map(({ code }) => code);
  return { stored: of('stored'), pending: of('pending') };
}
