import { expect, test } from 'vitest';
import { drawDown } from './drawnDownTruck.ts';

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

test('a collapsed differential looks like a very small leak (12 to 45 s) on a sound system', () => {
  // The separate integration has 38 and 28 s; each hangs on how far the last whole stroke went past the trip point.
  const wide = drawDown({ leakM: 0, resetPa: 2420, giveUpS: 120 }).holdS as number;
  const narrow = drawDown({ leakM: 0, resetPa: 2450, giveUpS: 120 }).holdS as number;
  for (const holdS of [wide, narrow]) {
    expect(holdS).toBeGreaterThan(12);
    expect(holdS).toBeLessThan(45);
  }
  expect(Math.abs(wide - narrow - 10)).toBeLessThan(1); // 30 Pa of seep
}, 30_000);
