import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { inNoLanguage } from '../../../src/platform/node/build/chartsNumbers.ts';

const KEPT = new URL('../../../node_modules/uplot/dist/uPlot.esm.js', import.meta.url);

describe('the library of the charts', () => {
  it('no longer asks for the language of the device to make a format of numbers', () => {
    const code = readFileSync(KEPT, 'utf8');
    expect(code).toMatch(/NumberFormat\([^)]*language/);
    expect(inNoLanguage(code)).not.toMatch(/NumberFormat\([^)]*language/);
  });

  it('is looked at again when it comes to its numbers in another way', () => {
    expect(() => inNoLanguage('const numFormatter = new Intl.NumberFormat();')).toThrow(/chartsNumbers/);
  });
});
