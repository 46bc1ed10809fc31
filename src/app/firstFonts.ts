import { FONTS } from '../ui/theme/type.ts';

/** The faces of the first screen. */
const FACES = [`600 20px ${FONTS.heading}`, `400 16px ${FONTS.text}`, `600 16px ${FONTS.text}`] as const;

/** Letters that are not there by then are drawn in others first: better a jump than an empty page. */
const PATIENCE_MS = 1200;

/** Settles when the first screen can be drawn in its own letters, so that nothing jumps when they come. */
export async function firstFonts(): Promise<void> {
  const all = Promise.all(FACES.map((face) => document.fonts.load(face))).catch(() => []);
  await Promise.race([all, new Promise((resolve) => setTimeout(resolve, PATIENCE_MS))]);
}
