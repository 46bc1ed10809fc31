import { describe, expect, test } from 'vitest';
import { AirBench } from './AirBench.ts';

const SEEDS = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h', 'i', 'j'];

describe('the hand pump on the unit', () => {
  test('full strokes on the capped unit: 5.2, 10.7, 15.0, 18.3, 20.9 inHg within 5 %, over ten sittings’ tolerances', () => {
    // Source: a separate integration of the nominal rig, made before this program.
    const expected = [5.2, 10.7, 15.0, 18.3, 20.9];
    const sums = expected.map(() => 0);
    for (const seed of SEEDS) {
      const bench = new AirBench([], { seed }).pumpOn();
      expected.forEach((_, i) => {
        sums[i] = (sums[i] as number) + bench.stroke().inHg / SEEDS.length;
      });
    }
    sums.forEach((mean, i) => {
      expect(Math.abs(mean / (expected[i] as number) - 1), `stroke ${i + 1}: ${mean}`).toBeLessThan(0.05);
    });
  });

  test('with the air port open the needle never leaves zero', () => {
    const bench = new AirBench().pumpOn('open');
    for (let tenths = 0; tenths < 30; tenths++) {
      if (tenths % 4 === 0) bench.do({ kind: 'stroke', depth: 1 });
      expect(bench.wait(0.1).inHg).toBeLessThan(0.1);
    }
  });

  test('a good unit trips at about a sixth of the first stroke', () => {
    const shares = SEEDS.map((seed) => {
      const bench = new AirBench([], { seed }).pumpOn().do({ kind: 'set-key', position: 'on' });
      bench.wait(1);
      // Drawn by degrees, so that the damped capsule keeps up.
      for (let n = 1; n <= 64 && bench.world.inside().vacuumSwitch === 'open'; n++) {
        bench.do({ kind: 'pump-handle', position: n / 64 }).wait(0.4);
      }
      return bench.world.observe().handPump.handle;
    });
    const mean = shares.reduce((sum, share) => sum + share, 0) / SEEDS.length;
    expect(Math.abs(mean - 1 / 6)).toBeLessThan(0.04);
  });

  test('the unit’s limit is reached only by effort: six full strokes, and the capsule tears', () => {
    const bench = new AirBench().pumpOn();
    for (let n = 0; n < 5; n++) bench.stroke();
    expect(bench.inHg).toBeGreaterThan(19);
    expect(bench.loss(20)).toBeLessThan(0.2);
    for (let n = 0; n < 4; n++) bench.stroke();
    expect(bench.loss(5)).toBeGreaterThan(5);
  });

  test('a mountain has less to give: at 3000 m five strokes draw about 0.69 of what they draw at the sea', () => {
    // Barometer at 3000 m over that at 0 m: US Standard Atmosphere 1976, 70 109 / 101 325 Pa.
    const drawn = (altitudeM: number): number => {
      const bench = new AirBench([], { altitudeM }).pumpOn();
      for (let n = 0; n < 5; n++) bench.stroke();
      return bench.inHg;
    };
    const ratio = drawn(3000) / drawn(0);
    expect(ratio).toBeGreaterThan(0.66);
    expect(ratio).toBeLessThan(0.72);
  });

  test('a sticking gauge stays until its pressure has left it, then jumps', () => {
    const sound = new AirBench().pumpOn();
    const sticking = new AirBench([{ fault: 'gauge-sticking', severity: 0.5 }]).pumpOn();
    const stood = new Set<number>();
    for (let n = 0; n < 12; n++) {
      sound.do({ kind: 'stroke', depth: 0.1 }).wait(1);
      sticking.do({ kind: 'stroke', depth: 0.1 }).wait(1);
      stood.add(sticking.inHg);
      expect(Math.abs(sticking.inHg - sound.inHg)).toBeLessThan(1.3); // 4 kPa of friction
    }
    expect(stood.size).toBeLessThan(8);
    expect(stood.size).toBeGreaterThan(2);
  });
});
