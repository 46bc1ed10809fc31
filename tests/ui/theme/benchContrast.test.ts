import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { pressureTint } from '../../../src/ui/inside/pressureTint.ts';
import { SHELF_TABS } from '../../../src/ui/interaction/layout/shelfPlan.ts';
import type { SceneView } from '../../../src/ui/scene/SceneView.ts';
import { cssProperties } from '../../../src/ui/theme/cssProperties.ts';
import { THEME_NAMES, type Tokens, tokensOf } from '../../../src/ui/theme/tokens.ts';
import { workingObservations } from '../layout/benchObservations.ts';
import { allStyles } from './support/allStyles.ts';
import { contrast, hexOf, mix, rgb } from './support/contrast.ts';
import { colourOf } from './support/cssPairs.ts';
import { type Drawn, painterOf } from './support/drawn.ts';

const VIEW: SceneView = {
  held: null,
  pointer: null,
  shelf: 'leads',
  ring: 'lcd',
  tightening: null,
  targets: [],
  showDigits: true,
  showFunctions: true,
  reducedMotion: true,
  captions: true,
};

const ratio = (front: string, ground: string): number => contrast(rgb(front), rgb(ground));

/** A word is too faint if any of it is; a mark, if most of it is: it may go over an edge. */
function faint(drawn: readonly Drawn[], least: 4.5 | 3): readonly string[] {
  return drawn.flatMap(({ what, front, grounds }) => {
    const lost = grounds.filter((ground) => contrast(front, ground) < least);
    return (least === 3 && lost.length * 2 <= grounds.length ? [] : lost).map(
      (ground) => `${what}: ${hexOf(front)} on ${hexOf(ground)} is ${contrast(front, ground).toFixed(2)}`,
    );
  });
}

/** What is too faint in many states of work: words under 4.5, lines and marks that mean something under 3. */
async function tooFaint(tokens: Tokens) {
  const painter = await painterOf(tokens);
  const words = new Set<string>();
  const parts = new Set<string>();
  let count = 0;
  [...workingObservations().values()].forEach((observation, i) => {
    // Every compartment once with the bench as it is found, then one with each state.
    for (const shelf of i === 0 ? SHELF_TABS : SHELF_TABS.slice(i % SHELF_TABS.length).slice(0, 1)) {
      for (const held of i === 1 ? [null, { kind: 'end', end: 'meter-red' } as const] : [null]) {
        const drawn = painter.draw(observation, {
          ...VIEW,
          shelf,
          held,
          pointer: held === null ? null : { x: 600, y: 400 },
          targets: held === null ? [] : ['point:battery-positive', 'point:cavity-3-back'],
        });
        count += drawn.words.length + drawn.parts.length;
        // Unlit segments are to be seen as little as on a real display.
        const printed = drawn.words.filter(({ front }) => hexOf(front) !== tokens.lcdGhost.toUpperCase());
        for (const line of faint(printed, 4.5)) words.add(line);
        for (const line of faint(drawn.parts, 3)) parts.add(line);
      }
    }
  });
  painter.end();
  return { words: [...words].sort(), parts: [...parts].sort(), count };
}

describe('the drawn bench', () => {
  for (const name of THEME_NAMES) {
    it(`${name}: every word stands out from what it is printed on, every mark from what it is drawn on`, async () => {
      const { words, parts, count } = await tooFaint(tokensOf(name));
      expect(count).toBeGreaterThan(500);
      expect(words, 'WCAG 2.2, 1.4.3: words 4.5').toEqual([]);
      expect(parts, 'WCAG 2.2, 1.4.11: parts 3').toEqual([]);
    });
  }

  it('would show a token that is spoilt', async () => {
    const grey = '#A8A8A8';
    for (const token of ['ink', 'inkSoft', 'live', 'vacuum', 'act', 'lcdInk'] as const) {
      const { words, parts } = await tooFaint({ ...tokensOf('paper'), [token]: grey });
      expect([...words, ...parts].join('\n'), token).toContain(grey);
    }
  });
});

describe('what is drawn in pairs of colours', () => {
  for (const name of THEME_NAMES) {
    const tokens = tokensOf(name);
    it(`${name}: a lead's casing shows on any ground it lies on, and from its own cord`, () => {
      const grounds = [
        'mat',
        'cream',
        'steel',
        'steelLight',
        'steelDark',
        'clay',
        'sage',
        'plum',
        'hose',
      ] as const;
      for (const ground of [...grounds.map((each) => tokens[each]), tokens.leadRed, tokens.leadBlack]) {
        const best = Math.max(ratio(tokens.casingOuter, ground), ratio(tokens.casingInner, ground));
        expect(best, ground).toBeGreaterThanOrEqual(3);
      }
      expect(ratio(tokens.casingOuter, tokens.casingInner)).toBeGreaterThanOrEqual(3);
    });

    it(`${name}: unlit segments are not taken for digits`, () => {
      expect(ratio(tokens.lcdGhost, tokens.lcd)).toBeLessThan(1.3);
      expect(ratio(tokens.lcdInk, tokens.lcdGhost)).toBeGreaterThanOrEqual(7);
    });

    it(`${name}: curves and their axes stand out from the sheet`, () => {
      for (const curve of [tokens.live, tokens.vacuum, tokens.ink]) {
        for (const sheet of [tokens.cream, tokens.paper])
          expect(ratio(curve, sheet)).toBeGreaterThanOrEqual(4.5);
      }
    });

    it(`${name}: layers of the stacked chart have borders and hatchings that show`, () => {
      const file = join(import.meta.dirname, '../../../src/ui/panels/debrief/BandPatterns.tsx');
      const tints = [...readFileSync(file, 'utf8').matchAll(/tint: '([^']+)'/g)].map(([, tint = '']) => tint);
      expect(tints.length).toBeGreaterThan(5);
      const opacity = Number(/\.band-line \{[^}]*opacity: (0\.\d+)/.exec(allStyles())?.[1]);
      for (const tint of ['var(--kg-cream)', ...tints]) {
        const ground = colourOf(tint, cssProperties(name));
        expect(contrast(rgb(tokens.ink), ground), tint).toBeGreaterThanOrEqual(3);
        const line = mix(rgb(tokens.ink), opacity, ground);
        expect(contrast(line, ground), `hatching on ${tint}`).toBeGreaterThanOrEqual(3);
      }
    });

    it(`${name}: letters in the cut-away are read on air of any pressure`, () => {
      // The darkest tints the air is painted with, below and above the room's pressure, kPa.
      for (const kPa of [0, 2.5, 10, 30, 60, 90, -1, -4, -9]) {
        const air = colourOf(pressureTint(kPa), cssProperties(name));
        expect(contrast(rgb(tokens.ink), air), `${kPa} kPa below`).toBeGreaterThanOrEqual(4.5);
      }
    });
  }
});
