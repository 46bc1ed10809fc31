import { describe, expect, it } from 'vitest';
import { AIR_SITES, LEAD_POINTS, SMOKE_PLACES, WIGGLE_PLACES } from '../../../src/sim/devices/places.ts';
import type { HappeningPlace } from '../../../src/sim/world/Observation.ts';
import { GAUGE_CENTRE, GAUGE_RADIUS } from '../../../src/ui/interaction/layout/benchPlan.ts';
import { type Box, boxAround, overlap } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeEnds } from '../../../src/ui/interaction/layout/hotspots.ts';
import { LCD } from '../../../src/ui/interaction/layout/meterPlan.ts';
import {
  LENS,
  SHELF_TABS,
  SMOKE_GAUGE,
  SMOKE_GAUGE_RADIUS,
} from '../../../src/ui/interaction/layout/shelfPlan.ts';
import { happeningAt } from '../../../src/ui/scene/views/happeningPlaces.ts';
import { workingObservations } from '../layout/benchObservations.ts';

/** What is read while something may sound; an instrument of the shelf while its compartment stands open. */
const READ: readonly { readonly name: string; readonly box: Box; readonly shelf: string | null }[] = [
  { name: 'LCD', box: LCD, shelf: null },
  { name: 'gauge', box: boxAround(GAUGE_CENTRE, 2 * GAUGE_RADIUS, 2 * GAUGE_RADIUS), shelf: null },
  { name: 'manometer', box: LENS, shelf: 'air' },
  {
    name: 'smoke gauge',
    box: boxAround(SMOKE_GAUGE, 2 * SMOKE_GAUGE_RADIUS, 2 * SMOKE_GAUGE_RADIUS),
    shelf: 'smoke',
  },
];
const PLACES: readonly (HappeningPlace | null)[] = [
  ...LEAD_POINTS,
  ...AIR_SITES,
  ...SMOKE_PLACES,
  ...WIGGLE_PLACES,
  'unit',
  'dash',
  'fuse',
  'jumper',
  'manometer',
  'meter',
  'milliamps-jack',
  'amps-jack',
  null,
];

describe('the word for a sound', () => {
  it('covers nothing that is read at that moment', () => {
    const covered = new Set<string>();
    const benches = [...workingObservations().values()];
    for (const shelf of SHELF_TABS) {
      for (const seen of benches) {
        const ends = placeEnds(seen, shelf);
        for (const at of PLACES) {
          const where = happeningAt({ id: 1, tick: seen.tick, kind: 'spark', at }, seen, shelf, ends);
          for (const read of READ) {
            if (read.shelf !== null && read.shelf !== shelf) continue;
            if (overlap(boxAround(where, 90, 32), read.box)) covered.add(`${read.name} at ${at}`);
          }
        }
      }
    }
    expect([...covered]).toEqual([]);
  });
});
