import { PAGE_SCALE } from './pageScale.ts';
import { SYSTEM_COLOURS } from './systemColours.ts';
import { type ThemeName, tokensOf } from './tokens.ts';
import { FONTS } from './type.ts';

function kebab(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}

type Property = readonly [name: string, value: string];

function scaleProperties(): readonly Property[] {
  return Object.entries(PAGE_SCALE).flatMap(([scale, steps]) =>
    Object.entries(steps).map(([step, value]): Property => [`--kg-${scale}-${step}`, value]),
  );
}

/** The theme as CSS custom properties: `--kg-paper`, `--kg-ink-soft`, …, `--kg-font-heading`, `--kg-space-4`, `--kg-line-part`. */
export function cssProperties(name: ThemeName | 'forced'): Readonly<Record<string, string>> {
  const tokens = name === 'forced' ? SYSTEM_COLOURS : tokensOf(name);
  const colours = Object.entries(tokens).map(([key, value]) => [`--kg-${kebab(key)}`, value]);
  const fonts = Object.entries(FONTS).map(([key, value]) => [`--kg-font-${kebab(key)}`, value]);
  return Object.fromEntries([...colours, ...fonts, ...scaleProperties()]);
}

/** The theme as one CSS rule for a selector such as `:root` or `[data-theme="shop-floor"]`. */
export function cssRule(selector: string, name: ThemeName): string {
  const lines = Object.entries(cssProperties(name)).map(([key, value]) => `  ${key}: ${value};`);
  return `${selector} {\n${lines.join('\n')}\n}\n`;
}
