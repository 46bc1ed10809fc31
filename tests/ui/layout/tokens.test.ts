import { describe, expect, it } from 'vitest';
import { cssProperties, cssRule } from '../../../src/ui/theme/cssProperties.ts';
import { THEME_NAMES, type Tokens, tokensOf } from '../../../src/ui/theme/tokens.ts';

/** Relative luminance and contrast ratio as WCAG 2.2 defines them. */
function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const c = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

type Name = keyof Tokens;
/** WCAG 2.2, 1.4.3: text 4.5 to 1. Every pair that is printed somewhere on the bench or the panels. */
const TEXT: readonly (readonly [Name, Name])[] = [
  ['ink', 'paper'],
  ['ink', 'cream'],
  ['ink', 'mat'],
  ['ink', 'steel'],
  ['ink', 'steelLight'],
  ['ink', 'steelDark'],
  ['ink', 'clay'],
  ['ink', 'sage'],
  ['ink', 'plum'],
  ['ink', 'hose'],
  ['inkSoft', 'paper'],
  ['inkSoft', 'cream'],
  ['inkSoft', 'mat'],
  ['live', 'cream'],
  ['vacuum', 'cream'],
  ['act', 'paper'],
  ['act', 'cream'],
  ['onAct', 'act'],
  ['lcdInk', 'lcd'],
];
/** WCAG 2.2, 1.4.11: parts that carry meaning 3 to 1 on their ground. */
const PARTS: readonly (readonly [Name, Name])[] = [
  ['act', 'mat'],
  ['live', 'mat'],
  ['vacuum', 'mat'],
  ['casingOuter', 'casingInner'],
];

describe('themes', () => {
  for (const name of THEME_NAMES) {
    it(`${name}: text and meaning stand out`, () => {
      const tokens = tokensOf(name);
      for (const [front, ground] of TEXT) {
        expect(contrast(tokens[front], tokens[ground]), `${front} on ${ground}`).toBeGreaterThanOrEqual(4.5);
      }
      for (const [front, ground] of PARTS) {
        expect(contrast(tokens[front], tokens[ground]), `${front} on ${ground}`).toBeGreaterThanOrEqual(3);
      }
      // One of the two casings shows on any ground a lead lies on.
      for (const ground of ['mat', 'cream', 'steel', 'clay', 'sage', 'plum', 'hose'] as const) {
        const best = Math.max(
          ...(['casingOuter', 'casingInner'] as const).map((c) => contrast(tokens[c], tokens[ground])),
        );
        expect(best, ground).toBeGreaterThanOrEqual(3);
      }
    });
  }

  it('are given as CSS custom properties, one for every token', () => {
    const properties = cssProperties('paper');
    expect(properties['--kg-ink-soft']).toBe(tokensOf('paper').inkSoft);
    for (const value of Object.values(tokensOf('paper'))) expect(Object.values(properties)).toContain(value);
    expect(cssRule(':root', 'paper')).toMatch(/^:root \{\n {2}--kg-paper: #F5F0E6;/);
  });
});
