import { describe, expect, test } from 'vitest';
import { AirBench } from './AirBench.ts';

/** Draws the jar down in small part strokes until the switch trips, then lets it up by the bleed until it resets. */
function switchPoints(bench: AirBench): { readonly trip: number; readonly reset: number } {
  bench.jarOnCappedUnit().do({ kind: 'set-key', position: 'on' }).wait(2);
  // Two coarse strokes, then as fine as a careful hand goes.
  for (let n = 0; n < 200 && !bench.senseClosed; n++) {
    bench.do({ kind: 'stroke', depth: bench.inH2O < 8 ? 0.2 : 1 / 32 }).wait(2.5);
  }
  const trip = bench.inH2O;
  bench.do({ kind: 'set-bleed', openness: 0.12 });
  for (let n = 0; n < 600 && bench.senseClosed; n++) bench.wait(0.5);
  return { trip, reset: bench.inH2O };
}

describe('the switch’s own points on the water manometer, with jar and needle bleed', () => {
  test('a good unit trips at 10 ± 0.8 and resets at 7.6 ± 0.8 inH2O, whatever the sitting', () => {
    for (const seed of ['one', 'two', 'three', 'four', 'five', 'six']) {
      const { trip, reset } = switchPoints(new AirBench([], { seed }));
      // Service data of the rig: 2.5 and 1.9 kPa. Beside their tolerance a stroke and a tenth of an inch are read too far.
      expect(Math.abs(trip - 10.1), `trip at ${trip}`).toBeLessThan(1);
      expect(Math.abs(reset - 7.6), `reset at ${reset}`).toBeLessThan(1);
    }
  });

  test('a collapsed differential shows here, and a trip point drifted high too', () => {
    const collapsed = switchPoints(new AirBench([{ fault: 'differential-collapsed', severity: 0.5 }]));
    expect(collapsed.trip - collapsed.reset).toBeLessThan(0.6);
    const good = switchPoints(new AirBench());
    expect(good.trip - good.reset).toBeGreaterThan(1.8);
    const high = new AirBench([{ fault: 'trip-high', severity: 0 }]).jarOnCappedUnit();
    high.do({ kind: 'set-key', position: 'on' }).wait(2);
    for (let n = 0; n < 3; n++) high.stroke();
    expect(high.wait(2).inH2O).toBeGreaterThan(13);
    expect(high.senseClosed).toBe(false);
  });

  test('jar, tees and bleed: a bare tee holds nothing, a shut bleed holds, an open one lets the vacuum go', () => {
    const open = new AirBench().jarOnCappedUnit().bare('manometer-hose');
    expect(open.stroke().wait(1).inHg).toBeLessThan(0.05);
    const bench = new AirBench().jarOnCappedUnit().stroke().stroke();
    const held = bench.wait(3).inH2O;
    expect(held).toBeGreaterThan(8);
    expect(Math.abs(bench.wait(30).inH2O - held)).toBeLessThan(0.15);
    bench.do({ kind: 'set-bleed', openness: 1 }).wait(10);
    expect(bench.inH2O).toBeLessThan(1);
  });

  test('beyond 30 inH2O the water is gone and its glass open, until it is filled again', () => {
    const bench = new AirBench().jarOnCappedUnit();
    for (let n = 0; n < 4; n++) bench.stroke();
    expect(bench.wait(2).inH2O).toBeGreaterThan(20);
    expect(bench.heard('water-lost')).toBe(0);
    for (let n = 0; n < 3; n++) bench.stroke();
    expect(bench.heard('water-lost')).toBe(1);
    expect(bench.world.observe().manometer.kPa).toBeNull();
    expect(bench.wait(5).inHg).toBeLessThan(0.2);
    bench.do({ kind: 'refill-manometer' });
    expect(bench.stroke().wait(2).inH2O).toBeGreaterThan(4);
    expect(bench.world.apply({ kind: 'refill-manometer' })).toEqual({ ok: false, error: 'water-is-there' });
  });

  test('too much pressure blows the water out', () => {
    const bench = new AirBench().put('plug-a', 'jar-hose-end');
    bench.put('smoke-hose', 'jar-tee-a').put('manometer-hose', 'jar-tee-b');
    bench.do({ kind: 'set-smoke', gas: 'inert', pa: 9000 }).wait(20);
    expect(bench.heard('water-lost')).toBe(1);
  });

  test('the column lags its pressure and then stands still', () => {
    const bench = new AirBench().jarOnCappedUnit().stroke();
    expect(bench.world.observe().manometer.steady).toBe(false);
    const early = bench.inH2O;
    const late = bench.wait(4).inH2O;
    expect(late).toBeGreaterThan(early + 0.3);
    expect(bench.world.observe().manometer.steady).toBe(true);
  });
});
