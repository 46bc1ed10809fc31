import { expect, it } from 'vitest';
import { FULL_INHG, KPA_PER_INHG, needleShare } from '../../../src/ui/interaction/layout/dial.ts';

it('the needle goes along the scale in proportion, and a little past its ends', () => {
  expect(needleShare(0)).toBe(0);
  // 15 inHg is 50.8 kPa (conversion factor of NIST SP 811, conventional inch of mercury, 0 °C).
  expect(needleShare(50.8)).toBeCloseTo(0.5, 3);
  expect(needleShare(FULL_INHG * KPA_PER_INHG)).toBeCloseTo(1, 12);
  expect(needleShare(-5)).toBe(-0.03);
  expect(needleShare(130)).toBe(1.03);
});
