import { Random } from '../../src/base/Random.ts';
import { ITEMS } from '../../src/sim/devices/items.ts';
import {
  AIR_SITES,
  CAVITIES,
  CLAMP_SETTINGS,
  EXAMINED_PLACES,
  EXTREMES,
  FITTINGS,
  KEY_POSITIONS,
  LEAD_ENDS,
  LEAD_POINTS,
  METER_FUNCTIONS,
  METER_JACKS,
  SMOKE_GASES,
  SOLENOID_COMMANDS,
  UNIT_PORTS,
  UNITS,
  WIGGLE_PLACES,
} from '../../src/sim/devices/places.ts';
import type { Action } from '../../src/sim/world/Action.ts';

export interface TimedWorldAction {
  readonly tick: number;
  readonly action: Action;
}

/** A seeded stream of actions, sensible or not; many will be refused. */
export function randomActions(seed: string, count: number): TimedWorldAction[] {
  const random = Random.of(seed, 'actions');
  let tick = 0;
  return Array.from({ length: count }, () => {
    tick += Math.floor(random.next() * random.next() * 12_000);
    return { tick, action: randomAction(random) };
  });
}

function pick<T>(random: Random, from: readonly T[]): T {
  return from[Math.floor(random.next() * from.length)] as T;
}

function randomAction(random: Random): Action {
  const makers: readonly (() => Action)[] = [
    () => ({ kind: 'set-key', position: pick(random, KEY_POSITIONS) }),
    () => ({ kind: 'set-meter', function: pick(random, METER_FUNCTIONS) }),
    () => ({ kind: 'place-lead', end: pick(random, LEAD_ENDS), point: pick(random, LEAD_POINTS) }),
    () => ({ kind: 'place-lead', end: pick(random, LEAD_ENDS), point: pick(random, LEAD_POINTS) }),
    () => ({ kind: 'lift-lead', end: pick(random, LEAD_ENDS) }),
    () => ({ kind: 'insert-pin', cavity: pick(random, CAVITIES) }),
    () => ({ kind: 'remove-pin', cavity: pick(random, CAVITIES) }),
    () => ({ kind: 'part-plug' }),
    () => ({ kind: 'mate-plug' }),
    () => ({ kind: 'switch-jumper', on: random.next() < 0.5 }),
    () => ({ kind: 'renew-jumper-fuse' }),
    () => ({ kind: 'pull-fuse' }),
    () => ({ kind: 'fit-fuse' }),
    () => ({ kind: 'fit', item: pick(random, FITTINGS), site: pick(random, AIR_SITES) }),
    () => ({ kind: 'fit', item: pick(random, FITTINGS), site: pick(random, AIR_SITES) }),
    () => ({ kind: 'take-off', item: pick(random, FITTINGS) }),
    () => ({
      kind: 'clamp',
      port: pick(random, UNIT_PORTS),
      setting: pick(random, CLAMP_SETTINGS.slice(0, 2)),
    }),
    () => ({ kind: 'pump-handle', position: Math.floor(random.next() * 65) / 64 }),
    () => ({ kind: 'stroke', depth: 1 }),
    () => ({ kind: 'stroke', depth: Math.floor(random.next() * 65) / 64 }),
    () => ({ kind: 'release', open: random.next() < 0.5 }),
    () => ({ kind: 'command-solenoid', command: pick(random, SOLENOID_COMMANDS) }),
    () => ({ kind: 'meter-jack', jack: pick(random, METER_JACKS) }),
    () => ({ kind: 'meter-range', range: random.next() < 0.4 ? null : Math.floor(random.next() * 6) }),
    () => ({ kind: 'meter-hold', on: random.next() < 0.3 }),
    () => ({ kind: 'meter-extremes', show: pick(random, EXTREMES) }),
    () => ({ kind: 'meter-relative', on: random.next() < 0.5 }),
    () => ({ kind: 'switch-supply', on: random.next() < 0.6 }),
    () => ({ kind: 'wiggle', at: pick(random, WIGGLE_PLACES) }),
    () => ({ kind: 'look', at: pick(random, EXAMINED_PLACES) }),
    () => ({ kind: 'listen', at: pick(random, EXAMINED_PLACES) }),
    () => ({ kind: 'drag-test', cavity: pick(random, CAVITIES) }),
    () => ({ kind: 'swap-unit', to: pick(random, UNITS) }),
    () => ({ kind: 'renew', item: pick(random, ITEMS) }),
    () => ({ kind: 'set-bleed', openness: Math.floor(random.next() * 9) / 8 }),
    () => ({ kind: 'refill-manometer' }),
    () => ({ kind: 'set-smoke', gas: pick(random, SMOKE_GASES), pa: Math.floor(random.next() * 29) * 500 }),
    // Rarely, for a drive costs as much as minutes on the bench.
    () =>
      random.next() < 0.1
        ? { kind: 'road-test', cycles: 1 + Math.floor(random.next() * 2) }
        : { kind: 'clear-codes' },
  ];
  return pick(random, makers)();
}
