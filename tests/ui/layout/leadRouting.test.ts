import { describe, expect, it } from 'vitest';
import {
  LEAD_ENDS,
  LEAD_POINTS,
  type LeadEnd,
  type LeadPoint,
  needsPartedPlug,
} from '../../../src/sim/devices/places.ts';
import type { Observation } from '../../../src/sim/world/Observation.ts';
import { type Curve, sampled } from '../../../src/ui/interaction/layout/curve.ts';
import {
  along,
  contains,
  distance,
  grow,
  SHEET,
  towards,
  type Vec,
} from '../../../src/ui/interaction/layout/geometry.ts';
import { placeEnds } from '../../../src/ui/interaction/layout/hotspots.ts';
import { FACES, LABEL_BOXES } from '../../../src/ui/interaction/layout/labels.ts';
import {
  CORDS,
  cordEndOf,
  cordRoot,
  endOfCord,
  layCords,
} from '../../../src/ui/interaction/layout/leadRouting.ts';
import { observation, startObservation, workingObservations } from './benchObservations.ts';

const LEAD_HALF_WIDTH = 5;

function withLead(end: LeadEnd, point: LeadPoint): Observation {
  const leads = { ...startObservation().leads, [end]: point };
  return observation({ leads, plug: { mated: !needsPartedPlug(point), pins: [true, true, true] } });
}

function cords(seen: Observation): readonly Curve[] {
  return [...layCords(seen, placeEnds(seen, 'leads')).values()];
}

function pointsOf(curves: readonly Curve[]): readonly Vec[] {
  return curves.flatMap((curve) => sampled(curve, 24));
}

const FIXED = LEAD_POINTS.filter((point) => !point.startsWith('meter-'));
const TRIED: readonly LeadEnd[] = ['meter-red', 'meter-black', 'jumper-far', 'plain-a'];

describe('leads on the bench', () => {
  for (const end of TRIED) {
    it(`${end}: never crosses the window or the dial and stays on the sheet, wherever it is put`, () => {
      for (const point of FIXED) {
        for (const at of pointsOf(cords(withLead(end, point)))) {
          expect(contains(SHEET, at), point).toBe(true);
          expect(
            FACES.some((face) => contains(grow(face, LEAD_HALF_WIDTH), at)),
            point,
          ).toBe(false);
        }
      }
    });
  }

  it('of the meter never cross a printed word, wherever one of them is put', () => {
    for (const end of ['meter-red', 'meter-black'] as const) {
      for (const point of FIXED) {
        const across = pointsOf(cords(withLead(end, point))).filter((at) =>
          LABEL_BOXES.some((box) => contains(box, at)),
        );
        expect(across, `${end} on ${point}`).toEqual([]);
      }
    }
  });

  it('of every kind keep their needle off printed words, wherever one of them is put', () => {
    for (const end of LEAD_ENDS) {
      for (const point of FIXED) {
        const placed = placeEnds(withLead(end, point), 'leads').get(end);
        if (placed === undefined) throw new Error(`no ${end}`);
        const way = towards(placed.tip, placed.grip);
        const across = Array.from({ length: Math.floor(distance(placed.tip, placed.grip) / 4) }, (_, i) =>
          along(placed.tip, way, 4 * (i + 1)),
        ).filter((at) => LABEL_BOXES.some((box) => contains(box, at)));
        expect(across, `${end} on ${point}`).toEqual([]);
      }
    }
  });

  it('leave the wire side of the plug upward', () => {
    for (const point of ['cavity-1-back', 'cavity-2-back', 'cavity-3-back'] as const) {
      const seen = withLead('meter-red', point);
      const end = placeEnds(seen, 'leads').get('meter-red');
      expect(end).toBeDefined();
      if (end !== undefined) expect(cordEndOf(end).direction.y, point).toBeLessThan(-0.9);
    }
  });

  it('run from their root to their clip without a gap', () => {
    for (const [name, seen] of workingObservations()) {
      const ends = placeEnds(seen, 'leads');
      const laid = layCords(seen, ends);
      for (const cord of CORDS) {
        const curve = laid.get(cord);
        const end = ends.get(endOfCord(cord));
        expect(curve !== undefined && end !== undefined, `${name} ${cord}`).toBe(true);
        if (curve === undefined || end === undefined) continue;
        expect(distance(curve.from, cordRoot(cord, seen, ends).at), `${name} ${cord}`).toBeLessThan(0.01);
        const last = curve.pieces.at(-1)?.to ?? curve.from;
        expect(distance(last, cordEndOf(end).at), `${name} ${cord}`).toBeLessThan(0.01);
      }
    }
  });

  it('are laid alike every time', () => {
    for (const seen of workingObservations().values()) {
      expect(cords(structuredClone(seen))).toEqual(cords(seen));
    }
  });

  it('part where they would lie on each other: two meter leads to neighbouring terminals', () => {
    const seen = observation({
      plug: { mated: true, pins: [true, true, true] },
      leads: { ...startObservation().leads, 'meter-red': 'cavity-3-back', 'meter-black': 'cavity-2-back' },
    });
    const laid = layCords(seen, placeEnds(seen, 'leads'));
    const [red, black] = [laid.get('meter-red'), laid.get('meter-black')].map((curve) =>
      curve === undefined ? [] : sampled(curve, 24),
    );
    const close = (red ?? []).filter((at) => (black ?? []).some((other) => distance(at, other) < 8));
    // A crossing is a few samples; lying on each other would be most of them.
    expect(close.length).toBeLessThan((red ?? []).length * 0.12);
  });
});
