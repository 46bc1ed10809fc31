/** Colours by meaning, as CSS hexadecimal. Line weights and type sizes are shared by all themes. */
export interface Tokens {
  readonly paper: string;
  /** Panels and cards laid on the paper. */
  readonly cream: string;
  readonly mat: string;
  readonly grid: string;
  readonly ink: string;
  /** Secondary words: still 4.5:1 on paper, cream and mat. */
  readonly inkSoft: string;
  readonly steel: string;
  readonly steelLight: string;
  readonly steelDark: string;
  readonly sage: string;
  readonly clay: string;
  readonly plum: string;
  /** Current and live readings. */
  readonly live: string;
  readonly vacuum: string;
  /** Flat tint of the pump's hose. */
  readonly vacuumTint: string;
  /** You can act here. */
  readonly act: string;
  readonly onAct: string;
  readonly lcd: string;
  readonly lcdInk: string;
  /** Unlit segments of the display. */
  readonly lcdGhost: string;
  readonly hose: string;
  /** A lit lamp: the dash's, the test lamp's. Always with rays or a word. */
  readonly lamp: string;
  readonly leadRed: string;
  readonly leadBlack: string;
  /** The outer and inner line of a lead's two-tone casing. */
  readonly casingOuter: string;
  readonly casingInner: string;
}

export const THEME_NAMES = ['paper', 'shop-floor', 'high-contrast'] as const;
export type ThemeName = (typeof THEME_NAMES)[number];

const PAPER: Tokens = {
  paper: '#F5F0E6',
  cream: '#FBF8F1',
  mat: '#EAE2D2',
  grid: '#DDD3C0',
  ink: '#1E2A33',
  inkSoft: '#4A5660',
  steel: '#C9D3D8',
  steelLight: '#DCE3E6',
  steelDark: '#AEBBC2',
  sage: '#C8D5C0',
  clay: '#E3C9B1',
  plum: '#D8CBD8',
  live: '#B8331D',
  vacuum: '#2F6DA8',
  vacuumTint: '#A9C6DF',
  act: '#0B7A75',
  onAct: '#FFFFFF',
  lcd: '#C9D4BE',
  lcdInk: '#1B2620',
  lcdGhost: '#BFCBB3',
  hose: '#8FA9BF',
  lamp: '#F2B52C',
  leadRed: '#C8402A',
  leadBlack: '#2B343B',
  casingOuter: '#1E2A33',
  casingInner: '#FBF8F1',
};

const SHOP_FLOOR: Tokens = {
  paper: '#161C21',
  cream: '#222B32',
  mat: '#1B2329',
  grid: '#232D34',
  ink: '#E9E4D8',
  inkSoft: '#B4BCC0',
  steel: '#46545E',
  steelLight: '#53636E',
  steelDark: '#36424B',
  sage: '#46583F',
  clay: '#6B4F3C',
  plum: '#5A4A5E',
  live: '#FF8A70',
  vacuum: '#7FB6E8',
  vacuumTint: '#3A668C',
  act: '#4CC9BF',
  onAct: '#0E1518',
  lcd: '#B9C6AD',
  lcdInk: '#141C17',
  lcdGhost: '#AFBCA3',
  hose: '#4A6780',
  lamp: '#F4C04A',
  leadRed: '#E0573F',
  leadBlack: '#0B0F12',
  casingOuter: '#0B0F12',
  casingInner: '#E9E4D8',
};

const HIGH_CONTRAST: Tokens = {
  paper: '#FFFFFF',
  cream: '#FFFFFF',
  mat: '#FFFFFF',
  grid: '#FFFFFF',
  ink: '#000000',
  inkSoft: '#000000',
  steel: '#FFFFFF',
  steelLight: '#FFFFFF',
  steelDark: '#D0D0D0',
  sage: '#FFFFFF',
  clay: '#FFFFFF',
  plum: '#E6E6E6',
  live: '#A30000',
  vacuum: '#00429A',
  vacuumTint: '#C4D8F2',
  act: '#00534F',
  onAct: '#FFFFFF',
  lcd: '#FFFFFF',
  lcdInk: '#000000',
  lcdGhost: '#F0F0F0',
  hose: '#D0D0D0',
  lamp: '#FFD500',
  leadRed: '#C00000',
  leadBlack: '#000000',
  casingOuter: '#000000',
  casingInner: '#FFFFFF',
};

const THEMES: Readonly<Record<ThemeName, Tokens>> = {
  paper: PAPER,
  'shop-floor': SHOP_FLOOR,
  'high-contrast': HIGH_CONTRAST,
};

export function tokensOf(name: ThemeName): Tokens {
  return THEMES[name];
}
