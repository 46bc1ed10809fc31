import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Action, ActionKind } from '../../../src/sim/world/Action.ts';
import type { Observation } from '../../../src/sim/world/Observation.ts';
import { undoingOf } from '../../../src/ui/interaction/undoing.ts';
import { randomActions } from '../../support/randomActions.ts';
import { WorldBench } from '../../support/worldBench.ts';

/** Where everything is and how it is set, as an eye sees it. */
function settings(seen: Observation) {
  const { key, fuse, plug, leads, jumper, sites, clamps, cracked, supply, bleed, smoke, unit, meter } = seen;
  return {
    key,
    fuse: fuse.fitted,
    plug,
    leads,
    jumper: jumper.switchedOn,
    sites,
    clamps,
    cracked,
    supply: supply.on,
    bleed,
    smoke: { gas: smoke.gas, setKPa: smoke.setKPa },
    unit,
    meter: {
      function: meter.function,
      jack: meter.jack,
      heldRange: meter.heldRange,
      hold: meter.hold,
      extremes: meter.extremes,
      relative: meter.relative,
    },
  };
}

/** The one exception that life makes: a reading held, recorded or zeroed is gone when the selector is turned. */
function asPutBack(action: Action, before: ReturnType<typeof settings>): ReturnType<typeof settings> {
  if (action.kind !== 'set-meter') return before;
  return { ...before, meter: { ...before.meter, hold: false, extremes: 'off', relative: false } };
}

/** Barbs over-tightened long ago are put back hand tight: the tests say so by themselves. */
function isOverTight(seen: Observation): boolean {
  return Object.values(seen.clamps).includes('over-tight');
}

const undoneKinds = new Map<ActionKind, number>();

/** Does what is allowed of a random stream and puts each thing back at once; then does it after all, and goes on. */
function checkStream(seed: string, count: number): void {
  const bench = new WorldBench();
  for (const { tick, action } of randomActions(seed, count)) {
    bench.world.advanceTo(Math.max(bench.world.tick, tick));
    const before = bench.world.observe();
    if (isOverTight(before) || !bench.world.apply(action).ok) continue;
    const undoing = undoingOf(action, before);
    if (undoing.kind !== 'put-back') continue;
    const wanted = asPutBack(action, settings(before));
    // A hand takes its time.
    bench.wait(0.2);
    const cracked = bench.world.observe().cracked;
    for (const back of undoing.actions) {
      const done = bench.world.apply(back);
      if (!done.ok) throw new Error(`${seed}: ${JSON.stringify({ action, back, refusal: done.error })}`);
      const seen = bench.world.observe();
      expect(Object.values(seen.clamps)).not.toContain('over-tight');
      expect(seen.cracked, 'no barb cracks on the way').toEqual(
        back.kind === 'swap-unit' ? seen.cracked : cracked,
      );
      if (back.kind === 'place-lead') expect(back.point).not.toMatch(/^(wire|front)-/);
    }
    expect(settings(bench.world.observe()), JSON.stringify(action)).toEqual(wanted);
    undoneKinds.set(action.kind, (undoneKinds.get(action.kind) ?? 0) + 1);
    if (bench.world.apply(action).ok) bench.wait(0.1);
  }
}

describe('undoing', () => {
  it('puts everything back where it was, whatever stood on the bench', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 4, maxLength: 8 }), (seed) => checkStream(seed, 120)),
      { numRuns: 12, seed: 20 },
    );
    // The streams must have come by every kind that can be put back, or the check above says little.
    for (const kind of [
      'place-lead',
      'lift-lead',
      'insert-pin',
      'remove-pin',
      'part-plug',
      'mate-plug',
      'fit',
      'take-off',
      'set-key',
      'set-meter',
      'meter-jack',
      'switch-jumper',
      'switch-supply',
      'pull-fuse',
      'fit-fuse',
      'set-bleed',
      'set-smoke',
      'command-solenoid',
    ] as const) {
      expect(undoneKinds.get(kind) ?? 0, kind).toBeGreaterThan(0);
    }
  });

  it('brings a lead back to where its tip was, or lifts it', () => {
    const bench = new WorldBench();
    const place = { kind: 'place-lead', end: 'meter-red', point: 'fuse-in' } as const;
    expect(undoingOf(place, bench.world.observe())).toEqual({
      kind: 'put-back',
      actions: [{ kind: 'lift-lead', end: 'meter-red' }],
    });
    bench.lead('meter-red', 'battery-positive');
    expect(undoingOf(place, bench.world.observe())).toEqual({
      kind: 'put-back',
      actions: [{ kind: 'place-lead', end: 'meter-red', point: 'battery-positive' }],
    });
  });

  it('tightens the clamp of a hose that is put back, by hand', () => {
    const bench = new WorldBench();
    const before = bench.world.observe();
    const off = { kind: 'take-off', item: 'air-hose' } as const;
    const undoing = undoingOf(off, before);
    expect(undoing).toEqual({
      kind: 'put-back',
      actions: [
        { kind: 'fit', item: 'air-hose', site: 'air-port' },
        { kind: 'clamp', port: 'air-port', setting: before.clamps['air-port'] },
      ],
    });
    bench.do({ kind: 'clamp', port: 'air-port', setting: 'over-tight' });
    const after = undoingOf(off, bench.world.observe());
    expect(after.kind === 'put-back' && after.actions[1]).toEqual({
      kind: 'clamp',
      port: 'air-port',
      setting: 'hand-tight',
    });
  });

  it('puts the other unit back with the leads that were on its terminals', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' });
    for (const item of ['canister-hose', 'air-hose', 'engine-hose'] as const) {
      bench.do({ kind: 'take-off', item });
    }
    bench.lead('meter-red', 'unit-1').lead('meter-black', 'unit-2');
    const before = bench.world.observe();
    const swap = { kind: 'swap-unit', to: 'known-good' } as const;
    bench.do(swap);
    expect(bench.world.observe().leads['meter-red']).toBeNull();
    const undoing = undoingOf(swap, before);
    if (undoing.kind !== 'put-back') throw new Error('a unit can be put back');
    bench.do(...undoing.actions);
    expect(settings(bench.world.observe())).toEqual(settings(before));
  });

  it('offers nothing that life does not give back', () => {
    const bench = new WorldBench().do({ kind: 'part-plug' }).lead('meter-red', 'wire-1');
    const seen = bench.world.observe();
    const why = (action: Action) => {
      const undoing = undoingOf(action, seen);
      return undoing.kind === 'put-back' ? undoing.actions : undoing.why;
    };
    expect(why({ kind: 'lift-lead', end: 'meter-red' })).toBe('harms-again');
    expect(why({ kind: 'place-lead', end: 'meter-red', point: 'fuse-in' })).toBe('harms-again');
    expect(why({ kind: 'clamp', port: 'air-port', setting: 'over-tight' })).toBe('barb-cracked');
    expect(why({ kind: 'stroke', depth: 1 })).toBe('air-moved');
    expect(why({ kind: 'release', open: true })).toBe('air-moved');
    expect(why({ kind: 'look', at: 'plug' })).toBe('seen-already');
    expect(why({ kind: 'meter-hold', on: false })).toBe('reading-let-go');
    expect(why({ kind: 'meter-extremes', show: 'off' })).toBe('reading-let-go');
    expect(why({ kind: 'renew-jumper-fuse' })).toBe('used-up');
    expect(why({ kind: 'clear-codes' })).toBe('codes-cleared');
    expect(undoingOf({ kind: 'renew', item: 'unit' }, seen)).toEqual({
      kind: 'settles',
      why: 'part-renewed',
    });
    expect(undoingOf({ kind: 'road-test', cycles: 1 }, seen)).toEqual({ kind: 'settles', why: 'driven' });
  });
});
