import { expect, it } from 'vitest';
import { droppedNear } from '../../../src/ui/interaction/dropTarget.ts';
import { centreOf, type Vec } from '../../../src/ui/interaction/layout/geometry.ts';
import { placeHotspots } from '../../../src/ui/interaction/layout/hotspots.ts';
import { startObservation } from '../layout/benchObservations.ts';

const start = startObservation();
const RED = { kind: 'lead', end: 'meter-red' } as const;

function middleOf(id: string): Vec {
  const spot = placeHotspots(start, 'leads').find((each) => each.id === id);
  if (spot === undefined) throw new Error(`no ${id}`);
  return centreOf(spot);
}

function near(at: Vec, reach: number): readonly string[] {
  return droppedNear(RED, at, start, 'leads', reach).map(({ spot }) => spot.id);
}

it('names the places within reach of where a thing is let go, the nearest first, and none it cannot go to', () => {
  const minus = middleOf('point:battery-negative');
  expect(near(minus, 16)).toEqual(['point:battery-negative']);
  // A fingertip on the whole bench of a phone covers both posts.
  expect(near({ x: minus.x + 20, y: minus.y }, 60)).toEqual([
    'point:battery-negative',
    'point:battery-positive',
  ]);
  expect(near({ x: 300, y: 520 }, 16)).toEqual([]);
});

it('leaves out a loose tip that is only close by: it is in the way, and seldom meant', () => {
  const tip = middleOf('point:meter-black-tip');
  expect(near(tip, 30)).toContain('point:meter-black-tip');
  expect(near({ x: tip.x, y: tip.y + 30 }, 30)).not.toContain('point:meter-black-tip');
});
