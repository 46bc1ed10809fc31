import { describe, expect, it } from 'vitest';
import type { ItemId } from '../../src/sim/devices/items.ts';
import type { ExaminedPlace } from '../../src/sim/devices/places.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import type { Sign } from '../../src/sim/world/Observation.ts';
import { createWorld, type World } from '../../src/sim/world/World.ts';

function worldWith(fault?: string, severity = 0.5): World {
  return createWorld({
    seed: 'eyes',
    faults: fault === undefined ? [] : [{ fault, severity }],
    ambientC: 20,
    altitudeM: 0,
    fuelLevel: 0.5,
  });
}

function act(world: World, ...actions: Action[]): World {
  for (const action of actions) {
    const done = world.apply(action);
    if (!done.ok) throw new Error(`${action.kind} was refused: ${done.error}`);
  }
  return world;
}

function seenAt(world: World, at: ExaminedPlace): readonly Sign[] {
  return act(world, { kind: 'look', at }).observe().findings.at(-1)?.signs ?? [];
}

const HOSE_OFF: Action = { kind: 'take-off', item: 'canister-hose' };
const PART: Action = { kind: 'part-plug' };

describe('looking', () => {
  it.each<[string, number, ExaminedPlace, readonly Action[], readonly Sign[]]>([
    ['canister-hose-split', 1, 'canister-hose', [], ['split']],
    // A split that smoke finds and an eye does not.
    ['canister-hose-split', 0, 'canister-hose', [], ['nothing-wrong']],
    ['canister-hose-off', 0, 'canister-hose', [], ['hose-off']],
    ['engine-hose-pinched', 0.5, 'engine-hose', [], ['pinched']],
    ['engine-hose-leaking', 0.5, 'engine-hose', [], ['split']],
    ['filter-clogged', 0.5, 'filter', [], ['dirty']],
    ['water-in-filter', 0, 'filter', [], ['water']],
    ['canister-cracked', 1, 'canister', [], ['crack']],
    ['canister-cracked', 0, 'canister', [], ['nothing-wrong']],
    ['filler-cap-leaking', 1, 'filler-cap', [], ['loose-cap']],
    ['tank-seal-leaking', 1, 'tank', [], ['not-seen']],
    ['body-cracked', 1, 'unit', [], ['crack']],
    ['air-hose-blocked', 0.5, 'air-hose', [], ['nothing-wrong']],
    ['air-hose-blocked', 0.5, 'air-hose', [{ kind: 'take-off', item: 'air-hose' }], ['blocked']],
    ['charcoal-in-hose', 0, 'canister-hose', [], ['nothing-wrong']],
    ['charcoal-in-hose', 0, 'canister-hose', [HOSE_OFF], ['charcoal']],
    ['fuel-in-canister', 0, 'canister', [HOSE_OFF], ['fuel']],
    ['fuse-blown', 0, 'fuse', [], ['not-seen']],
    ['fuse-blown', 0, 'fuse', [{ kind: 'pull-fuse' }], ['element-melted']],
    ['moisture-2-3', 0.5, 'plug', [], ['not-seen']],
    ['moisture-2-3', 0.5, 'plug', [PART], ['green-corrosion', 'moisture']],
    ['terminal-3-spread', 1, 'plug', [PART], ['terminal-spread']],
    ['terminal-3-spread', 0, 'plug', [PART], ['nothing-wrong']],
    ['feed-to-ground', 1, 'harness', [], ['chafed']],
    // A broken strand inside sound insulation is for the meter to find.
    ['sense-open', 0, 'harness', [], ['nothing-wrong']],
    ['jumper-fuse-blown', 0, 'jumper', [], ['element-melted']],
  ])('%s at severity %d, looking at the %s', (fault, severity, at, before, signs) => {
    expect(seenAt(act(worldWith(fault, severity), ...before), at)).toEqual(signs);
  });

  it('finds a chafed wire also while it does not touch', () => {
    for (const seed of ['a', 'b', 'c', 'd', 'e', 'f']) {
      const world = createWorld({
        seed,
        faults: [{ fault: 'sense-to-ground', severity: 1, whenMoved: true }],
        ambientC: 20,
        altitudeM: 0,
        fuelLevel: 0.5,
      });
      expect(seenAt(world, 'harness')).toEqual(['chafed']);
    }
  });

  it('finds nothing anywhere on a sound truck, and never a fault by its name', () => {
    const world = act(worldWith(), PART, HOSE_OFF, { kind: 'pull-fuse' });
    const places: readonly ExaminedPlace[] = [
      'plug',
      'harness',
      'unit',
      'canister-hose',
      'air-hose',
      'engine-hose',
      'filter',
      'canister',
      'filler-cap',
      'purge-valve',
      'battery',
      'jumper',
    ];
    for (const place of places) expect(seenAt(world, place), place).toEqual(['nothing-wrong']);
    expect(seenAt(world, 'fuse')).toEqual(['element-whole']);
  });
});

describe('the drag gauge', () => {
  it('needs the plug parted', () => {
    expect(worldWith().apply({ kind: 'drag-test', cavity: 1 })).toEqual({
      ok: false,
      error: 'plug-must-be-parted',
    });
  });

  it('finds the slack terminal, also where an eye does not, and only that one', () => {
    const world = act(worldWith('terminal-2-spread', 0), PART);
    const felt = ([1, 2, 3] as const).map(
      (cavity) => act(world, { kind: 'drag-test', cavity }).observe().findings.at(-1)?.signs,
    );
    expect(felt).toEqual([['terminal-grips'], ['terminal-slack'], ['terminal-grips']]);
  });
});

const BARE: readonly Action[] = [
  PART,
  HOSE_OFF,
  { kind: 'take-off', item: 'air-hose' },
  { kind: 'take-off', item: 'engine-hose' },
];

describe('the known-good unit', () => {
  it('goes in only with the plug parted and the barbs bare', () => {
    const world = worldWith();
    const swap: Action = { kind: 'swap-unit', to: 'known-good' };
    expect(world.apply(swap)).toEqual({ ok: false, error: 'plug-must-be-parted' });
    act(world, PART);
    expect(world.apply(swap)).toEqual({ ok: false, error: 'barbs-must-be-bare' });
    act(world, ...BARE.slice(1), swap);
    expect(world.observe().unit).toBe('known-good');
    expect(world.apply(swap)).toEqual({ ok: false, error: 'already-so' });
  });

  it('has none of the faults of the truck, whose own unit keeps them', () => {
    const world = act(worldWith('body-cracked', 1), ...BARE, { kind: 'swap-unit', to: 'known-good' });
    expect(seenAt(world, 'unit')).toEqual(['nothing-wrong']);
    act(world, { kind: 'swap-unit', to: 'truck' });
    expect(seenAt(world, 'unit')).toEqual(['crack']);
  });

  it('keeps its own cracked barb', () => {
    const cracks: readonly Action[] = [
      { kind: 'fit', item: 'cap-a', site: 'air-port' },
      { kind: 'clamp', port: 'air-port', setting: 'over-tight' },
      { kind: 'take-off', item: 'cap-a' },
    ];
    const world = act(worldWith(), ...BARE, { kind: 'swap-unit', to: 'known-good' }, ...cracks);
    expect(seenAt(world, 'unit')).toEqual(['crack']);
    act(world, { kind: 'swap-unit', to: 'truck' });
    expect(seenAt(world, 'unit')).toEqual(['nothing-wrong']);
    act(world, { kind: 'swap-unit', to: 'known-good' });
    expect(seenAt(world, 'unit')).toEqual(['crack']);
  });

  it('keeps what was done to it, and the truck renewing its own does not mend it', () => {
    const world = act(worldWith(), ...BARE, { kind: 'swap-unit', to: 'known-good' });
    const hold = (): number => {
      act(
        world,
        { kind: 'fit', item: 'cap-a', site: 'air-port' },
        { kind: 'clamp', port: 'air-port', setting: 'hand-tight' },
        { kind: 'fit', item: 'pump-hose', site: 'canister-port' },
        { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
      );
      for (let i = 0; i < 12; i++) {
        act(world, { kind: 'stroke', depth: 1 });
        world.advanceTo(world.tick + 10_000);
      }
      const drawn = world.observe().gauge.needleKPa;
      world.advanceTo(world.tick + 20 * 20_000);
      const held = world.observe().gauge.needleKPa;
      act(world, { kind: 'take-off', item: 'cap-a' }, { kind: 'take-off', item: 'pump-hose' });
      return drawn - held;
    };
    // Twelve full strokes go far above the rated 22 inHg: the capsule tears.
    hold();
    expect(hold()).toBeGreaterThan(10);
    const acquired = (): string[] =>
      (world.snapshot().state.bench.acquired ?? []).map(({ fault, unit }) => `${unit} ${fault}`);
    expect(acquired()).toContain('known-good capsule-torn');
    act(world, { kind: 'swap-unit', to: 'truck' }, { kind: 'renew', item: 'unit' });
    act(world, { kind: 'swap-unit', to: 'known-good' });
    expect(hold()).toBeGreaterThan(10);
  });

  it('must be out of the way before the unit is renewed', () => {
    const world = act(worldWith(), ...BARE, { kind: 'swap-unit', to: 'known-good' });
    expect(world.apply({ kind: 'renew', item: 'unit' })).toEqual({
      ok: false,
      error: 'unit-is-not-the-trucks',
    });
  });
});

describe('renewing', () => {
  it.each<[string, ItemId, ExaminedPlace, readonly Action[]]>([
    ['canister-hose-split', 'canister-hose', 'canister-hose', []],
    ['filter-clogged', 'filter', 'filter', []],
    ['canister-cracked', 'canister', 'canister', []],
    ['filler-cap-leaking', 'filler-cap', 'filler-cap', []],
    ['moisture-2-3', 'plug', 'plug', [PART]],
    ['jumper-fuse-blown', 'jumper', 'jumper', []],
    ['body-cracked', 'unit', 'unit', []],
    ['charcoal-in-hose', 'canister', 'canister-hose', [HOSE_OFF]],
  ])('takes away what was wrong: %s by a new %s', (fault, item, at, before) => {
    const world = act(worldWith(fault, 1), ...before);
    expect(seenAt(world, at)).not.toEqual(['nothing-wrong']);
    act(world, { kind: 'renew', item });
    expect(seenAt(world, at)).toEqual(['nothing-wrong']);
  });

  it('leaves apart what had to come apart', () => {
    const hose = act(worldWith(), { kind: 'renew', item: 'canister-hose' }).observe();
    expect(hose.sites['canister-port']).toBeNull();
    expect(hose.clamps['canister-port']).toBe('loose');
    const plug = act(
      worldWith(),
      { kind: 'insert-pin', cavity: 3 },
      { kind: 'place-lead', end: 'meter-red', point: 'cavity-3-back' },
      { kind: 'renew', item: 'plug' },
    ).observe();
    expect(plug.plug).toEqual({ mated: false, pins: [false, false, false] });
    expect(plug.leads['meter-red']).toBeNull();
  });
});
