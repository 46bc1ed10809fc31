import { tokensOf } from '../../../../src/ui/theme/tokens.ts';
import { contrast, mix, type Rgb, rgb } from './contrast.ts';

/** One pair of colours that a style rule puts together, each still as it is written. */
export interface CssPair {
  readonly where: string;
  readonly front: string;
  readonly ground: string;
  /** WCAG 2.2: 4.5 for words (1.4.3), 3 for parts that carry meaning (1.4.11). */
  readonly least: 4.5 | 3;
}

/** What the page itself and every sheet on it are painted with: where a rule names no ground of its own, it may stand on either. */
const GROUNDS = ['var(--kg-paper)', 'var(--kg-cream)'];
const WORDS = 'var(--kg-ink)';

/** Rules whose words always stand on one coloured ground. */
const GROUND_OF: Readonly<Record<string, readonly string[]>> = {
  '.trouble button.plain': ['var(--kg-clay)'],
  '.spot:focus-visible': ['var(--kg-mat)', 'var(--kg-cream)'],
  '.bench-still .still-digits path': ['var(--kg-lcd)'],
  '.bench-still .still-leads .still-black': ['var(--kg-casing-inner)'],
  '.caution-sign path + path': ['var(--kg-lamp)'],
};

/** Bars without words. They are parts, seen against the sheet. */
const WORDLESS = new Set([
  '.tally .tally-done',
  '.part-bar i',
  '.par-yours',
  '.code-stored',
  '.code-permanent',
]);
/** Hair lines part what a space parts as well. */
const HAIR = 'var(--kg-hair)';
/** Flat tints: an ink line goes round each, and no tint says anything alone. */
const TINTS = new Set(
  [
    'paper cream mat steel steel-light steel-dark sage clay plum lamp lcd hose vacuum-tint grid casing-inner casing-outer',
  ]
    .flatMap((names) => names.split(' '))
    .map((name) => `var(--kg-${name})`),
);
const NO_COLOUR = new Set(['none', 'transparent', 'currentColor', 'inherit', '0']);

const COLOUR_TOKENS: ReadonlySet<string> = new Set([
  'hair',
  ...Object.keys(tokensOf('paper')).map((key) =>
    key.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`),
  ),
]);
/** Tokens that are lengths and families of type, and names of the sheet's own. */
const MEASURE = /^(font|space|text|line|radius|measure|target|width|height|gap|size)\b/;
const COLOUR =
  /var\(--kg-([a-z0-9-]+)\)|color-mix\(in srgb,\s*var\(--kg-[a-z-]+\) \d+%,\s*(?:var\(--kg-[a-z-]+\)|transparent)\)|rgb\([^)]*\)|#[0-9a-f]{3,8}\b|\b(?:transparent|currentColor|CanvasText|Canvas|Highlight|HighlightText|ButtonText|ButtonFace|LinkText|GrayText|Field|FieldText|Mark|MarkText)\b/gi;
const OF_SYSTEM =
  /^(Canvas|CanvasText|Highlight|HighlightText|ButtonText|ButtonFace|LinkText|GrayText|Field|FieldText|Mark|MarkText)$/;

interface Rule {
  readonly selectors: readonly string[];
  readonly values: ReadonlyMap<string, string>;
}

function rulesOf(css: string): readonly Rule[] {
  const bare = css.replace(/\/\*[\s\S]*?\*\//g, '');
  return [...bare.matchAll(/([^{}]+)\{([^{}]*)\}/g)].map(([, selectors = '', body = '']) => ({
    selectors: selectors.split(',').map((one) => one.trim().replace(/\s+/g, ' ')),
    values: new Map(
      body
        .split(';')
        .map((line) => line.trim().split(/:\s*/, 2))
        .filter((parts): parts is [string, string] => parts.length === 2 && parts[0] !== '')
        .map(([name, value]) => [name, value.replace(/\s+/g, ' ')]),
    ),
  }));
}

function colourIn(value: string | undefined): string | undefined {
  if (value === undefined) return undefined;
  const found = [...value.matchAll(COLOUR)].find(
    ([, token]) => token === undefined || COLOUR_TOKENS.has(token) || !MEASURE.test(token),
  )?.[0];
  return found === undefined || NO_COLOUR.has(found) || OF_SYSTEM.test(found) ? undefined : found;
}

const EDGES = /^(border(-(top|right|bottom|left))?(-color)?|outline(-color)?|stroke|accent-color)$/;

/** Every pair a style sheet makes, with what it must reach. `name` says where it is from. */
export function cssPairs(name: string, css: string): readonly CssPair[] {
  return rulesOf(css).flatMap(({ selectors, values }) => {
    const background = colourIn(values.get('background') ?? values.get('background-color'));
    const colour = colourIn(values.get('color'));
    const fill = colourIn(values.get('fill'));
    return selectors.flatMap((selector): CssPair[] => {
      if (selector.includes('::backdrop')) return [];
      const where = `${name} ${selector}`;
      const grounds = background === undefined ? (GROUND_OF[selector] ?? GROUNDS) : [background];
      const on = (front: string, under: readonly string[], least: 4.5 | 3): CssPair[] =>
        under.map((ground) => ({ where, front, ground, least }));
      const edges = [...values]
        .filter(([property]) => EDGES.test(property))
        .map(([, value]) => colourIn(value))
        .filter((each) => each !== undefined && each !== HAIR && !TINTS.has(each)) as string[];
      const words =
        WORDLESS.has(selector) && background !== undefined
          ? on(background, GROUNDS, 3)
          : colour !== undefined
            ? on(colour, grounds, 4.5)
            : background !== undefined
              ? on(WORDS, grounds, 4.5)
              : [];
      const filled =
        fill === undefined || TINTS.has(fill) ? [] : on(fill, GROUNDS, selector.endsWith('text') ? 4.5 : 3);
      // A line round a thing is told from what the thing lies on.
      return [...words, ...filled, ...edges.flatMap((edge) => on(edge, GROUND_OF[selector] ?? GROUNDS, 3))];
    });
  });
}

/** The colour a value comes to in a theme. Errors: throws when it is no token, so that nothing goes unchecked. */
export function colourOf(value: string, properties: Readonly<Record<string, string>>): Rgb {
  if (value === HAIR) return mix(token('--kg-ink'), 0.22, token('--kg-cream'));
  const mixed = /^color-mix\(in srgb, var\((--kg-[a-z-]+)\) (\d+)%, var\((--kg-[a-z-]+)\)\)$/.exec(value);
  if (mixed !== null) return mix(token(mixed[1] ?? ''), Number(mixed[2]) / 100, token(mixed[3] ?? ''));
  const named = /^var\((--kg-[a-z-]+)\)$/.exec(value);
  if (named === null) throw new Error(`a colour that is no token: ${value}`);
  return token(named[1] ?? '');

  function token(name: string): Rgb {
    const hex = properties[name];
    if (hex === undefined) throw new Error(`no such token: ${name}`);
    return rgb(hex);
  }
}

/** Pairs that do not reach what they must, one line each. */
export function tooFaint(
  pairs: readonly CssPair[],
  properties: Readonly<Record<string, string>>,
): readonly string[] {
  return pairs.flatMap(({ where, front, ground, least }) => {
    const ratio = contrast(colourOf(front, properties), colourOf(ground, properties));
    return ratio >= least ? [] : [`${where}: ${front} on ${ground} is ${ratio.toFixed(2)}, not ${least}`];
  });
}
