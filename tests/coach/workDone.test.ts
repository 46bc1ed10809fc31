import { describe, expect, it } from 'vitest';
import { rigNamed } from '../../src/sim/rigs/rigs.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';

import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { footprintsOf } from '../../src/training/coach/footprints.ts';
import { WorkDone } from '../../src/training/coach/WorkDone.ts';
import { Hands } from './support.ts';

/** The tests of the leak detection pump. */
const TEST_IDS = rigNamed().tests.map(({ id }) => id);

/** A drive is no test of a table, and it takes hours. */
const TESTS = TEST_IDS.filter((id) => id !== 'road-test');

/** Tests that are done along with another, since everything they look at stands before the eyes in it as well. */
const ALONG: Readonly<Partial<Record<StandardTestId, readonly StandardTestId[]>>> = {
  'reader-at-rest': ['command-clicks'],
  'command-clicks': ['reader-at-rest'],
  'battery-under-load': ['meter-on-battery'],
  'wiggle-sense': ['sense-at-plug'],
  'wiggle-ground': ['ground-drop'],
  'engine-port-hold': ['command-clicks'],
  'vent-shut-hold': ['command-clicks'],
  'stroke-jar': ['command-clicks'],
  'slow-strokes-jar': ['command-clicks'],
  'draw-whole-system': ['reader-at-rest', 'command-clicks'],
  'draw-canister-hose-plugged': ['command-clicks'],
};

function doneBy(hands: Hands): readonly StandardTestId[] {
  const work = new WorkDone(rigNamed(), hands.actions, hands.tick, []);
  return TEST_IDS.filter((id) => work.has(id));
}

const ALWAYS = (fault: string, severity = 1): readonly FaultChoice[] => [{ fault, severity }];

describe('what counts as done', () => {
  it('every test but the drive has a footprint', () => {
    const without = footprintsOf(rigNamed())
      .filter(({ marks }) => marks.length === 0)
      .map(({ test }) => test.id);
    expect(without).toEqual([]);
  });

  it.each([
    ['a sound truck', []],
    ['switch-stuck-open', ALWAYS('switch-stuck-open')],
    ['switch-stuck-closed', ALWAYS('switch-stuck-closed')],
    ['winding-open', ALWAYS('winding-open')],
    ['plunger-stuck', ALWAYS('plunger-stuck')],
    ['body-cracked', ALWAYS('body-cracked')],
    ['capsule-torn', ALWAYS('capsule-torn')],
    ['vent-stuck-shut', ALWAYS('vent-stuck-shut')],
    ['vent-stuck-open', ALWAYS('vent-stuck-open')],
    ['trip-high', ALWAYS('trip-high')],
    ['feed-to-ground', ALWAYS('feed-to-ground')],
    ['sense-open', ALWAYS('sense-open')],
    ['fuse-blown', ALWAYS('fuse-blown')],
    ['driver-stuck-on', ALWAYS('driver-stuck-on')],
    ['engine-hose-leaking', ALWAYS('engine-hose-leaking')],
    ['hand-pump-seal-leaking', ALWAYS('hand-pump-seal-leaking')],
    ['gauge-sticking', ALWAYS('gauge-sticking')],
  ])(
    'whatever is wrong, a test worked by its sheet is done, and no other but what goes along: %s',
    (_, faults) => {
      for (const id of TESTS) {
        const done = doneBy(new Hands(faults).test(id));
        expect(done, id).toContain(id);
        // Where a truck goes another way, less may go along.
        const may = [id, ...(ALONG[id] ?? [])];
        expect(
          done.filter((other) => !may.includes(other)),
          id,
        ).toEqual([]);
        if (faults.length === 0) expect(done, id).toHaveLength(may.length);
      }
    },
  );

  it('a hand of its own may do it in another order, with another cap, and read longer', () => {
    const hands = new Hands().do(
      { kind: 'take-off', item: 'air-hose' },
      { kind: 'fit', item: 'cap-c', site: 'air-port' },
      { kind: 'clamp', port: 'air-port', setting: 'hand-tight' },
      { kind: 'take-off', item: 'canister-hose' },
      { kind: 'fit', item: 'pump-hose', site: 'canister-port' },
      { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
      { kind: 'fit', item: 'plug-b', site: 'canister-hose-end' },
    );
    for (let i = 0; i < 4; i++) hands.do({ kind: 'stroke', depth: 1 }).wait(1);
    expect(doneBy(hands)).toEqual([]);
    hands.wait(10);
    expect(doneBy(hands)).toEqual([]);
    hands.wait(15);
    expect(doneBy(hands)).toEqual(['hold-capped']);
  });

  it('a loose clamp or an open air port is another test', () => {
    const hands = new Hands().do(
      { kind: 'take-off', item: 'canister-hose' },
      { kind: 'fit', item: 'plug-a', site: 'canister-hose-end' },
      { kind: 'fit', item: 'pump-hose', site: 'canister-port' },
      { kind: 'clamp', port: 'canister-port', setting: 'hand-tight' },
    );
    for (let i = 0; i < 4; i++) hands.do({ kind: 'stroke', depth: 1 }).wait(1);
    hands.wait(30);
    expect(doneBy(hands)).not.toContain('hold-capped');
  });

  it('leads may be the other way round, and a running engine is as good as the key on', () => {
    const hands = new Hands().do(
      { kind: 'insert-pin', cavity: 3 },
      { kind: 'set-meter', function: 'volts-dc' },
      { kind: 'place-lead', end: 'meter-black', point: 'cavity-3-back' },
      { kind: 'place-lead', end: 'meter-red', point: 'battery-negative' },
      { kind: 'set-key', position: 'running' },
    );
    expect(doneBy(hands)).not.toContain('sense-at-plug');
    expect(doneBy(hands.wait(3))).toContain('sense-at-plug');
  });

  it('looking at a hose that is on is not looking into it', () => {
    const looks = (['canister-hose', 'canister', 'air-hose', 'unit'] as const).map(
      (at) => ({ kind: 'look', at }) as const,
    );
    expect(doneBy(new Hands().do(...looks))).not.toContain('look-into-hoses');
    const off = (['canister-hose', 'air-hose'] as const).map((item) => ({ kind: 'take-off', item }) as const);
    expect(doneBy(new Hands().do(...off, ...looks))).toContain('look-into-hoses');
  });

  it('what was done with a tool proves nothing of the new one', () => {
    const hands = new Hands().test('hand-pump-dead-end', 'hold-capped', 'coil-ohms');
    hands.do({ kind: 'renew', item: 'hand-pump' });
    expect(doneBy(hands)).toEqual(['coil-ohms']);
  });

  it('what was done on the known-good unit is not done on the truck', () => {
    const hands = new Hands().do({ kind: 'part-plug' });
    for (const item of ['canister-hose', 'air-hose', 'engine-hose'] as const)
      hands.do({ kind: 'take-off', item });
    hands.do(
      { kind: 'swap-unit', to: 'known-good' },
      { kind: 'set-meter', function: 'ohms' },
      { kind: 'place-lead', end: 'meter-red', point: 'unit-1' },
      { kind: 'place-lead', end: 'meter-black', point: 'unit-2' },
    );
    expect(doneBy(hands.wait(5))).not.toContain('coil-ohms');
  });

  it('counts trials: clicks, draws of vacuum, movements of the harness', () => {
    const hands = new Hands().test('command-clicks', 'jumper-clicks', 'vacuum-and-sense', 'wiggle-sense');
    const work = new WorkDone(rigNamed(), hands.actions, hands.tick, []);
    expect(work.trialsOf('command-clicks')).toBe(3);
    expect(work.trialsOf('jumper-clicks')).toBe(9);
    expect(work.trialsOf('vacuum-and-sense')).toBe(7);
    expect(work.trialsOf('wiggle-sense')).toBe(4);
    expect(work.trialsOf('wiggle-feed')).toBe(0);
  });

  it('smoke that is seen at once needs no waiting for more', () => {
    const hands = new Hands().do(
      { kind: 'take-off', item: 'canister-hose' },
      { kind: 'fit', item: 'smoke-hose', site: 'canister-hose-end' },
      { kind: 'set-smoke', gas: 'inert', pa: 2989 },
    );
    const from = hands.tick;
    hands.wait(40);
    const question = {
      about: 'smoke',
      at: 'canister-hose',
      tick: from + 20 * 15,
      setUp: '',
      trials: { energised: 0, drawn: 0, moved: 0 },
      bothFaces: false,
    } as const;
    const seen = (value: boolean) =>
      new WorkDone(rigNamed(), hands.actions, hands.tick, [
        { question, shown: { kind: 'yes-no', channel: 'smoke', setUp: '', tick: question.tick, value } },
      ]);
    expect(seen(false).has('smoke-vessel-alone')).toBe(false);
    expect(seen(true).has('smoke-vessel-alone')).toBe(true);
  });
});
