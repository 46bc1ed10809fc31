/** A picture of the program for the device's own list of programs. `pixels` is null for a drawing without a size. */
export interface Icon {
  readonly file: string;
  readonly pixels: number | null;
  readonly purpose: 'any' | 'maskable';
}

/** The icons in `assets/icons`, as they lie in the build under `icons/`. */
export const ICONS: readonly Icon[] = [
  { file: 'icon.svg', pixels: null, purpose: 'any' },
  { file: 'icon-192.png', pixels: 192, purpose: 'any' },
  { file: 'icon-512.png', pixels: 512, purpose: 'any' },
  { file: 'icon-maskable-192.png', pixels: 192, purpose: 'maskable' },
  { file: 'icon-maskable-512.png', pixels: 512, purpose: 'maskable' },
];

export function mimeOf(icon: Icon): string {
  return icon.pixels === null ? 'image/svg+xml' : 'image/png';
}
