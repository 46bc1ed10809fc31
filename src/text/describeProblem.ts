import type { ScenarioProblem } from '../training/scenario/ScenarioProblem.ts';
import { kibibytes } from './kibibytes.ts';
import { has, say, type TextValues } from './translate.ts';

/** What is wrong with a scenario file at one place, and the way to mend it. Begins small: it is said behind its place. */
export function describeProblem({ code, values }: ScenarioProblem): string {
  if (code === 'format-unknown' && values['oldest'] === values['newest']) {
    return say('scenarioProblemWords.onlyFormat', values);
  }
  return say(`scenarioProblems.${code}`, inWords(values));
}

/** Values that are names of the schema's, in the words of the page. */
function inWords(values: ScenarioProblem['values']): TextValues {
  const { found, expected, form, way, bytes, limit } = values;
  return {
    ...values,
    ...(bytes === undefined ? {} : { bytes: kibibytes(Number(bytes)), limit: kibibytes(Number(limit)) }),
    ...(found === 'nothing' ? { found: say('scenarioProblemWords.nothing') } : {}),
    ...(found === 'a list' ? { found: say('scenarioProblemWords.list') } : {}),
    ...(found === 'a mapping' ? { found: say('scenarioProblemWords.mapping') } : {}),
    ...(expected === undefined
      ? {}
      : { expected: word('kinds', String(expected)), remedy: remedyOf(values) }),
    ...(form === undefined ? {} : { form: word('forms', String(form)) }),
    ...(way === 'more' || way === 'fewer' ? { way: say(`scenarioProblemWords.${way}`) } : {}),
  };
}

function remedyOf({ found, expected }: ScenarioProblem['values']): string {
  if (found === 'nothing') return say('scenarioProblemWords.write');
  return say(expected === 'string' ? 'scenarioProblemWords.quote' : 'scenarioProblemWords.change');
}

function word(kind: 'kinds' | 'forms', name: string): string {
  const key = `scenarioProblemWords.${kind}.${name}`;
  return has(key) ? say(key) : name;
}
