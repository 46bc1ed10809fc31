import { describe, expect, it } from 'vitest';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { capital, clock, fixed, inHgAndKPa, kPaToInHg, money, needleByEye } from '../../src/text/format.ts';

describe('numbers as the trade reads them', () => {
  // NIST SP 811 (2008), appendix B.8: 1 conventional inch of mercury is 3.386 389 kPa.
  it('shows kilopascals beside inches of mercury', () => {
    expect(kPaToInHg(3.386389)).toBeCloseTo(1, 9);
    expect(inHgAndKPa(50.795835)).toBe('15.0 inHg (50.8 kPa)');
  });

  it('reads a needle to half an inch, as an eye does', () => {
    expect(needleByEye(50.0)).toBe('15');
    expect(needleByEye(15.2)).toBe('4.5');
    expect(needleByEye(-0.1)).toBe('0');
  });

  it('never shows minus zero', () => expect(fixed(-0.0004, 2)).toBe('0.00'));

  it('counts the clock in whole seconds', () => {
    expect(clock(secondsToTicks(760.999))).toBe('00:12:40');
    expect(clock(secondsToTicks(3661))).toBe('01:01:01');
  });

  it('writes money and capitals', () => {
    expect(money(385)).toBe('$385');
    expect(capital('red lead')).toBe('Red lead');
  });
});
