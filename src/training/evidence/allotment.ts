/** How many of its tolerance draws a suspect is tried with while its chance is at least this. */
const ALL = 8;
const FEW = 2;
const ONE = 1;
const TAKES_ALL = 0.02;
const KEEPS_ALL = 0.002;
const TAKES_FEW = 0.002;
const KEEPS_FEW = 0.0002;
/** From what chance on it is tried with bad tools as well. */
const TAKES_TOOLS = 0.02;
const KEEPS_TOOLS = 0.002;

/**
 * How many draws a suspect of this chance is worth, if it has had `before` until now. What has become likely gets more; it
 * keeps them until it is far less likely, so that none goes to and fro.
 */
export function drawsFor(chance: number, before: number): number {
  if (chance >= TAKES_ALL || (before >= ALL && chance >= KEEPS_ALL)) return ALL;
  if (chance >= TAKES_FEW || (before >= FEW && chance >= KEEPS_FEW)) return FEW;
  return ONE;
}

/** Whether a suspect is likely enough to be tried with bad tools. 'always' stays. */
export type Likely = 'no' | 'yes' | 'always';

export function isLikely(chance: number, before: Likely): Likely {
  if (before === 'always') return before;
  return chance >= TAKES_TOOLS || (before === 'yes' && chance >= KEEPS_TOOLS) ? 'yes' : 'no';
}
