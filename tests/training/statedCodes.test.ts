import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { createWorld } from '../../src/sim/world/World.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { worldSpec } from '../../src/training/sitting/worldMaker.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const names = readdirSync(folder).filter((name) => name.endsWith('.yaml'));

const BULB_CHECK_SECONDS = 15;

/**
 * The drives before the order are really driven, with the fault in. What the work order says was read must be what the
 * controller then remembers: every stored code as stored, and as pending only what is not stored yet.
 */
test.each(names)('%s: the controller holds the codes that the work order states', (name) => {
  const loaded = loadScenario(readFileSync(new URL(name, folder), 'utf8'), name);
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  const scenario = loaded.value;
  const world = createWorld(worldSpec(scenario, scenario.seed));
  expect(world.apply({ kind: 'set-key', position: 'on' }).ok).toBe(true);
  world.advanceTo(secondsToTicks(1));
  const { codes } = world.observe().reader;
  const held = (status: string): string[] =>
    codes.filter((entry) => entry.status === status).map(({ code }) => code);
  const stored = held('stored');
  const pendingOnly = held('pending').filter((code) => !stored.includes(code));
  const stated = (status: string): string[] =>
    scenario.workOrder.codes.filter((entry) => entry.status === status).map(({ code }) => code);
  expect({ stored, pending: pendingOnly }).toEqual({ stored: stated('stored'), pending: stated('pending') });
  // Until then the lamp proves its bulb, whatever is stored: 13 CCR 1968.2(d)(2.1).
  world.advanceTo(secondsToTicks(BULB_CHECK_SECONDS + 1));
  expect(world.observe().dashLamp).toBe(stored.length > 0);
});
