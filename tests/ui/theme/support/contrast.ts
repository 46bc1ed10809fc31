/** A colour as its three channels, 0 to 255. */
export type Rgb = readonly [number, number, number];

/** Reads `#RRGGBB`. Errors: throws on anything else. */
export function rgb(hex: string): Rgb {
  if (!/^#[0-9a-f]{6}$/i.test(hex)) throw new Error(`not a colour: ${hex}`);
  return [1, 3, 5].map((at) => Number.parseInt(hex.slice(at, at + 2), 16)) as unknown as Rgb;
}

export function hexOf(colour: Rgb): string {
  return `#${colour.map((channel) => Math.round(channel).toString(16).padStart(2, '0')).join('')}`.toUpperCase();
}

/** Relative luminance as WCAG 2.2 defines it. */
export function luminance(colour: Rgb): number {
  const [r = 0, g = 0, b = 0] = colour.map((channel) => {
    const c = channel / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

/** Contrast ratio as WCAG 2.2 defines it: 1 to 21, whichever comes first. */
export function contrast(a: Rgb, b: Rgb): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (high + 0.05) / (low + 0.05);
}

/** So much of `over` and the rest of `under`, channel by channel: a see-through colour, or CSS `color-mix(in srgb, …)`. */
export function mix(over: Rgb, share: number, under: Rgb): Rgb {
  return over.map((channel, i) => channel * share + (under[i] ?? 0) * (1 - share)) as unknown as Rgb;
}
