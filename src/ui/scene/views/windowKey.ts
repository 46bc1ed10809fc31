import type { Box } from '../../interaction/layout/geometry.ts';

/** The part of the bench in sight, for the keys of layers that keep their words in it. */
export function windowKey({ x, y, w, h }: Box): string {
  return `${Math.round(x)} ${Math.round(y)} ${Math.round(w)} ${Math.round(h)}`;
}
