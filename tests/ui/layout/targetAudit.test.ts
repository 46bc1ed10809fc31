import { describe, expect, it } from 'vitest';
import { type Box, centreOf, inside } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import type { PlacedHotspot } from '../../../src/ui/interaction/layout/PlacedHotspot.ts';
import { SHELF_TABS } from '../../../src/ui/interaction/layout/shelfPlan.ts';
import { ViewCamera } from '../../../src/ui/interaction/ViewCamera.ts';
import { windowOf } from '../../../src/ui/interaction/viewFit.ts';
import { fitView, VIEWS } from '../../../src/ui/interaction/views.ts';
import { crowdedSpots, meantBy } from '../../../src/ui/interaction/viewTargets.ts';
import { startObservation, workingObservations } from './benchObservations.ts';

/**
 * WCAG 2.2, success criterion 2.5.8 "Target Size (Minimum)": a target is 24 by 24 CSS pixels at least, or a circle of 24 px about its
 * middle meets no other target and no other small target's circle (exception "Spacing"), or the same can be done by another control that
 * is large enough (exception "Equivalent"): here the choice that a press on it opens.
 */
const LEAST_PX = 24;

/** Stages as they come out on screens of 320 to 2560 px: beside the evidence from 900 px up, over it below. */
const STAGES: readonly (readonly [number, number])[] = [
  [296, 300],
  [336, 396],
  [366, 450],
  [676, 300],
  [744, 540],
  [560, 410],
  [680, 492],
  [888, 612],
  [1440, 850],
  [2054, 1210],
];

type Verdict = 'large' | 'spaced' | 'crowded';

/** The rule read off the criterion itself, apart from how the bench decides it. */
function judge(spot: Box, others: readonly Box[], scale: number): Verdict {
  const least = LEAST_PX / scale - 1e-6;
  const small = (box: Box): boolean => box.w < least || box.h < least;
  if (!small(spot)) return 'large';
  const circle = centreOf(spot);
  const radius = LEAST_PX / 2 / scale;
  for (const other of others) {
    if (other === spot) continue;
    const near = {
      x: Math.min(Math.max(circle.x, other.x), other.x + other.w),
      y: Math.min(Math.max(circle.y, other.y), other.y + other.h),
    };
    if (Math.hypot(near.x - circle.x, near.y - circle.y) < radius) return 'crowded';
    const middle = centreOf(other);
    if (small(other) && Math.hypot(middle.x - circle.x, middle.y - circle.y) < 2 * radius) return 'crowded';
  }
  return 'spaced';
}

function benches(): { readonly name: string; readonly spots: readonly PlacedHotspot[] }[] {
  return [...workingObservations()].flatMap(([name, seen]) =>
    SHELF_TABS.map((shelf) => ({
      name: `${name}, ${shelf}`,
      spots: placeHotspots(seen, shelf).filter((each) => each.enabled && each.kind !== 'key'),
    })),
  );
}

/** Every bench to be judged. */
const BENCHES = benches();

/** Every scale at which the bench can stand on a stage: its views, and every step of plus from the whole of it. */
function scalesOf(width: number, height: number): readonly number[] {
  const camera = new ViewCamera();
  camera.resize(width, height);
  camera.go('whole');
  camera.frame(0, true);
  const steps = Array.from({ length: 12 }, (_, i) => {
    camera.step(1);
    camera.frame(i + 1, true);
    return camera.fit.scale;
  });
  return [...new Set([...VIEWS.map((view) => fitView(view, width, height).scale), ...steps])];
}

describe('targets of the bench', () => {
  it.each(STAGES)(
    'are large, apart, or asked about, at every view of a stage of %i by %i',
    (width, height) => {
      const wrong: string[] = [];
      for (const scale of scalesOf(width, height)) {
        for (const { name, spots } of BENCHES) {
          const asked = crowdedSpots(spots, scale);
          for (const spot of spots) {
            const verdict = judge(spot, spots, scale);
            const where = `${spot.id} is ${verdict} at ${scale.toFixed(2)}: ${name}`;
            if (asked.has(spot.id) !== (verdict === 'crowded')) wrong.push(where);
            if (verdict !== 'crowded') continue;
            // The choice holds the thing pressed and what it could be mistaken for.
            const offered = meantBy(spot.id, spots, scale).flat();
            if (!offered.includes(spot.id) || offered.length < 2 || offered.length > 9)
              wrong.push(`${where}, offered`);
          }
        }
      }
      expect(wrong).toEqual([]);
    },
  );

  it('need no asking in any close view, and not on the whole bench of a window of 1280 by 800', () => {
    const asked: string[] = [];
    const phoneMeter = STAGES.filter(([w]) => w < 600).map(([w, h]) => ({
      w,
      h,
      fit: fitView('meter', w, h),
    }));
    const close = STAGES.flatMap(([w, h]) =>
      VIEWS.slice(1).flatMap((view) => (view === 'meter' && w < 600 ? [] : [fitView(view, w, h).scale])),
    );
    // A phone's meter view has the meter's loose leads in it too. What it shows of plug and shelf at its edges is drawn larger in
    // their own views, and asked about here; the meter's own things need no asking.
    for (const { w, h, fit } of phoneMeter) {
      for (const { name, spots } of BENCHES) {
        const crowded = crowdedSpots(spots, fit.scale);
        const window = windowOf(fit, w, h);
        for (const spot of spots) {
          if (!crowded.has(spot.id) || !inside(spot, window) || spot.group !== 'meter') continue;
          asked.push(`${spot.id} in the meter view of ${w} by ${h}: ${name}`);
        }
      }
    }
    for (const scale of [...close, fitView('whole', 888, 612).scale]) {
      for (const { name, spots } of BENCHES) {
        for (const id of crowdedSpots(spots, scale)) asked.push(`${id} at ${scale.toFixed(3)}: ${name}`);
      }
    }
    expect(asked).toEqual([]);
  });

  it('are asked about on the whole bench of a telephone, which is a map more than a place to work', () => {
    const spots = placeHotspots(startObservation(), 'leads').filter((each) => each.enabled);
    const asked = crowdedSpots(spots, fitView('whole', 336, 396).scale);
    expect([...asked]).toEqual(expect.arrayContaining(['point:cavity-1-back', 'cavity-pin:2']));
  });

  it('would be found out by the audit if they came too close', () => {
    const pair = (gap: number, size: number) => [
      { id: 'a', x: 0, y: 0, w: size, h: size },
      { id: 'b', x: size + gap, y: 0, w: size, h: size },
    ];
    expect(pair(0, 24).map((spot, i, all) => judge(spot, [all[1 - i] as Box], 1))).toEqual([
      'large',
      'large',
    ]);
    expect(pair(10, 14).map((spot, i, all) => judge(spot, [all[1 - i] as Box], 1))).toEqual([
      'spaced',
      'spaced',
    ]);
    expect(pair(9, 14).map((spot, i, all) => judge(spot, [all[1 - i] as Box], 1))).toEqual([
      'crowded',
      'crowded',
    ]);
    expect([...crowdedSpots(pair(10, 14), 1)]).toEqual([]);
    expect([...crowdedSpots(pair(9, 14), 1)]).toEqual(['a', 'b']);
  });

  it('stand in the choice as they stand on the bench', () => {
    const spots = [
      { id: 'left', x: 0, y: 0, w: 10, h: 10 },
      { id: 'right', x: 14, y: 1, w: 10, h: 10 },
      { id: 'below', x: 4, y: 14, w: 10, h: 10 },
      { id: 'far', x: 200, y: 0, w: 10, h: 10 },
    ];
    expect(meantBy('right', spots, 1)).toEqual([['left', 'right'], ['below']]);
  });

  it('come into view when the focus comes to them, however small the stage and wherever one stands', () => {
    const missing: string[] = [];
    for (const [width, height] of STAGES) {
      for (const view of VIEWS) {
        for (const { spots } of BENCHES.slice(0, 2)) {
          for (const spot of spots) {
            const camera = new ViewCamera();
            camera.resize(width, height);
            camera.go(view);
            camera.frame(0, true);
            camera.show(spot);
            camera.frame(1, true);
            const { x, y, w, h } = camera.window;
            // What is larger than the stage shows its upper left part.
            const seen =
              spot.x >= x &&
              spot.y >= y &&
              spot.x + Math.min(spot.w, w / 2) <= x + w &&
              spot.y + Math.min(spot.h, h / 2) <= y + h;
            if (!seen) missing.push(`${spot.id} from ${view} on ${width} by ${height}`);
          }
        }
      }
    }
    expect(missing).toEqual([]);
  });
});
