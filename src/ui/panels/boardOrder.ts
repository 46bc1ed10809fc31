import type { BoardCard } from '../../training/scenario/BoardCard.ts';
import type { KeptSitting } from './Shop.ts';

/**
 * A job is passed from so many points on: more than anyone gets who proves nothing, and less than anyone who works through the
 * tests (see the limits of `validity`). Invented for teaching; the board asks for no more than another try.
 */
const PASSED_FROM = 60;

/** How a job stands on this device. */
export interface JobStanding {
  readonly state: 'open' | 'passed' | 'done' | 'new';
  /** How often it was brought to its end, and the most points; null where none are known. */
  readonly attempts: number;
  readonly best: number | null;
}

export function standingOf({ id }: BoardCard, kept: readonly KeptSitting[]): JobStanding {
  const own = kept.filter(({ scenario }) => scenario === id);
  const finished = own.filter(({ state }) => state === 'finished');
  const scores = finished.flatMap(({ score }) => (score === null ? [] : [score]));
  const best = scores.length === 0 ? null : Math.max(...scores);
  // Whose points are not known has been at the end, and that is all that can be said.
  const passed = best === null || best >= PASSED_FROM;
  const ended = finished.length === 0 ? 'new' : passed ? 'passed' : 'done';
  const open = own.some(({ state }) => state === 'open');
  return { state: open ? 'open' : ended, attempts: finished.length, best };
}

/** Where a job stands in the suggested order: its place in its level, counting from 1. `cards` are in that order. */
export function placeInLevel(card: BoardCard, cards: readonly BoardCard[]): number {
  return cards.filter(({ level }) => level === card.level).indexOf(card) + 1;
}

/**
 * The job to go on with: the one that lies open, else the first that is not passed. One that was tried in vain waits until the
 * others of its level have been tried, so that nobody is held up by it.
 */
export function nextJob(cards: readonly BoardCard[], kept: readonly KeptSitting[]): BoardCard | undefined {
  const of = (state: JobStanding['state']): readonly BoardCard[] =>
    cards.filter((card) => standingOf(card, kept).state === state);
  const [open] = of('open');
  if (open !== undefined) return open;
  const [untried] = of('new');
  const [failed] = of('done');
  if (untried === undefined || failed === undefined) return untried ?? failed;
  return failed.level < untried.level ? failed : untried;
}
