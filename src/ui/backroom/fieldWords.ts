import { capital } from '../../text/format.ts';
import { has, say } from '../../text/translate.ts';
import { schemaPathOf } from '../../training/draft/rawText.ts';

/** The name of a field's control in the page. */
export function fieldId(path: string): string {
  return `field-${path.replaceAll(/[^a-z0-9]+/gi, '-').replace(/-$/, '')}`;
}

/** What a field is called. A key that has no words yet goes by its own. */
export function fieldLabel(path: string): string {
  return wordsOf(path, 'label') ?? path.split('.').at(-1) ?? path;
}

/** A place as its field is called, with the number of the entry. */
export function placeName(path: string): string {
  const number = /\[(\d+)\][^[]*$/.exec(path)?.[1];
  const label = fieldLabel(path.replace(/\[\d+\]$/, ''));
  return number === undefined ? label : `${label} ${Number(number) + 1}`;
}

export function fieldHint(path: string): string | null {
  return wordsOf(path, 'hint');
}

/** A word of a closed list, as a reader knows it. */
export function optionLabel(path: string, option: string | number): string {
  const key = optionKey(plainPath(path), String(option));
  return has(key) ? capital(say(key)) : String(option);
}

/** Words that the program has already go by their own names. */
function optionKey(path: string, option: string): string {
  switch (path) {
    case 'mode':
      return `modes.${option}`;
    case 'work-order.renewed':
      return `items.${option}`;
    case 'tools':
      return `benchTools.${option}`;
    case 'rules.off':
    case 'rules.on':
      return `rules.${option}.title`;
    default:
      return `formOptions.${path}.${option}`;
  }
}

function wordsOf(path: string, part: 'label' | 'hint'): string | null {
  const key = `formFields.${plainPath(path)}.${part}`;
  return has(key) ? say(key) : null;
}

function plainPath(path: string): string {
  const plain = schemaPathOf(path).replaceAll('[]', '');
  // A variant goes by the words of the job.
  const [, of] = /^variants\.(.*)$/.exec(plain) ?? [];
  if (of === undefined) return plain;
  return /^(complaint|history|codes)/.test(of) ? `work-order.${of}` : of;
}
