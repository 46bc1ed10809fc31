import { describe, expect, it } from 'vitest';
import { quantile, scriptPerFrame, type TraceEvent } from './screen/scriptTime.ts';

const event = (name: string, ts: number, dur: number, more: Partial<TraceEvent> = {}): TraceEvent => ({
  name,
  ph: 'X',
  pid: 1,
  tid: 1,
  ts: ts * 1000,
  dur: dur * 1000,
  ...more,
});
const frame = (ts: number, dur: number, more: Partial<TraceEvent> = {}) =>
  event('FireAnimationFrame', ts, dur, more);

describe('script in a frame, from a trace', () => {
  it('is what runs from one animation callback to the next', () => {
    const events = [
      frame(0, 2),
      event('EventDispatch', 5, 1),
      frame(16, 3),
      event('FunctionCall', 25, 0.5),
      frame(32, 9),
    ];
    expect(scriptPerFrame(events)).toEqual([3, 3.5]);
  });

  it('does not count twice what runs within something counted', () => {
    const events = [
      frame(0, 4),
      event('FunctionCall', 1, 3),
      event('RunMicrotasks', 2, 1),
      event('MinorGC', 2.2, 0.1),
      frame(16, 1),
    ];
    expect(scriptPerFrame(events)).toEqual([4]);
  });

  it('takes processor time where the browser tells it', () => {
    expect(scriptPerFrame([frame(0, 40, { tdur: 4000 }), frame(50, 1)])).toEqual([4]);
  });

  it('counts neither style and paint nor the worker', () => {
    const events = [
      frame(0, 1),
      event('Layout', 2, 5),
      event('Paint', 8, 5),
      event('FunctionCall', 3, 9, { tid: 2 }),
      frame(16, 1),
    ];
    expect(scriptPerFrame(events)).toEqual([1]);
  });

  it('has the quantiles of its frames', () => {
    const values = Array.from({ length: 100 }, (_, i) => i + 1);
    expect(quantile(values, 0.5)).toBe(51);
    expect(quantile(values, 0.99)).toBe(100);
    expect(quantile([3, 1, 2], 0.5)).toBe(2);
  });
});
