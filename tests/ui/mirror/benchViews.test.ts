import { describe, expect, it } from 'vitest';
import { BenchViews } from '../../../src/ui/mirror/BenchViews.ts';

/** A stage of a window of 1280 by 800, without a browser. */
function stage(): HTMLElement {
  const box = { left: 14, top: 70 };
  return { clientWidth: 888, clientHeight: 612, getBoundingClientRect: () => box } as HTMLElement;
}

function viewsAt(name: 'whole' | 'plug'): BenchViews {
  const views = new BenchViews();
  views.attach(stage());
  views.go(name);
  views.frame(0, true, null);
  return views;
}

describe('the view as the stage and the mirror see it', () => {
  it('tells the same place in pixels of the page, of the stage, and on the bench', () => {
    const views = viewsAt('plug');
    const bench = views.toBench(14 + 300, 70 + 200);
    const back = views.toHostPixels(bench);
    expect(back.x).toBeCloseTo(300, 6);
    expect(back.y).toBeCloseTo(200, 6);
  });

  it('moves on under a thing that is held at its edge, after a moment, and stops with the bench', () => {
    const views = viewsAt('plug');
    const edge = { x: 4, y: 300 };
    const before = views.fit.peek().offsetX;
    views.frame(1, false, edge);
    views.frame(1.1, false, edge);
    expect(views.fit.peek().offsetX).toBe(before);
    for (let frame = 0; frame < 200; frame += 1) views.frame(1.4 + frame / 60, false, edge);
    expect(views.fit.peek().offsetX).toBeCloseTo(0, 6);
    expect(views.ways.peek().left).toBe(false);
  });

  it('stays where it is while the thing is held anywhere else, or nothing is', () => {
    const views = viewsAt('plug');
    const before = views.fit.peek();
    for (let frame = 0; frame < 60; frame += 1) views.frame(1 + frame / 60, false, { x: 400, y: 300 });
    for (let frame = 0; frame < 60; frame += 1) views.frame(3 + frame / 60, false, null);
    expect(views.fit.peek()).toEqual(before);
  });

  it('says which ways there is bench, and has none to say on the whole of it', () => {
    expect(viewsAt('whole').ways.peek()).toEqual({ left: false, up: false, down: false, right: false });
    expect(viewsAt('plug').ways.peek()).toMatchObject({ left: true, down: true });
  });
});
