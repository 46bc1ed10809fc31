import { loadScenario } from '../scenario/loadScenario.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { ScenarioProblem, ScenarioProblemCode } from '../scenario/ScenarioProblem.ts';
import { DraftText, type FieldPath } from './DraftText.ts';

/** A scenario as it is being written: what a form can show of its text, and what stands against it. */
export interface Draft {
  readonly form: DraftText;
  /** Everything that is wrong with the text, in the order of its lines; empty when it is a whole scenario. */
  readonly problems: readonly ScenarioProblem[];
  readonly scenario: Scenario | null;
}

/** The draft of a text. `before` is the draft of a slightly different one: what has not changed need not be read again. */
export function draftOf(text: string, before?: Draft): Draft {
  if (before !== undefined && before.form.text === text) return before;
  const form = new DraftText(text, before?.form);
  const loaded = loadScenario(text, '');
  return loaded.ok
    ? { form, problems: [], scenario: loaded.value }
    : { form, problems: loaded.error, scenario: null };
}

/** What keeps a text from being read at all, whatever it was to say. */
const UNREAD: readonly ScenarioProblemCode[] = [
  'too-large',
  'not-text',
  'yaml-syntax',
  'nested-too-deep',
  'brackets-closed',
  'several-documents',
  'alias-not-allowed',
  'tag-not-allowed',
  'directive-not-allowed',
  'key-not-a-word',
  'not-a-map',
];

/** What wants mending before the text can be read; null where it can, or where nothing is written yet. */
export function unreadProblem({ form, problems }: Draft): ScenarioProblem | null {
  if (form.text.trim() === '') return null;
  return problems.find(({ code }) => UNREAD.includes(code)) ?? null;
}

/** Whether a form can write in a place: what the text has there can be read, and what is added does not fall into something else. */
export function canWrite(draft: Draft, path: FieldPath): boolean {
  if (unreadProblem(draft) === null) return true;
  return draft.form.topKeys().length > 0 && draft.form.at(path.slice(0, 1)).kind !== 'unreadable';
}

/** The problems of one place of the form, by its path in the file's writing (`work-order.codes[0].status`). */
export function problemsAt(draft: Draft, path: string): readonly ScenarioProblem[] {
  return draft.problems.filter((problem) => problem.path === path);
}
