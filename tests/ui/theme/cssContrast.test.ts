import { describe, expect, it } from 'vitest';
import { cssProperties, cssRule } from '../../../src/ui/theme/cssProperties.ts';
import { THEME_NAMES, tokensOf } from '../../../src/ui/theme/tokens.ts';
import { styleSheets } from './support/allStyles.ts';
import { contrast, hexOf, mix, rgb } from './support/contrast.ts';
import { cssPairs, tooFaint } from './support/cssPairs.ts';

const SHEETS = styleSheets();
const PAIRS = [...SHEETS].flatMap(([name, css]) => cssPairs(name, css));

describe('the contrast ratio', () => {
  // W3C, WCAG 2.2, definition of contrast ratio: from 1:1 to 21:1. #767676 as the lightest grey that passes on white is
  // common knowledge of the trade, from memory; the figures are worked out by the definition.
  it.each([
    ['#000000', '#FFFFFF', 21],
    ['#FFFFFF', '#FFFFFF', 1],
    ['#767676', '#FFFFFF', 4.54],
    ['#777777', '#FFFFFF', 4.48],
    ['#949494', '#FFFFFF', 3.03],
    ['#FF0000', '#FFFFFF', 4.0],
    ['#0000FF', '#FFFFFF', 8.59],
  ])('%s on %s is %d', (a, b, ratio) => {
    expect(contrast(rgb(a), rgb(b))).toBeCloseTo(ratio, 2);
    expect(contrast(rgb(b), rgb(a))).toBeCloseTo(ratio, 2);
  });

  it('takes mixed colours as a browser mixes them', () => {
    // CSS Color 5, color-mix: a mix in sRGB goes channel by channel.
    expect(hexOf(mix(rgb('#FFFFFF'), 0.5, rgb('#000000')))).toBe('#808080');
    expect(hexOf(mix(rgb('#FF0000'), 0.22, rgb('#0000FF')))).toBe('#3800C7');
  });
});

describe('the style sheets', () => {
  it('are read: words, edges and grounds', () => {
    const pairs = cssPairs(
      'a',
      '.x { color: var(--kg-act); background: var(--kg-mat) } .y{background:var(--kg-clay)}',
    );
    expect(pairs).toEqual([
      { where: 'a .x', front: 'var(--kg-act)', ground: 'var(--kg-mat)', least: 4.5 },
      { where: 'a .y', front: 'var(--kg-ink)', ground: 'var(--kg-clay)', least: 4.5 },
    ]);
    expect(cssPairs('a', '.z { border-left: 4px solid var(--kg-live); }')).toHaveLength(2);
    expect(SHEETS.size).toBeGreaterThan(2);
    expect(PAIRS.length).toBeGreaterThan(150);
  });

  for (const theme of THEME_NAMES) {
    it(`${theme}: words reach 4.5, parts and edges 3`, () => {
      expect(tooFaint(PAIRS, cssProperties(theme))).toEqual([]);
    });
  }

  it('would show a token that is spoilt, whichever it is', () => {
    const properties = cssProperties('paper');
    const used = new Set(
      PAIRS.flatMap(({ front }) => [...front.matchAll(/--kg-[a-z-]+/g)].map(([name]) => name)),
    );
    expect(used.size).toBeGreaterThan(5);
    for (const name of used) {
      const spoilt = { ...properties, [name]: '#A8A8A8' };
      expect(tooFaint(PAIRS, spoilt).length, name).toBeGreaterThan(0);
    }
  });

  it('name no colour that is no token', () => {
    expect(() => tooFaint(cssPairs('a', '.x { color: #123456 }'), cssProperties('paper'))).toThrow(
      /no token/,
    );
    expect(() => tooFaint(cssPairs('a', '.x { color: var(--kg-pink) }'), cssProperties('paper'))).toThrow(
      /no such token/,
    );
  });
});

describe('a theme', () => {
  it('is given as CSS custom properties, one for every token', () => {
    const properties = cssProperties('paper');
    expect(properties['--kg-ink-soft']).toBe(tokensOf('paper').inkSoft);
    for (const value of Object.values(tokensOf('paper'))) expect(Object.values(properties)).toContain(value);
    expect(cssRule(':root', 'paper')).toMatch(/^:root \{\n {2}--kg-paper: #F5F0E6;/);
  });
});
