import type { ScenarioProblem, ScenarioProblemCode } from '../scenario/ScenarioProblem.ts';
import type { DraftText } from './DraftText.ts';
import { pathOf } from './rawText.ts';

/** What stands against a place only while nothing, or not enough, is written there. */
const NOT_ENOUGH: readonly ScenarioProblemCode[] = [
  'text-empty',
  'missing-key',
  'list-too-short',
  'limits-empty',
];

/** What stands against an empty place as well as against one with something wrong in it. */
const OF_ANY: readonly ScenarioProblemCode[] = ['bad-form', 'wrong-type'];

/** Whether nothing is wrong in a place but that it is not written yet: it asks for words, and not for mending. */
export function isStillToWrite({ code, path }: ScenarioProblem, form: DraftText): boolean {
  if (NOT_ENOUGH.includes(code)) return true;
  if (!OF_ANY.includes(code)) return false;
  const raw = form.at(pathOf(path));
  return raw.kind === 'nothing' || (raw.kind === 'text' && raw.text === '');
}
