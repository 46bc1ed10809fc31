import { loadScenario } from '../scenario/loadScenario.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { ScenarioProblem } from '../scenario/ScenarioProblem.ts';
import { DraftText } from './DraftText.ts';

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

/** The problems of one place of the form, by its path in the file's writing (`work-order.codes[0].status`). */
export function problemsAt(draft: Draft, path: string): readonly ScenarioProblem[] {
  return draft.problems.filter((problem) => problem.path === path);
}
