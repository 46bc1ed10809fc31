/** Tints and hatchings of the stacked chart's layers, in the order of the layers: no two alike in either. */
const LOOKS: readonly { readonly tint: string; readonly lines: readonly string[] }[] = [
  { tint: 'var(--kg-sage)', lines: ['M2 3 h2', 'M7 8 h2'] },
  { tint: 'var(--kg-clay)', lines: ['M0 10 L10 0'] },
  { tint: 'var(--kg-vacuum-tint)', lines: ['M0 5 H10'] },
  { tint: 'var(--kg-plum)', lines: ['M0 0 L10 10'] },
  { tint: 'var(--kg-steel)', lines: ['M5 0 V10'] },
  { tint: 'color-mix(in srgb, var(--kg-lamp) 36%, var(--kg-cream))', lines: ['M0 10 L10 0', 'M0 0 L10 10'] },
  { tint: 'var(--kg-mat)', lines: ['M5 0 V10', 'M0 5 H10'] },
  { tint: 'var(--kg-hose)', lines: ['M3 5 H7'] },
];

/** Fill of layer `index`; the last layer, all others, is plain paper. */
export function bandFill(index: number, count: number): string {
  return index === count - 1 ? 'var(--kg-cream)' : `url(#band-${index % LOOKS.length})`;
}

export function BandPatterns() {
  return (
    <defs>
      {LOOKS.map(({ tint, lines }, index) => (
        <pattern key={tint} id={`band-${index}`} width="10" height="10" patternUnits="userSpaceOnUse">
          <rect width="10" height="10" style={{ fill: tint }} />
          {lines.map((d) => (
            <path key={d} class="band-line" d={d} />
          ))}
        </pattern>
      ))}
    </defs>
  );
}
