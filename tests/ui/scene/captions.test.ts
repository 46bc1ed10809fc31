import { describe, expect, it } from 'vitest';
import {
  AIR_SITES,
  EXAMINED_PLACES,
  LEAD_POINTS,
  SMOKE_PLACES,
  UNIT_PORTS,
  WIGGLE_PLACES,
} from '../../../src/sim/devices/places.ts';
import type {
  Finding,
  HappeningKind,
  HappeningPlace,
  Observation,
} from '../../../src/sim/world/Observation.ts';
import { BARBS, HOSES, SWITCH_CAPSULE } from '../../../src/ui/interaction/layout/benchPlan.ts';
import {
  boxAround,
  distance,
  inside,
  overlap,
  SHEET,
  type Vec,
} from '../../../src/ui/interaction/layout/geometry.ts';
import { placeEnds, placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import { LABEL_BOXES } from '../../../src/ui/interaction/layout/labels.ts';
import { LCD } from '../../../src/ui/interaction/layout/meterPlan.ts';
import { type FixedPoint, POINTS } from '../../../src/ui/interaction/layout/points.ts';
import { SHELF_TABS, type ShelfTab } from '../../../src/ui/interaction/layout/shelfPlan.ts';
import { windowOf } from '../../../src/ui/interaction/viewFit.ts';
import { fitView, VIEWS } from '../../../src/ui/interaction/views.ts';
import type { Frame } from '../../../src/ui/scene/Frame.ts';
import { clearSpot } from '../../../src/ui/scene/views/clearSpot.ts';
import { createFindingCaptions } from '../../../src/ui/scene/views/findingCaptions.ts';
import { happeningAt } from '../../../src/ui/scene/views/happeningPlaces.ts';
import { smokeAt, smokeWord } from '../../../src/ui/scene/views/smokePuffs.ts';
import { observation, startObservation, workingObservations } from '../layout/benchObservations.ts';
import { QUIET } from './quietView.ts';

const SHELVES = SHELF_TABS.flatMap((shelf) =>
  [...workingObservations().values()].map((seen) => ({ shelf, seen })),
);

const PLACES: readonly HappeningPlace[] = [
  ...new Set<HappeningPlace>([
    ...LEAD_POINTS,
    ...AIR_SITES,
    ...SMOKE_PLACES,
    ...WIGGLE_PLACES,
    ...(['unit', 'dash', 'fuse', 'jumper', 'manometer', 'meter', 'milliamps-jack', 'amps-jack'] as const),
  ]),
];

function captionAt(kind: HappeningKind, at: HappeningPlace | null, seen: Observation, shelf: ShelfTab): Vec {
  return happeningAt({ id: 1, tick: seen.tick, kind, at }, seen, shelf, placeEnds(seen, shelf));
}

describe('captions', () => {
  it('of everything heard or seen stand on the sheet, clear of the window', () => {
    for (const { shelf, seen } of SHELVES) {
      for (const at of [...PLACES, null]) {
        const pill = boxAround(captionAt('spark', at, seen, shelf), 80, 32);
        expect(inside(pill, SHEET), `${at}`).toBe(true);
        expect(overlap(pill, LCD), `${at}`).toBe(false);
      }
    }
  });

  it('of what happens out of sight stand at the edge of the view, in every view', () => {
    const seen = startObservation();
    for (const view of VIEWS) {
      const window = windowOf(fitView(view, 888, 612), 888, 612);
      for (const at of [...PLACES, null]) {
        const ends = placeEnds(seen, 'leads');
        const caption = happeningAt(
          { id: 1, tick: seen.tick, kind: 'hiss', at },
          seen,
          'leads',
          ends,
          window,
        );
        expect(inside(boxAround(caption, 60, 30), window), `${at} in ${view}`).toBe(true);
      }
      const about = { ...boxAround({ x: 100, y: 100 }, 40), id: 'place:battery' };
      const box = clearSpot({ w: 230, h: 30 }, about, placeHotspots(seen, 'leads'), window);
      expect(inside(box, window), view).toBe(true);
    }
  });

  it('of a spark stand at the point that sparked, wherever that is', () => {
    for (const { shelf, seen } of SHELVES) {
      for (const [point, place] of Object.entries(POINTS)) {
        if (overlap(boxAround(place, 60, 60), LCD)) continue;
        expect(distance(captionAt('spark', point as FixedPoint, seen, shelf), place), point).toBeLessThan(80);
      }
    }
  });

  it('of a barb and of a meter fuse stand at the very one', () => {
    const seen = startObservation();
    for (const port of UNIT_PORTS)
      expect(distance(captionAt('barb-cracked', port, seen, 'leads'), BARBS[port].tip)).toBeLessThan(40);
    const amps = captionAt('fuse-pop', 'amps-jack', seen, 'leads');
    expect(amps.x).toBeGreaterThan(captionAt('fuse-pop', 'milliamps-jack', seen, 'leads').x);
  });

  it('of smoke stand on the sheet for every place it may come out at', () => {
    for (const { shelf, seen } of SHELVES) {
      for (const place of SMOKE_PLACES) {
        expect(inside(smokeWord(smokeAt(place, seen, shelf)), SHEET), place).toBe(true);
      }
    }
  });

  it('of smoke cover no word that is printed there, nor does the smoke but for the name of what it comes from', () => {
    for (const { shelf, seen } of SHELVES) {
      for (const place of SMOKE_PLACES) {
        const at = smokeAt(place, seen, shelf);
        const cloud = { x: at.x - 18, y: at.y - 49, w: 37, h: 51 };
        const boxes = place === 'unit-capsule' ? [smokeWord(at)] : [smokeWord(at), cloud];
        const met = LABEL_BOXES.filter((label) => boxes.some((box) => overlap(box, label)));
        expect(met, place).toEqual([]);
      }
    }
  });

  it('of smoke from a loose end stand at the smoke hose itself while that lies free', () => {
    const start = startObservation();
    const own = smokeAt('loose-end', start, 'smoke');
    const sites = { ...start.sites, 'canister-port': 'smoke-hose', 'air-port': 'cap-a' } as const;
    const other = smokeAt('loose-end', observation({ sites }), 'smoke');
    expect(own.y).toBeGreaterThan(700);
    expect(other).toEqual(HOSES['canister-hose-end'].mouth);
  });

  it('of smoke stand at a bare barb, and at the drawn switch for its capsule', () => {
    const start = startObservation();
    for (const port of UNIT_PORTS) {
      const bare = observation({ sites: { ...start.sites, [port]: null } });
      expect(distance(smokeAt(port, bare, 'smoke'), BARBS[port].tip)).toBeLessThan(12);
      expect(distance(smokeAt(port, start, 'smoke'), BARBS[port].tip)).toBeGreaterThan(30);
    }
    expect(smokeAt('unit-capsule', start, 'smoke')).toEqual(SWITCH_CAPSULE);
  });
});

describe('what an eye found', () => {
  const found = (id: number): Finding => ({
    id,
    tick: startObservation().tick,
    how: 'look',
    at: EXAMINED_PLACES[0],
    cavity: null,
    signs: ['nothing-wrong'],
  });
  const frame = (findings: readonly Finding[], seconds: number): Frame => {
    const seen = observation({ findings });
    return {
      observation: seen,
      seconds,
      hand: null,
      window: SHEET,
      ends: placeEnds(seen, 'hands'),
      hotspots: new Map(placeHotspots(seen, 'hands').map((each) => [each.id, each])),
      view: { ...QUIET, shelf: 'hands' },
    };
  };

  it('is shown for some seconds when it is new, and not at all when it is history', () => {
    const layer = createFindingCaptions();
    expect(layer.key(frame([found(1)], 0))).toBe('');
    const shown = layer.key(frame([found(1), found(2)], 1));
    expect(shown).toMatch(/^2 /);
    expect(layer.key(frame([found(1), found(2)], 4.5))).toBe(shown);
    expect(layer.key(frame([found(1), found(2)], 5.5))).toBe('');
  });

  it('goes when the hand goes on, but not at once', () => {
    const layer = createFindingCaptions();
    const elsewhere = (seconds: number): Frame => {
      const now = frame([found(1), found(2)], seconds);
      return { ...now, view: { ...now.view, ring: 'key' } };
    };
    layer.key(frame([found(1)], 0));
    expect(layer.key(frame([found(1), found(2)], 1))).toMatch(/^2 /);
    expect(layer.key(elsewhere(1.5))).toMatch(/^2 /);
    expect(layer.key(elsewhere(2.1))).toBe('');
  });

  it('and every name under the pointer stands clear of whatever a hand may want', () => {
    for (const { shelf, seen } of SHELVES) {
      const hotspots = placeHotspots(seen, shelf);
      for (const id of [
        'place:unit',
        'wiggle:plug',
        'clamp:air-port',
        'place:tank',
        'wiggle:sense',
      ] as const) {
        const about = hotspots.find((each) => each.id === id);
        if (about === undefined) throw new Error(id);
        const box = clearSpot({ w: 230, h: 30 }, about, hotspots);
        expect(inside(box, SHEET), id).toBe(true);
        const hit = hotspots.filter((each) => each.enabled && overlap(each, box)).map((each) => each.id);
        expect(hit, `${id} ${shelf}`).toEqual([]);
      }
    }
  });
});
