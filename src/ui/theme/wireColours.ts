/** Colours of wires by their letter code (IEC 60757). The letters are always printed beside them. */
export const WIRE_COLOURS = {
  PK: '#E58FA8',
  BK: '#22282D',
  BN: '#7A4A24',
  GY: '#98A2A8',
  BU: '#2F6DA8',
} as const;
export type WireLetters = keyof typeof WIRE_COLOURS;

/** A wire's colour and, for a two-coloured one, its stripe. */
export interface WireLook {
  readonly letters: string;
  readonly base: WireLetters;
  readonly stripe: WireLetters | null;
}

/** The unit's three wires, by cavity number. */
export const PLUG_WIRES: Readonly<Record<1 | 2 | 3, WireLook>> = {
  1: { letters: 'PK/BK', base: 'PK', stripe: 'BK' },
  2: { letters: 'BN', base: 'BN', stripe: null },
  3: { letters: 'GY/BU', base: 'GY', stripe: 'BU' },
};
