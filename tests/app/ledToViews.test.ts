import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { nextTouch } from '../../src/app/nextTouch.ts';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import { BenchHand } from '../../src/ui/interaction/BenchHand.ts';
import { type Box, centreOf, inside } from '../../src/ui/interaction/layout/geometry.ts';
import { placeHotspots } from '../../src/ui/interaction/layout/hotspots.ts';
import { METER_ENDS_AT_REST } from '../../src/ui/interaction/layout/shelfPlan.ts';
import { ViewCamera } from '../../src/ui/interaction/ViewCamera.ts';
import { firstView, isInSight, VIEWS } from '../../src/ui/interaction/views.ts';

function shipped(id: string): Scenario {
  const text = readFileSync(new URL(`../../scenarios/${id}.yaml`, import.meta.url), 'utf8');
  const loaded = loadScenario(text, `${id}.yaml`);
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}

/** Stages of phones of these widths, upright: what is left beside the page's edges, and over keys and dock. */
const STAGES = [
  { phone: 360, width: 338, height: 334 },
  { phone: 360, width: 338, height: 270 },
  { phone: 390, width: 368, height: 420 },
  { phone: 412, width: 390, height: 480 },
] as const;

interface Asked extends Box {
  readonly step: string;
  readonly id: string;
}

/** Every place that the ring of a step goes to while a hand only follows it. */
function askedThrough(scenario: Scenario): readonly Asked[] {
  const sitting = Sitting.begin(scenario);
  sitting.apply({ kind: 'accept-job' });
  const hand = new BenchHand({
    observe: () => sitting.observe(),
    act: (action) => sitting.apply(action).ok,
    news: () => {},
    changed: () => {},
  });
  const asked: Asked[] = [];
  for (let n = 0; n < 120 && sitting.view().step < scenario.steps.length; n++) {
    const todo = sitting.stillToDo();
    const seen = sitting.observe();
    const touch = todo === null ? null : nextTouch(todo, seen, hand);
    const step = scenario.steps[sitting.view().step]?.id ?? '';
    if (touch?.kind === 'bench') {
      const spot = placeHotspots(seen, hand.shelf).find(({ id }) => id === touch.at);
      if (spot === undefined) throw new Error(`${step}: ${touch.at} is nowhere`);
      asked.push({ step, id: touch.at, x: spot.x, y: spot.y, w: spot.w, h: spot.h });
    }
    if (touch === null && hand.holding !== null) hand.place({ kind: 'mat' });
    else if (touch?.kind === 'log') sitting.apply({ kind: 'log' });
    else if (touch?.kind === 'bench' && touch.at === 'pump-handle')
      sitting.apply({ kind: 'stroke', depth: 1 });
    else if (touch?.kind === 'bench') hand.press(touch.at, 'pointer');
    sitting.advanceTo(sitting.tick + secondsToTicks(1));
  }
  return asked;
}

describe.each(STAGES)('on the stage of a phone of $phone px, $width by $height', ({ width, height }) => {
  const at = (): ViewCamera => {
    const camera = new ViewCamera();
    camera.resize(width, height);
    return camera;
  };

  test('the view that the ring leads to shows every place of the first minutes whole', () => {
    const asked = askedThrough(shipped('first-minutes'));
    expect(new Set(asked.map(({ step }) => step)).size).toBe(13);
    const cut = asked.filter((place) => {
      const camera = at();
      camera.go(camera.viewFor(place), place);
      return !inside(place, camera.window);
    });
    expect(cut.map(({ step, id }) => `${step}: ${id}`)).toEqual([]);
  });

  test('keeps that place when the stage changes its size, and lets it go with the next view', () => {
    const [place] = askedThrough(shipped('first-minutes')).filter(({ id }) => id === 'end:jumper-far');
    if (place === undefined) throw new Error('asked for');
    const camera = at();
    const view = camera.viewFor(place);
    camera.go(view, place);
    camera.resize(width, height - 30);
    expect(inside(place, camera.window)).toBe(true);
    camera.go(view);
    const plain = at();
    plain.go(view);
    plain.resize(width, height - 30);
    camera.frame(0, true);
    expect(camera.goal).toEqual(plain.goal);
  });

  test('one can grasp both loose ends of the meter where one begins', () => {
    expect(firstView(width, height)).toBe('meter');
    const camera = at();
    const spots = placeHotspots(Sitting.begin(shipped('first-day-on-the-bench')).observe(), 'leads');
    for (const end of ['meter-red', 'meter-black'] as const) {
      const spot = spots.find(({ id }) => id === `end:${end}`);
      if (spot === undefined) throw new Error(end);
      expect(centreOf(spot)).toEqual(METER_ENDS_AT_REST[end].grip);
      expect(isInSight(spot, camera.window), end).toBe(true);
    }
    expect(VIEWS).toContain(camera.view);
  });
});
