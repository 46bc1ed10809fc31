import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  LEAD_ENDS,
  LEAD_POINTS,
  type LeadEnd,
  type LeadPoint,
  needsPartedPlug,
} from '../../../src/sim/devices/places.ts';
import type { Observation } from '../../../src/sim/world/Observation.ts';
import { inside, overlap, SHEET } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import { FACES } from '../../../src/ui/interaction/layout/labels.ts';
import type { PlacedHotspot } from '../../../src/ui/interaction/layout/PlacedHotspot.ts';
import { SHELF_TABS, type ShelfTab } from '../../../src/ui/interaction/layout/shelfPlan.ts';
import { observation, startObservation, workingObservations } from './benchObservations.ts';

/** 24 CSS pixels (WCAG 2.2, 2.5.8) where the sheet is drawn 893 pixels wide: a window of 1280 by 800. */
const SMALLEST = (24 * SHEET.w) / 893;

function collisions(hotspots: readonly PlacedHotspot[]): readonly string[] {
  const usable = hotspots.filter((each) => each.enabled);
  return usable.flatMap((a, i) =>
    usable.slice(i + 1).flatMap((b) => (overlap(a, b) ? [`${a.id} × ${b.id}`] : [])),
  );
}

function byId(hotspots: readonly PlacedHotspot[], id: PlacedHotspot['id']): PlacedHotspot {
  const found = hotspots.find((each) => each.id === id);
  if (found === undefined) throw new Error(`no hotspot ${id}`);
  return found;
}

describe('hotspots of the bench', () => {
  for (const [name, seen] of workingObservations()) {
    it(`are usable, apart and on the sheet: ${name}`, () => {
      for (const shelf of SHELF_TABS) {
        const hotspots = placeHotspots(seen, shelf);
        expect(new Set(hotspots.map((each) => each.id)).size, shelf).toBe(hotspots.length);
        expect(collisions(hotspots), shelf).toEqual([]);
        for (const each of hotspots.filter((one) => one.enabled)) {
          expect(Math.min(each.w, each.h), each.id).toBeGreaterThanOrEqual(SMALLEST);
          expect(inside(each, SHEET), each.id).toBe(true);
        }
      }
    });
  }

  it('have the same ids in the same order whatever lies where', () => {
    const ids = placeHotspots(startObservation(), 'leads').map((each) => each.id);
    for (const seen of workingObservations().values()) {
      for (const shelf of SHELF_TABS) {
        expect(placeHotspots(seen, shelf).map((each) => each.id)).toEqual(ids);
      }
    }
  });

  it('keep the grip of an attached lead beside its point, never on a face', () => {
    for (const point of LEAD_POINTS) {
      if (point === 'meter-red-tip') continue;
      const leads = { ...startObservation().leads, 'meter-red': point };
      const hotspots = placeHotspots(
        observation({ leads, plug: { mated: !needsPartedPlug(point), pins: [true, true, true] } }),
        'leads',
      );
      const grip = byId(hotspots, 'end:meter-red');
      const target = byId(hotspots, `point:${point}`);
      expect(overlap(grip, target), point).toBe(false);
      const reach = Math.hypot(
        grip.x + grip.w / 2 - target.x - target.w / 2,
        grip.y + grip.h / 2 - target.y - target.h / 2,
      );
      expect(reach, point).toBeLessThan(100);
      expect(
        FACES.some((face) => overlap(grip, face)),
        point,
      ).toBe(false);
    }
  });

  it('stay apart for any placing of the lead ends, whatever compartment is open', () => {
    const place = fc.option(fc.constantFrom(...LEAD_POINTS.filter((point) => !point.startsWith('meter-'))), {
      nil: null,
    });
    const leadsOf = fc
      .array(place, { minLength: LEAD_ENDS.length, maxLength: LEAD_ENDS.length })
      .map((points) => {
        const entries = LEAD_ENDS.map((end, i): [LeadEnd, LeadPoint | null] => [end, points[i] ?? null]);
        return Object.fromEntries(entries) as Record<LeadEnd, LeadPoint | null>;
      });
    fc.assert(
      fc.property(leadsOf, fc.boolean(), fc.constantFrom(...SHELF_TABS), (leads, mated, shelf) => {
        const parted = Object.values(leads).some((point) => point !== null && needsPartedPlug(point));
        const seen = observation({ leads, plug: { mated: mated && !parted, pins: [true, true, true] } });
        expect(collisions(placeHotspots(seen, shelf))).toEqual([]);
      }),
      { numRuns: 300, seed: 14 },
    );
  });

  it('follow what moves: fuse, pump handle, jumper, hoses, caps', () => {
    const at = (
      change: Partial<Observation>,
      id: PlacedHotspot['id'],
      shelf: ShelfTab = 'leads',
    ): PlacedHotspot => byId(placeHotspots(observation(change), shelf), id);
    const start = startObservation();
    expect(at({ fuse: { fitted: false, element: 'whole' } }, 'fuse').y).toBeGreaterThan(at({}, 'fuse').y);
    const drawn = { handle: 1, moving: false, releaseOpen: false };
    expect(at({ handPump: drawn }, 'pump-handle').x).toBeGreaterThan(at({}, 'pump-handle').x + 80);
    const inUse = { ...start.leads, 'jumper-supply': 'battery-positive' } as const;
    expect(at({ leads: inUse }, 'jumper-switch').y).toBeLessThan(at({}, 'jumper-switch').y);
    const off = { ...start.sites, 'air-port': 'cap-a' } as const;
    expect(at({ sites: off }, 'fitting:cap-a').y).toBeLessThan(at({}, 'fitting:cap-a').y);
    expect(at({ sites: off }, 'site:air-hose-end').enabled).toBe(true);
    expect(at({}, 'site:air-hose-end').enabled).toBe(false);
    expect(at({}, 'point:unit-1').enabled).toBe(false);
  });
});
