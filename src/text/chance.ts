import { fixed } from './format.ts';
import { language, say } from './translate.ts';

/** A chance in whole per cent; what rounds to none or all of it is said as less or more than one short of that. */
export function chance(share: number): string {
  if (share <= 0) return say('chances.none');
  if (share < 0.01) return say('chances.under');
  if (share > 0.99 && share < 1) return say('chances.over');
  return say('chances.percent', { percent: fixed(share * 100, 0) });
}

/** `3`, `3 and 5`, `3, 5 and 8`. */
export function listed(parts: readonly (string | number)[]): string {
  return new Intl.ListFormat(language() === 'en' ? 'en-GB' : language(), { type: 'conjunction' }).format(
    parts.map(String),
  );
}

/** `entry 3`, `entries 3, 5 and 8`. */
export function entriesWords(entries: readonly number[]): string {
  return say('chances.entries', { count: entries.length, entries: listed(entries) });
}
