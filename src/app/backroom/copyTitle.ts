import { say } from '../../text/translate.ts';

/** What a copy is called: as the draft, with the first number that no other has. A copy of a copy counts on. */
export function copyTitle(of: string, taken: readonly string[]): string {
  const first = say('backRoom.copyOf', { title: '' });
  const further = (number: number): string => say('backRoom.copyFurther', { title: '', number });
  // The draft that all these are copies of.
  const [before = '', after = ''] = further(0).split('0');
  const end = of.endsWith(first) ? first : new RegExp(`${quoted(before)}\\d+${quoted(after)}$`).exec(of)?.[0];
  const title = end === undefined ? of : of.slice(0, -end.length);
  const names = [title + first, ...taken.map((_, i) => title + further(i + 2))];
  return names.find((name) => !taken.includes(name)) ?? title + first;
}

function quoted(words: string): string {
  return words.replaceAll(/[()[\]{}.*+?^$|\\]/g, '\\$&');
}
