import { JOB_LANGUAGES, type JobLanguage } from '../scenario/jobTexts.ts';
import type { DraftText, FieldPath } from './DraftText.ts';
import type { FormEdit } from './FormEdit.ts';
import { rawText } from './rawText.ts';

/** What a text is in a language. One that is written plainly is the first language's. */
export function textIn(form: DraftText, path: FieldPath, language: JobLanguage): string {
  const raw = form.at(path);
  if (raw.kind === 'group') return rawText(form.at([...path, language]));
  return language === JOB_LANGUAGES[0] ? rawText(raw) : '';
}

/** Writes a text in one language. A text that is left in the first language only is written plainly again. */
export function writtenIn(
  form: DraftText,
  path: FieldPath,
  language: JobLanguage,
  text: string,
): readonly FormEdit[] {
  const [first] = JOB_LANGUAGES;
  const all = JOB_LANGUAGES.map(
    (each) => [each, each === language ? text : textIn(form, path, each)] as const,
  );
  const others = all.filter(([each, words]) => each !== first && words !== '');
  const group = form.at(path).kind === 'group';
  if (others.length === 0) {
    const words = all.find(([each]) => each === first)?.[1] ?? '';
    return [{ kind: 'set', path, value: words }];
  }
  if (!group)
    return [{ kind: 'set', path, value: Object.fromEntries(all.filter(([, words]) => words !== '')) }];
  return [
    text === ''
      ? { kind: 'remove', path: [...path, language] }
      : { kind: 'set', path: [...path, language], value: text },
  ];
}

/** Whether any text of the form is written by language. */
export function hasLanguages(form: DraftText): boolean {
  const within = (path: FieldPath): boolean => {
    const raw = form.at(path);
    if (raw.kind === 'list') {
      return Array.from({ length: Math.min(raw.length, 100) }, (_, i) => i).some((i) => within([...path, i]));
    }
    if (raw.kind !== 'group') return false;
    return raw.keys.every((key) => (JOB_LANGUAGES as readonly string[]).includes(key))
      ? raw.keys.length > 0
      : raw.keys.some((key) => within([...path, key]));
  };
  return form.topKeys().some((key) => within([key]));
}
