import { describe, expect, it } from 'vitest';
import { FrameLoop, type FrameSource } from '../../src/app/FrameLoop.ts';
import { parseRoute, routeHash } from '../../src/app/Route.ts';
import { TICKS_PER_SECOND } from '../../src/base/ticks.ts';

/** Frames that a test calls by hand. */
function hand() {
  let next: ((nowMs: number) => void) | null = null;
  let hidden = false;
  const source: FrameSource = {
    request: (callback) => {
      next = callback;
      return 1;
    },
    cancel: () => {
      next = null;
    },
    hidden: () => hidden,
  };
  return {
    source,
    frame: (nowMs: number) => next?.(nowMs),
    hide: (to: boolean) => {
      hidden = to;
    },
  };
}

function run(times: readonly number[], pauseBefore?: number): number {
  const frames = hand();
  let ticks = 0;
  const loop = new FrameLoop(frames.source, (passed) => {
    ticks += passed;
  });
  loop.start();
  for (const [index, time] of times.entries()) {
    if (index === pauseBefore) loop.pause();
    frames.frame(time);
  }
  return ticks;
}

describe('real time becomes whole ticks', () => {
  it('and loses none over many uneven frames', () => {
    const times = Array.from({ length: 601 }, (_, i) => i * 16.667 + (i % 3) * 0.31);
    const seconds = ((times.at(-1) ?? 0) - (times[0] ?? 0)) / 1000;
    expect(Math.abs(run(times) - seconds * TICKS_PER_SECOND)).toBeLessThanOrEqual(1);
  });

  it('but never more than a quarter of a second a frame', () => {
    expect(run([0, 5000])).toBe(TICKS_PER_SECOND / 4);
  });

  it('and none for the time a pause took', () => {
    expect(run([0, 100, 9000, 9100], 2)).toBe(TICKS_PER_SECOND / 5);
  });

  it('nor while the page is hidden', () => {
    const frames = hand();
    let ticks = 0;
    new FrameLoop(frames.source, (passed) => {
      ticks += passed;
    }).start();
    frames.frame(0);
    frames.hide(true);
    frames.frame(100);
    frames.hide(false);
    frames.frame(150);
    expect(ticks).toBe(TICKS_PER_SECOND / 20);
  });
});

describe('the address', () => {
  it('carries the scenario and nothing else', () => {
    expect(parseRoute('#/job/first-day')).toEqual({ screen: 'job', scenario: 'first-day' });
    expect(parseRoute('#/job/first-day@17')).toEqual({ screen: 'unknown' });
    const again = { screen: 'debrief', scenario: 'first-day', kept: 'first-day@17' } as const;
    expect(parseRoute(routeHash(again))).toEqual(again);
    for (const nowhere of ['#/job/../x', '#/blah/blah', '#/job', '#/back-room/A/b', '#bench'])
      expect(parseRoute(nowhere), nowhere).toEqual({ screen: 'unknown' });
    for (const board of ['', '#', '#/', routeHash({ screen: 'unknown' })])
      expect(parseRoute(board), board).toEqual({ screen: 'board' });
    expect(routeHash({ screen: 'job', scenario: 'a-1' })).toBe('#/job/a-1');
  });
});
