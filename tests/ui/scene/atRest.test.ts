import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { Observation } from '../../../src/sim/world/Observation.ts';
import { SHEET } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeEnds, placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import type { Layers } from '../../../src/ui/scene/Layers.ts';
import type { SceneView } from '../../../src/ui/scene/SceneView.ts';
import { tokensOf } from '../../../src/ui/theme/tokens.ts';
import { workingObservations } from '../layout/benchObservations.ts';
import { QUIET } from './quietView.ts';

// WCAG 2.2, 2.2.2 and 2.3.3: nothing moves beside the work that nobody made move, for anybody.

let layersOf: () => Layers;
beforeAll(async () => {
  if (!('navigator' in globalThis))
    vi.stubGlobal('navigator', { userAgent: '', platform: '', maxTouchPoints: 0 });
  const { Layers } = await import('../../../src/ui/scene/Layers.ts');
  layersOf = () => new Layers(tokensOf('paper'), () => 1);
});

const SHELF = 'smoke' as const;

function viewOf(captions: boolean): SceneView {
  return { ...QUIET, shelf: SHELF, captions };
}

/** How often the drawing is another while only time passes. */
function changesInTime(observation: Observation, captions: boolean): number {
  const layers = layersOf();
  const placed = {
    observation,
    view: viewOf(captions),
    ends: placeEnds(observation, SHELF),
    hotspots: new Map(placeHotspots(observation, SHELF).map((each) => [each.id, each])),
    hand: null,
    window: SHEET,
  };
  layers.draw({ ...placed, seconds: 0 });
  const changed = [0.1, 0.35, 0.9, 1.7, 4.2].filter((seconds) => layers.draw({ ...placed, seconds }));
  layers.destroy();
  return changed.length;
}

describe('a bench at rest', () => {
  for (const [name, observation] of workingObservations()) {
    it(`does not move by itself: ${name}`, () => {
      expect(changesInTime(observation, false)).toBe(0);
    });
  }

  it('would be seen to move: the word of a stroke stands for some seconds and goes', () => {
    const [start] = workingObservations().values();
    if (start === undefined) throw new Error('no state of work');
    const drawn = { ...start, handPump: { ...start.handPump, handle: 1 } };
    expect(changesInTime(drawn, true)).toBeGreaterThan(0);
  });
});
