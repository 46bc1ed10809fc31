import type { Tokens } from './tokens.ts';

/**
 * Where a device forces its own colours on every page, the page's tokens are its system colours: what is drawn in lines and words
 * then stands out from whatever ground the device has. Tints say nothing alone, so they may all be the ground.
 */
export const SYSTEM_COLOURS: Readonly<Record<keyof Tokens, string>> = {
  paper: 'Canvas',
  cream: 'Canvas',
  mat: 'Canvas',
  grid: 'Canvas',
  ink: 'CanvasText',
  inkSoft: 'CanvasText',
  steel: 'Canvas',
  steelLight: 'Canvas',
  steelDark: 'Canvas',
  sage: 'Canvas',
  clay: 'Canvas',
  plum: 'Canvas',
  live: 'CanvasText',
  vacuum: 'CanvasText',
  vacuumTint: 'Canvas',
  act: 'Highlight',
  onAct: 'HighlightText',
  lcd: 'Canvas',
  lcdInk: 'CanvasText',
  lcdGhost: 'Canvas',
  hose: 'Canvas',
  lamp: 'Highlight',
  leadRed: 'CanvasText',
  leadBlack: 'CanvasText',
  casingOuter: 'CanvasText',
  casingInner: 'Canvas',
};
