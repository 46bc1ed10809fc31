import { Document, isMap } from 'yaml';
import { WRITING } from '../scenario/writeScenario.ts';
import { tokenTrouble } from '../scenario/yamlTokens.ts';
import { parsedSection, plainOf } from './DraftText.ts';
import type { Plain } from './FormEdit.ts';

/** What a step waits for, one key a line, as an author writes it under `done:`. */
export function conditionText(value: unknown): string {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) return '';
  return Object.entries(value)
    .map(([key, asked]) => {
      const document = new Document({ done: { [key]: asked } });
      const done = document.get('done', true);
      if (isMap(done)) for (const pair of done.items) flow(pair.value);
      return document.toString({ ...WRITING, lineWidth: 0 }).replace(/^done:\n {2}/, '');
    })
    .join('');
}

function flow(node: unknown): void {
  if (typeof node === 'object' && node !== null && 'items' in node) (node as { flow?: boolean }).flow = true;
}

/** The keys of such lines, or null where they cannot be read yet. */
export function readCondition(text: string): { readonly [key: string]: Plain } | null {
  if (text.trim() === '') return {};
  if (text.length > LONGEST || tokenTrouble(text) !== null) return null;
  const value = plainOf(parsedSection(text)?.contents);
  return typeof value === 'object' && value !== null && !Array.isArray(value)
    ? (value as { readonly [key: string]: Plain })
    : null;
}

const LONGEST = 4000;
