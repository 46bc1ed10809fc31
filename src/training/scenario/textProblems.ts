import { JOB_LANGUAGES } from './jobTexts.ts';
import { fieldOf } from './rawField.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import type { YamlPlaces } from './YamlPlaces.ts';

type Path = readonly (string | number)[];

/** Where texts stand that may be written in several languages; a star stands for each entry of a list. */
const TEXTS: readonly Path[] = [
  ['title'],
  ['summary'],
  ['aims', '*'],
  ['work-order', 'vehicle'],
  ['work-order', 'complaint'],
  ['work-order', 'history', '*'],
  ['work-order', 'cautions', '*'],
  ['variants', '*', 'complaint'],
  ['variants', '*', 'history', '*'],
  ['variants', '*', 'remark'],
  ['walkthrough', '*', 'say'],
  ['walkthrough', '*', 'how'],
  ['remark'],
];

/** A text by language has one at least, and a sentence is translated in one way. Works on the raw content. */
export function textProblems(content: object, places: YamlPlaces): ScenarioProblem[] {
  const problems: ScenarioProblem[] = [];
  const translated = new Map<string, string>();
  for (const [path, text] of TEXTS.flatMap((pattern) => textsAt(content, pattern, []))) {
    const said = JOB_LANGUAGES.map((language) => fieldOf(text, language));
    if (Object.keys(text).length === 0) problems.push(places.problem('no-language', path));
    const [english, spanish] = said;
    if (typeof english !== 'string' || typeof spanish !== 'string') continue;
    const before = translated.get(english);
    if (before !== undefined && before !== spanish)
      problems.push(places.problem('translated-twice', path, {}, 'es'));
    translated.set(english, before ?? spanish);
  }
  return problems;
}

/** Texts by language at the places of a pattern. */
function textsAt(value: unknown, [key, ...rest]: Path, path: Path): readonly (readonly [Path, object])[] {
  if (key === undefined) {
    const isByLanguage = typeof value === 'object' && value !== null && !Array.isArray(value);
    return isByLanguage ? [[path, value]] : [];
  }
  if (key !== '*') return textsAt(fieldOf(value, String(key)), rest, [...path, key]);
  if (!Array.isArray(value)) return [];
  return value.flatMap((entry: unknown, index) => textsAt(entry, rest, [...path, index]));
}
