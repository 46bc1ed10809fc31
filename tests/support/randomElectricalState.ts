import { Random } from '../../src/base/Random.ts';
import {
  CAVITIES,
  KEY_POSITIONS,
  LEAD_ENDS,
  LEAD_POINTS,
  METER_FUNCTIONS,
  METER_JACKS,
  WIGGLE_PLACES,
} from '../../src/sim/devices/places.ts';
import { PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { WorldBench } from './worldBench.ts';

const ELECTRICAL_ITEMS: ReadonlySet<string> = new Set([
  'unit',
  'feed-wire',
  'ground-wire',
  'sense-wire',
  'plug',
  'fuse',
  'key-switch',
  'battery',
  'controller',
  'meter-leads',
  'meter-fuses',
  'meter-battery',
  'jumper',
  'plain-lead',
]);

/** Faults that can change a voltage or a current. */
export const ELECTRICAL_FAULTS: readonly string[] = PUMP_FAULTS.filter(({ item }) =>
  ELECTRICAL_ITEMS.has(item),
).map(({ id }) => id);

function pick<T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random.next() * from.length)] as T;
}

/** Faults number `index` onwards, so that a run of states goes through the whole list, and sometimes others beside. */
function faultsOf(random: Random, index: number): FaultChoice[] {
  const first = ELECTRICAL_FAULTS[index % ELECTRICAL_FAULTS.length] as string;
  const others = random.next() < 0.4 ? [pick(random, ELECTRICAL_FAULTS)] : [];
  return [first, ...others].map((fault) => ({
    fault,
    severity: random.next(),
    ...(random.next() < 0.3 ? { whenMoved: true } : {}),
  }));
}

/** A bench left in a random electrical state by seeded hands: leads anywhere, any function and jack, anything switched. */
export function randomElectricalState(seed: string, index: number): WorldBench {
  const random = Random.of(`${seed}/${index}`, 'electrical-state');
  const chance = (share: number): boolean => random.next() < share;
  const bench = new WorldBench(faultsOf(random, index), { seed: `${seed}/${index}` });
  const tries = (action: Action): void => {
    bench.world.apply(action);
  };
  if (chance(0.3)) bench.pumpOn().stroke();
  tries({ kind: 'set-key', position: pick(random, KEY_POSITIONS) });
  if (chance(0.4)) tries({ kind: 'part-plug' });
  for (const cavity of CAVITIES) if (chance(0.8)) tries({ kind: 'insert-pin', cavity });
  for (const end of LEAD_ENDS) {
    if (chance(0.75)) tries({ kind: 'place-lead', end, point: pick(random, LEAD_POINTS) });
    if (chance(0.2)) bench.wait(0.05);
  }
  tries({ kind: 'set-meter', function: pick(random, METER_FUNCTIONS) });
  tries({ kind: 'meter-jack', jack: pick(random, METER_JACKS) });
  tries({ kind: 'switch-supply', on: chance(0.6) });
  tries({ kind: 'switch-jumper', on: chance(0.6) });
  if (chance(0.5)) tries({ kind: 'command-solenoid', command: 'on' });
  if (chance(0.3)) tries({ kind: 'wiggle', at: pick(random, WIGGLE_PLACES) });
  if (chance(0.1)) tries({ kind: 'pull-fuse' });
  return bench.wait(2);
}
