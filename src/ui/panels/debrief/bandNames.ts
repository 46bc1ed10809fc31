import { chance } from '../../../text/chance.ts';
import { describeEntry } from '../../../text/describeEntry.ts';
import { say } from '../../../text/translate.ts';
import type { EvidenceStep } from '../../../training/evidence/EvidenceFacts.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../../training/sitting/LogEntry.ts';
import type { Band } from './chanceBands.ts';

export function bandName({ item }: Band): string {
  return item === null ? say('stacked.others') : say(`items.${item}`);
}

/** Whether a layer is what was named, what was wrong, or both; null for the others. */
export function bandRole({ item }: Band, { named, truth }: DebriefFacts['verdict']): string | null {
  if (item === null) return null;
  const isTrue = truth.some((each) => each.item === item);
  if (item === named) return say(isTrue ? 'stacked.namedAndTrue' : 'stacked.named');
  return isTrue ? say('stacked.truth') : null;
}

/** `C`, or the entry's number. */
export function stepLabel({ entry }: EvidenceStep): string {
  return entry === 0 ? say('stacked.complaint') : String(entry);
}

/** `After entry 5`. */
export function stepTitle({ entry }: EvidenceStep): string {
  return entry === 0 ? say('stacked.afterComplaint') : say('stacked.afterEntry', { entry });
}

/** The entry's own sentence; empty after the complaint. */
export function stepEntry({ entry }: EvidenceStep, log: readonly LogEntry[]): string {
  const found = log.find(({ id }) => id === entry);
  return found === undefined ? '' : entrySentence(found);
}

/** What was measured and what it said, with what was heard. */
export function entrySentence(entry: LogEntry): string {
  const { what, value, heard } = describeEntry(entry, true);
  return [`${what}: ${value}`, heard].filter((part) => part !== null).join(', ');
}

/** The layers' chances at a step, likeliest first. */
export function stepChances(bands: readonly Band[], step: number): string {
  return [...bands]
    .sort((a, b) => Number(a.item === null) - Number(b.item === null) || at(b, step) - at(a, step))
    .map((band) => say('stacked.chanceOf', { item: bandName(band), chance: chance(at(band, step)) }))
    .join(' · ');
}

function at({ chances }: Band, step: number): number {
  return chances[step] ?? 0;
}
