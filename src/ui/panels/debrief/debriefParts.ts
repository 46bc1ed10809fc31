/** The parts of a debrief, in the order in which they are read. */
export const DEBRIEF_PARTS = [
  'knew',
  'outcome',
  'score',
  'chances',
  'replay',
  'method',
  'board',
  'economy',
  'drive',
  'log',
  'reflect',
] as const;
export type DebriefPart = (typeof DEBRIEF_PARTS)[number];

export function partId(part: DebriefPart): string {
  return `debrief-${part}`;
}

/** To a part, with the focus. Not by the address, which says which screen this is. */
export function goToPart(part: DebriefPart): void {
  const section = document.getElementById(partId(part));
  section?.focus({ preventScroll: true });
  section?.scrollIntoView();
}
