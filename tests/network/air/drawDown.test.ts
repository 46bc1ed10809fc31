import { expect, test } from 'vitest';
import { drawDown } from './drawnDownTruck.ts';
import { plainDrawDown } from './plainDrawDown.ts';

// Expected values: a separate integration of the nominal rig, made before this program.

test('draw-down and hold of a 40 L system with leaks agree with a separate integration within 5 %', () => {
  const table = [
    { leakM: 0, tripS: 25.5, holdS: 222 },
    { leakM: 0.25e-3, tripS: 26.1, holdS: 82 },
    { leakM: 0.508e-3, tripS: 29.6, holdS: 29 },
    { leakM: 0.6e-3, tripS: 31.6, holdS: 21.5 },
    { leakM: 0.8e-3, tripS: 39.6, holdS: 12.5 },
    { leakM: 1.016e-3, tripS: 67.6, holdS: 7.9 },
  ];
  for (const { leakM, tripS, holdS } of table) {
    const result = drawDown({ leakM, giveUpS: 120 });
    expect(Math.abs((result.tripS as number) / tripS - 1), `trip with ${leakM} m`).toBeLessThan(0.05);
    expect(Math.abs((result.holdS as number) / holdS - 1), `hold with ${leakM} m`).toBeLessThan(0.05);
  }
}, 30_000);

test('with a 1.5 mm leak the switch never trips and the vacuum ends at about 0.8 kPa', () => {
  const result = drawDown({ leakM: 1.5e-3, giveUpS: 120 });
  expect(result.tripS).toBeNull();
  expect(Math.abs(result.endPa - 800)).toBeLessThan(50);
}, 30_000);

test('hold goes with the vapour volume: 0.508 mm holds 47, 29 and 10 s at 15, 50 and 85 % fuel', () => {
  for (const [fuel, holdS] of [
    [0.15, 47],
    [0.5, 29],
    [0.85, 10],
  ] as const) {
    const vapourM3 = (1 - fuel) * 75e-3 + 2.6e-3;
    const result = drawDown({ leakM: 0.508e-3, giveUpS: 120, vapourM3 });
    expect(Math.abs((result.holdS as number) / holdS - 1), `${fuel}`).toBeLessThan(0.05);
  }
}, 30_000);

/**
 * The first integration had 38 and 28 s for a differential of 80 and 50 Pa, with the trip at 25.5 s; this network and the
 * one below, which shares nothing with it, have about 30 and 20 s, with the trip one stroke later. All three agree on what
 * a stroke draws (48 Pa) and on how fast the seep lets the vacuum go (3.1 Pa/s). What the hold hangs on is how far the last
 * whole stroke happens to carry past the trip point: anything from nothing to 48 Pa, worth up to 15 s, and a difference of
 * one per cent in all that was drawn (25 Pa of 2500) moves it by 8 s. In the first integration the stroke that tripped ended
 * some 35 Pa past the point, here it ends 9 Pa past it. On a truck it is chance, so the code is judged by a range.
 */
test('a collapsed differential looks like a very small leak (12 to 45 s) on a sound system', () => {
  const plain = plainDrawDown([2450, 2420], 50e-6);
  const narrow = drawDown({ leakM: 0, resetPa: 2450, giveUpS: 120 });
  const wide = drawDown({ leakM: 0, resetPa: 2420, giveUpS: 120 });
  expect(wide.tripS).toBe(plain.tripS);
  expect(plain.tripPa - plain.beforePa).toBeGreaterThan(45);
  expect(plain.tripPa - plain.beforePa).toBeLessThan(51);
  // 1 s of hold is 3 Pa of the 2500: 0.12 % of what was drawn.
  expect(Math.abs((narrow.holdS as number) - (plain.holdS[0] as number))).toBeLessThan(1);
  expect(Math.abs((wide.holdS as number) - (plain.holdS[1] as number))).toBeLessThan(1);
  expect((wide.holdS as number) - (narrow.holdS as number)).toBeGreaterThan(9); // 30 Pa of seep
  for (const { holdS } of [narrow, wide]) {
    expect(holdS).toBeGreaterThan(12);
    expect(holdS).toBeLessThan(45);
  }
}, 60_000);
