import { describe, expect, it } from 'vitest';
import { BARBS, GAUGE_CENTRE } from '../../../src/ui/interaction/layout/benchPlan.ts';
import { boxAround, inside, SHEET } from '../../../src/ui/interaction/layout/geometry.ts';
import { LCD, METER } from '../../../src/ui/interaction/layout/meterPlan.ts';
import { CAVITY_XS, CAVITY_Y, PLUG_INSET } from '../../../src/ui/interaction/layout/plugPlan.ts';
import { ViewCamera } from '../../../src/ui/interaction/ViewCamera.ts';
import { betweenFits, windowOf } from '../../../src/ui/interaction/viewFit.ts';
import {
  firstView,
  fitView,
  VIEWS,
  type ViewName,
  viewAt,
  viewOfKey,
} from '../../../src/ui/interaction/views.ts';

/** The stage of a window of 1280 by 800. */
const [WIDTH, HEIGHT] = [888, 612];

function shown(view: ViewName, width = WIDTH, height = HEIGHT) {
  return windowOf(fitView(view, width, height), width, height);
}

/** A camera that has arrived. */
function cameraAt(view: ViewName): ViewCamera {
  const camera = new ViewCamera();
  camera.resize(WIDTH, HEIGHT);
  camera.go(view);
  camera.frame(0, true);
  return camera;
}

describe('where one begins', () => {
  it('is chosen anew when the screen is turned, until somebody goes somewhere', () => {
    const camera = new ViewCamera();
    camera.resize(546, 282);
    expect(camera.view).toBe(firstView(546, 282));
    camera.resize(340, 404);
    expect(camera.view).toBe('meter');
    camera.resize(WIDTH, HEIGHT);
    expect(camera.view).toBe('whole');
    camera.go('plug');
    camera.frame(0, true);
    camera.resize(340, 404);
    expect(camera.view).toBe('plug');
  });
});

describe('views of the bench', () => {
  it('show together what is needed together', () => {
    expect(inside(SHEET, shown('whole'))).toBe(true);
    expect(inside(PLUG_INSET, shown('plug'))).toBe(true);
    expect(inside(LCD, shown('plug'))).toBe(true);
    expect(inside(METER, shown('meter'))).toBe(true);
    for (const { tip, clamp } of Object.values(BARBS)) {
      expect(inside(boxAround(tip, 20), shown('ports'))).toBe(true);
      expect(inside(boxAround(clamp, 40), shown('ports'))).toBe(true);
    }
    expect(inside(boxAround(GAUGE_CENTRE, 160), shown('pump'))).toBe(true);
  });

  it('are closer than the whole bench, and lose no room beside the sheet', () => {
    for (const [width, height] of [
      [WIDTH, HEIGHT],
      [336, 396],
      [744, 540],
      [2054, 1210],
    ] as const) {
      for (const view of VIEWS.slice(1)) {
        expect(fitView(view, width, height).scale, view).toBeGreaterThan(
          fitView('whole', width, height).scale,
        );
        const { x, y, w, h } = shown(view, width, height);
        const wide = w >= SHEET.w ? null : inside({ x, y: 0, w, h: 1 }, SHEET);
        const high = h >= SHEET.h ? null : inside({ x: 0, y, w: 1, h }, SHEET);
        expect([wide, high], view).not.toContain(false);
      }
    }
  });

  it('begin with the whole bench where there is room to work on it, else at the meter', () => {
    expect(firstView(WIDTH, HEIGHT)).toBe('whole');
    expect(firstView(744, 540)).toBe('whole');
    expect(firstView(336, 396)).toBe('meter');
  });

  it('are found by number and by place', () => {
    const key = (name: string) => ({ key: name, ctrlKey: false, altKey: false, metaKey: false });
    expect(viewOfKey(key('0'))).toBe('whole');
    expect(viewOfKey(key('3'))).toBe('plug');
    expect(viewOfKey(key('9'))).toBeNull();
    expect(viewOfKey({ ...key('0'), ctrlKey: true })).toBeNull();
    expect(viewAt({ x: CAVITY_XS[1], y: CAVITY_Y })).toBe('plug');
    expect(viewAt(BARBS['canister-port'].tip)).toBe('ports');
    expect(viewAt(GAUGE_CENTRE)).toBe('pump');
  });
});

describe('a move from one view to another', () => {
  it('takes under half a second, never goes back, and ends exactly where the view lies', () => {
    const camera = cameraAt('whole');
    camera.go('plug');
    expect(camera.goal).toEqual(fitView('plug', WIDTH, HEIGHT));
    let before = camera.fit.scale;
    for (let frame = 0; camera.moving; frame += 1) {
      camera.frame(10 + frame / 60, false);
      expect(camera.fit.scale).toBeGreaterThanOrEqual(before);
      before = camera.fit.scale;
      expect(frame).toBeLessThan(30);
    }
    expect(camera.fit).toEqual(fitView('plug', WIDTH, HEIGHT));
  });

  it('is a jump where less motion is asked for', () => {
    const camera = cameraAt('whole');
    camera.go('meter');
    camera.frame(1, true);
    expect(camera.fit).toEqual(fitView('meter', WIDTH, HEIGHT));
  });

  it('goes straight in: one place of the bench stands still', () => {
    const [from, to] = [fitView('whole', WIDTH, HEIGHT), fitView('plug', WIDTH, HEIGHT)];
    // Where x·s + o is the same at both ends it is the same all the way.
    const still = (to.offsetX - from.offsetX) / (from.scale - to.scale);
    for (const share of [0.2, 0.5, 0.9]) {
      const { scale, offsetX } = betweenFits(from, to, share);
      expect(still * scale + offsetX).toBeCloseTo(still * from.scale + from.offsetX, 6);
    }
  });

  it('may turn round on its way without a jump', () => {
    const camera = cameraAt('whole');
    camera.go('plug');
    camera.frame(1, false);
    camera.frame(1.15, false);
    const there = camera.fit;
    camera.go('whole');
    camera.frame(1.16, false);
    expect(camera.fit.scale).toBeCloseTo(there.scale, 3);
  });
});

describe('a place of one’s own', () => {
  it('is come to by plus and left by minus, and the whole bench is the furthest one gets', () => {
    const camera = cameraAt('whole');
    camera.step(1);
    camera.frame(1, true);
    expect(camera.view).toBeNull();
    for (const press of [1, 2, 3]) {
      camera.step(-1);
      camera.frame(1 + press, true);
    }
    expect(camera.view).toBe('whole');
    expect(camera.fit).toEqual(fitView('whole', WIDTH, HEIGHT));
  });

  it('stays under the fingers, and on the sheet', () => {
    const camera = cameraAt('whole');
    const at = { x: 300, y: 200 };
    const under = () => (at.x - camera.fit.offsetX) / camera.fit.scale;
    const before = under();
    camera.zoomAt(2, at);
    expect(under()).toBeCloseTo(before, 6);
    expect(camera.panBy(5000, 5000)).toBe(true);
    expect(camera.panBy(10, 10)).toBe(false);
    expect(camera.fit.offsetX).toBeCloseTo(0, 9);
  });

  it('is moved on by strides as far as there is bench', () => {
    const camera = cameraAt('ports');
    expect(camera.canStride(1, 0)).toBe(true);
    for (let press = 0; press < 8; press += 1) {
      camera.stride(1, 0);
      camera.frame(press + 1, true);
    }
    expect(camera.canStride(1, 0)).toBe(false);
    expect(camera.window.x + camera.window.w).toBeCloseTo(SHEET.w, 6);
  });

  it('keeps its middle when the stage changes size, and a named view is laid anew', () => {
    const camera = cameraAt('ports');
    camera.step(1);
    camera.frame(1, true);
    const middle = () => camera.window.x + camera.window.w / 2;
    const before = middle();
    camera.resize(WIDTH - 100, HEIGHT - 60);
    expect(middle()).toBeCloseTo(before, 6);
    camera.go('plug');
    camera.frame(3, true);
    camera.resize(WIDTH, HEIGHT);
    expect(camera.fit).toEqual(fitView('plug', WIDTH, HEIGHT));
  });
});
