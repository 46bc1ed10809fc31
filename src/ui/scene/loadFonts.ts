import { FONTS } from '../theme/type.ts';

const FACES = [
  `600 20px ${FONTS.heading}`,
  `700 20px ${FONTS.heading}`,
  `400 16px ${FONTS.text}`,
  `600 16px ${FONTS.text}`,
  `700 16px ${FONTS.text}`,
  `700 48px ${FONTS.segments}`,
] as const;
const PATIENCE_MS = 3000;

/** Waits for the faces the drawing prints with. Without them it draws in the fallback faces rather than not at all. */
export async function loadFonts(): Promise<void> {
  const all = Promise.all(FACES.map((face) => document.fonts.load(face, '0Ω'))).catch(() => []);
  const enough = new Promise((resolve) => setTimeout(resolve, PATIENCE_MS));
  await Promise.race([all, enough]);
}
