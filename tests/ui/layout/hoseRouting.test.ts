import { describe, expect, it } from 'vitest';
import { AIR_SITES, type AirSite, HOSE_ENDS, type HoseEnd, mayFit } from '../../../src/sim/devices/places.ts';
import type { Observation } from '../../../src/sim/world/Observation.ts';
import { sampled } from '../../../src/ui/interaction/layout/curve.ts';
import { contains, distance, grow, SHEET } from '../../../src/ui/interaction/layout/geometry.ts';
import { layHose } from '../../../src/ui/interaction/layout/hoseRouting.ts';
import { hoseIsShown, hoseOf, hosePlan, placeSite } from '../../../src/ui/interaction/layout/hoses.ts';
import { FACES } from '../../../src/ui/interaction/layout/labels.ts';
import { tabOfHose } from '../../../src/ui/interaction/layout/shelf.ts';
import {
  SHELF,
  SHELF_EDGE_Y,
  SHELF_TABS,
  type ShelfTab,
} from '../../../src/ui/interaction/layout/shelfPlan.ts';
import { observation, startObservation } from './benchObservations.ts';

const BARE = { ...startObservation().sites, 'canister-port': null, 'air-port': null, 'engine-port': null };

/** Of the widest hose that goes near a dial. */
const HALF_WIDTH = 10;

/** Every hose on every site it fits, under every compartment. */
const FITTED: readonly { end: HoseEnd; site: AirSite; shelf: ShelfTab; seen: Observation }[] =
  HOSE_ENDS.flatMap((end) =>
    AIR_SITES.filter((site) => mayFit(hoseOf(end), site)).flatMap((site) =>
      SHELF_TABS.map((shelf) => ({
        end,
        site,
        shelf,
        seen: observation({ sites: { ...BARE, [site]: hoseOf(end) } }),
      })),
    ),
  );

describe('hoses on the bench', () => {
  it('never cross the window or the dial and stay on the sheet, whatever they are on', () => {
    for (const { end, site, shelf, seen } of FITTED) {
      for (const at of sampled(layHose(seen, end, shelf).curve, 24)) {
        expect(contains(SHEET, at), `${end} on ${site}`).toBe(true);
        const faces = FACES.filter((face) => contains(grow(face, HALF_WIDTH), at));
        expect(faces, `${end} on ${site}, ${shelf}`).toEqual([]);
      }
    }
  });

  it('of the jar lies clear of the manometer hose beside it, wherever the jar hose goes', () => {
    const loose = sampled(layHose(startObservation(), 'manometer-hose-end', 'air').curve, 24);
    const ways = FITTED.filter(({ end, shelf }) => end === 'jar-hose-end' && shelf === 'air');
    for (const { site, seen } of ways) {
      const way = sampled(layHose(seen, 'jar-hose-end', 'air').curve, 48);
      const nearest = Math.min(...way.flatMap((a) => loose.map((b) => distance(a, b))));
      expect(nearest, site).toBeGreaterThan(12);
    }
  });

  it('run from their root into what they are on', () => {
    for (const { end, site, shelf, seen } of FITTED) {
      const hose = layHose(seen, end, shelf);
      const last = hose.curve.pieces.at(-1)?.to ?? hose.curve.from;
      expect(distance(hose.curve.from, hosePlan(end, shelf).root), `${end} on ${site}`).toBeLessThan(0.01);
      // A cone ends just before the mouth, a truck hose a barb's length past it.
      expect(distance(last, placeSite(site, shelf).mouth), `${end} on ${site}`).toBeLessThanOrEqual(64.1);
      expect(hose.fitted).toBe(true);
    }
  });

  it('of a closed compartment come over the shelf’s edge, and are away while they lie inside', () => {
    for (const end of HOSE_ENDS) {
      const home = tabOfHose(end);
      if (home === null) continue;
      for (const shelf of SHELF_TABS.filter((tab) => tab !== home)) {
        const loose = observation({ sites: BARE });
        expect(hoseIsShown(loose, end, shelf), `${end} ${shelf}`).toBe(false);
        const out = observation({ sites: { ...BARE, 'canister-port': hoseOf(end) } });
        expect(hoseIsShown(out, end, shelf)).toBe(true);
        expect(hosePlan(end, shelf).root.y).toBe(SHELF_EDGE_Y);
        const inside = sampled(layHose(out, end, shelf).curve, 24).filter((at) =>
          contains(grow(SHELF, -1), at),
        );
        expect(inside, `${end} ${shelf}`).toEqual([]);
      }
    }
    const jarred = observation({ sites: { ...BARE, 'jar-tee-b': 'manometer-hose' } });
    expect(hoseIsShown(jarred, 'manometer-hose-end', 'leads')).toBe(false);
    expect(hoseIsShown(jarred, 'manometer-hose-end', 'air')).toBe(true);
  });
});
