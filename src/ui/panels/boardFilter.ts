import { signal } from '@preact/signals';
import type { ItemId } from '../../sim/devices/items.ts';
import { jobSentence } from '../../text/jobWords.ts';
import type { BoardCard } from '../../training/scenario/BoardCard.ts';
import { SKILLS, type Skill, skillsOf } from '../../training/scenario/skills.ts';
import { ITEM_GROUPS, type ItemGroup } from './itemGroups.ts';

/** What the board is narrowed to; null and '' leave everything. */
export interface BoardFilter {
  readonly words: string;
  readonly level: BoardCard['level'] | null;
  readonly item: ItemId | null;
  readonly skill: Skill | null;
}

export const NO_FILTER: BoardFilter = { words: '', level: null, item: null, skill: null };

/** As long as the page lives: whoever comes back from a job finds the board as it was left. No address and no store knows it. */
export const boardFilter = signal<BoardFilter>(NO_FILTER);

export function isNarrowed({ words, level, item, skill }: BoardFilter): boolean {
  return words.trim() !== '' || level !== null || item !== null || skill !== null;
}

/**
 * Whether a job is shown. An item is looked for among those that the work order puts in question, which are several for every
 * job: what is wrong is nothing that the board knows.
 */
export function fits(card: BoardCard, { words, level, item, skill }: BoardFilter): boolean {
  return (
    (level === null || card.level === level) &&
    (item === null || card.inQuestion?.includes(item) === true) &&
    (skill === null || skillsOf(card.aims).includes(skill)) &&
    hasWords(card, words)
  );
}

/** Every word stands somewhere on the card, in the language that is shown. */
function hasWords({ title, summary, aims, number }: BoardCard, words: string): boolean {
  const text = plain([title, summary, ...aims].map((one) => jobSentence(one).words).join(' ') + number);
  return plain(words)
    .split(/\s+/)
    .every((word) => text.includes(word));
}

/** In small letters and without their accents, as people type them. */
function plain(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
}

/** An item is offered where so many jobs put it in question: one alone would be a job's name, not a choice. */
const LEAST_JOBS = 2;

/** Items that the board can be narrowed to, under the headings of the verdict. */
export function itemsOffered(
  cards: readonly BoardCard[],
): readonly { readonly group: ItemGroup; readonly items: readonly ItemId[] }[] {
  const asked = cards.flatMap(({ inQuestion }) => inQuestion ?? []);
  return ITEM_GROUPS.map(({ group, items }) => ({
    group,
    items: items.filter(
      (item): item is ItemId => asked.filter((other) => other === item).length >= LEAST_JOBS,
    ),
  })).filter(({ items }) => items.length > 0);
}

export function skillsOffered(cards: readonly BoardCard[]): readonly Skill[] {
  const trained = new Set(cards.flatMap(({ aims }) => skillsOf(aims)));
  return SKILLS.filter((skill) => trained.has(skill));
}
