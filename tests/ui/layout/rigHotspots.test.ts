import { describe, expect, it } from 'vitest';
import { EVERY_RIG } from '../../../src/sim/rigs/rigs.ts';
import { placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import { SHELF_TABS } from '../../../src/ui/interaction/layout/shelfPlan.ts';
import { workingObservations } from './benchObservations.ts';

const STATES = [...workingObservations()].flatMap(([name, seen]) =>
  SHELF_TABS.map((shelf) => ({ name: `${name}, ${shelf}`, seen, shelf })),
);

describe.each(EVERY_RIG)('the bench of the $id', ({ surface }) => {
  it('has no target where the bench of all places has none, and none smaller', () => {
    for (const { name, seen, shelf } of STATES) {
      const all = new Map(placeHotspots(seen, shelf).map((spot) => [spot.id, spot]));
      const spots = placeHotspots({ ...seen, surface }, shelf);
      for (const spot of spots.filter(({ enabled }) => enabled)) {
        const { w, h } = all.get(spot.id) ?? { w: 0, h: 0 };
        expect(spot.w * spot.h, `${spot.id} at ${name}`).toBeGreaterThanOrEqual(w * h);
        expect(all.has(spot.id), `${spot.id} at ${name}`).toBe(true);
      }
    }
  });

  it('lets nobody touch a barb, hose or place that it does not have', () => {
    for (const { name, seen, shelf } of STATES) {
      const ids = placeHotspots({ ...seen, surface }, shelf).flatMap(({ id, enabled }) =>
        enabled ? [id] : [],
      );
      const named = (kind: string): readonly string[] =>
        ids.flatMap((id) => (id.startsWith(`${kind}:`) ? [id.slice(kind.length + 1)] : []));
      expect(surface.sites, name).toEqual(expect.arrayContaining([...named('site')]));
      expect(surface.fittings, name).toEqual(expect.arrayContaining([...named('fitting')]));
      expect(surface.ports, name).toEqual(expect.arrayContaining([...named('clamp')]));
      expect(surface.examined, name).toEqual(expect.arrayContaining([...named('place')]));
    }
  });
});
