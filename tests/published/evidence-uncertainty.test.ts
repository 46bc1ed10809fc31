import { describe, expect, it } from 'vitest';
import { likelihood, rectangularSpread, studentDensity } from '../../src/training/evidence/likelihood.ts';
import type { Shown } from '../../src/training/evidence/Shown.ts';

// Source: JCGM 100:2008 (GUM), 4.3.7, both of its examples; from memory.
describe('a rectangular error of half-width a has the standard uncertainty a/√3', () => {
  it('of the expansion of copper: 16.52e-6 per degree, off by 0.40e-6 at most', () => {
    expect(rectangularSpread(0.4e-6) ** 2 / 1e-15).toBeCloseTo(53.3, 1);
  });

  it('of a voltmeter at 0.928 571 V: 14 parts in a million of the reading and 2 of the 1 V range', () => {
    const half = 14e-6 * 0.928571 + 2e-6 * 1;
    expect(half / 1e-6).toBeCloseTo(15, 1);
    expect(rectangularSpread(half) / 1e-6).toBeCloseTo(8.7, 1);
  });

  it('is the width by which a meter reading tells a suspect off', () => {
    // The same half-width, and a suspect that foretells no volts in every draw: no tolerance stands beside the meter's own.
    const half = 15e-6;
    const value = 0;
    const draws = Array.from({ length: 8 }, () => value);
    const at = (volts: number): number => {
      const shown: Shown = {
        kind: 'number',
        channel: 'meter',
        setUp: 'volts',
        tick: 0,
        value: volts,
        half,
      };
      return likelihood(shown, { draws, beside: [] });
    };
    // One standard uncertainty off, by the same density; what "anything" adds is the same in both and falls out of the difference.
    const far = at(value + 1e4 * half);
    const ratio = (at(value + half / Math.sqrt(3)) - far) / (at(value) - far);
    expect(ratio).toBeCloseTo(studentDensity(1) / studentDensity(0), 3);
  });
});

// Source: the usual table of Student's t for 7 degrees of freedom (GUM, table G.2): 1.89 for 90 %, 2.36 for 95 %, 3.50 for 99 %.
describe("Student's density with seven degrees of freedom", () => {
  const within = (t: number): number => {
    const steps = 20_000;
    const h = (2 * t) / steps;
    let sum = studentDensity(-t) + studentDensity(t);
    for (let i = 1; i < steps; i++) sum += (i % 2 === 1 ? 4 : 2) * studentDensity(-t + i * h);
    return (sum * h) / 3;
  };

  it.each([
    [1.895, 0.9],
    [2.365, 0.95],
    [3.499, 0.99],
  ])('holds within ±%f the share %f', (t, share) => {
    expect(within(t)).toBeCloseTo(share, 3);
  });

  it('sums to one', () => {
    expect(within(200)).toBeCloseTo(1, 5);
  });
});
