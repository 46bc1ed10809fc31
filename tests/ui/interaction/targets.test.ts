import { describe, expect, it } from 'vitest';
import { AIR_SITES, FITTINGS, LEAD_ENDS } from '../../../src/sim/devices/places.ts';
import type { Grip } from '../../../src/ui/interaction/Grip.ts';
import { placingAction } from '../../../src/ui/interaction/handMachine.ts';
import { legalTargets, offersFor } from '../../../src/ui/interaction/targets.ts';
import { WorldBench } from '../../support/worldBench.ts';

const GRIPS: readonly Grip[] = [
  ...LEAD_ENDS.map((end): Grip => ({ kind: 'lead', end })),
  ...FITTINGS.map((item): Grip => ({ kind: 'fitting', item })),
  { kind: 'pin' },
  { kind: 'drag-gauge' },
  { kind: 'sense', how: 'look' },
  { kind: 'sense', how: 'listen' },
];

/** Benches in different states of work. */
const SET_UPS: readonly [string, () => WorldBench][] = [
  ['as found', () => new WorldBench()],
  [
    'plug parted, hoses off',
    () =>
      new WorldBench().do(
        { kind: 'part-plug' },
        { kind: 'take-off', item: 'canister-hose' },
        { kind: 'take-off', item: 'air-hose' },
        { kind: 'fit', item: 'cap-a', site: 'air-port' },
      ),
  ],
  ['under test', () => new WorldBench().senseWatched().pumpOn()],
];

describe('the places offered for a held thing', () => {
  for (const [name, setUp] of SET_UPS) {
    it(`are just those the world accepts (${name})`, () => {
      for (const grip of GRIPS) {
        for (const { target, refusal } of offersFor(grip, setUp().world.observe())) {
          const bench = setUp();
          const action = placingAction(grip, target.kind === 'mat', target);
          if (action === null) throw new Error(`nothing to do for ${JSON.stringify({ grip, target })}`);
          const done = bench.world.apply(action);
          expect(done.ok ? null : done.error, JSON.stringify({ grip, target })).toBe(refusal);
        }
      }
    });
  }

  it('leave out what cannot fit at all', () => {
    const cap = legalTargets({ kind: 'fitting', item: 'cap-a' }, new WorldBench().world.observe());
    // All three ports have their hoses on: only the jar's tees are bare.
    expect(cap.map((target) => target.kind === 'site' && target.site)).toEqual(['jar-tee-a', 'jar-tee-b']);
    const plug = offersFor({ kind: 'fitting', item: 'plug-a' }, new WorldBench().world.observe());
    expect(plug.every(({ target }) => target.kind !== 'site' || target.site.endsWith('-end'))).toBe(true);
    expect(AIR_SITES.length).toBeGreaterThan(plug.length);
  });

  it('come grouped in the order of the job', () => {
    const groups = offersFor({ kind: 'lead', end: 'meter-red' }, new WorldBench().world.observe()).map(
      (o) => o.group,
    );
    expect([...new Set(groups)]).toEqual(['power', 'plug', 'controller', 'leads']);
    expect(groups).toEqual([...groups].sort((a, b) => groups.indexOf(a) - groups.indexOf(b)));
  });
});
