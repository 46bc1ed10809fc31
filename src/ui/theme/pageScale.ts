/**
 * The measures of the page, the same in every theme. Lengths are in rem, so that type, room and controls grow together where
 * the page's type does: on a large screen, and where a user asks for larger letters.
 */
export const PAGE_SCALE = {
  /** Room, each step some two fifths more than the one before. */
  space: {
    1: '0.125rem',
    2: '0.25rem',
    3: '0.375rem',
    4: '0.5rem',
    5: '0.625rem',
    6: '0.875rem',
    7: '1.25rem',
    8: '1.75rem',
    9: '3rem',
  },
  /** Type sizes. Nothing that is read is smaller than `fine`. */
  text: {
    fine: '0.84375rem',
    small: '0.90625rem',
    body: '1rem',
    large: '1.125rem',
    head: '1.3125rem',
    title: '1.875rem',
    figure: '2.125rem',
  },
  /** Line weights: scales and hints, signs, parts of things, things, and what must be seen first. */
  line: { hint: '1.2px', sign: '1.5px', part: '2px', thing: '2.5px', heavy: '3px', bar: '4px' },
  radius: { part: '6px', thing: '8px', panel: '10px', round: '999px' },
  /** The least height of what can be pressed: in a line of text, alone, and what a screen is there for. */
  press: { line: '1.5rem', key: '2.375rem', main: '3.25rem' },
} as const;
