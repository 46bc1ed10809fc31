/** How many of its tolerance draws a suspect is tried with. */
const ALL = 8;
const SOME = 4;
const ONE = 1;
/** From what chance on it gets them, and down to which it keeps them. */
const GETS_ALL = 0.1;
const KEEPS_ALL = 0.02;
const GETS_SOME = 0.02;
const KEEPS_SOME = 0.004;
/** The same for its being tried with bad tools. */
const GETS_TOOLS = 0.1;
const KEEPS_TOOLS = 0.02;

/**
 * How many draws a suspect of this chance is worth, if it has had `before` until now. What has become likely gets more, and
 * keeps them until it is far less likely, so that none goes to and fro.
 */
export function drawsFor(chance: number, before: number): number {
  if (chance >= GETS_ALL || (before >= ALL && chance >= KEEPS_ALL)) return ALL;
  if (chance >= GETS_SOME || (before >= SOME && chance >= KEEPS_SOME)) return SOME;
  return ONE;
}

/** Whether a suspect is likely enough to be tried with bad tools. 'always' stays. */
export type Likely = 'no' | 'yes' | 'always';

export function isLikely(chance: number, before: Likely): Likely {
  if (before === 'always') return before;
  return chance >= GETS_TOOLS || (before === 'yes' && chance >= KEEPS_TOOLS) ? 'yes' : 'no';
}
