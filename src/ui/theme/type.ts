/** Font families, with a fallback that keeps the page readable while they load. */
export const FONTS = {
  heading: "'Bitter', Georgia, serif",
  text: "'Atkinson Hyperlegible Next', 'Segoe UI', sans-serif",
  segments: "'DSEG7 Classic', monospace",
} as const;

/** Line weights in bench units: things you can hold, their parts, scales and hints. */
export const LINE = { thing: 3, part: 2, hint: 1.2 } as const;

/** Type sizes in bench units. Words are never smaller than `small`, numbers on a scale and letters on a part than `scale`. */
export const SIZE = { scale: 16, small: 17, label: 18, heading: 20, large: 26 } as const;
