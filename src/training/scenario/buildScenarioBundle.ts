import { err, ok, type Result } from '../../base/Result.ts';
import { loadScenario } from './loadScenario.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import { type SealedScenario, sealScenario } from './seal.ts';

export interface ScenarioText {
  readonly name: string;
  readonly text: string;
}

/** Two files that claim the same id. */
export interface SameIdProblem {
  readonly code: 'same-id';
  readonly file: string;
  readonly other: string;
  readonly id: string;
}

/**
 * Loads and seals every file, in the order of their names, for the browser's bundle.
 * Errors: all problems of all files.
 */
export function buildScenarioBundle(
  files: readonly ScenarioText[],
): Result<readonly SealedScenario[], readonly (ScenarioProblem | SameIdProblem)[]> {
  const problems: (ScenarioProblem | SameIdProblem)[] = [];
  const sealed: SealedScenario[] = [];
  const fileOfId = new Map<string, string>();
  const inOrder = [...files].sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  for (const { name, text } of inOrder) {
    const loaded = loadScenario(text, name);
    if (!loaded.ok) {
      problems.push(...loaded.error);
      continue;
    }
    const { id } = loaded.value;
    const other = fileOfId.get(id);
    if (other !== undefined) problems.push({ code: 'same-id', file: name, other, id });
    fileOfId.set(id, name);
    sealed.push(sealScenario(loaded.value));
  }
  return problems.length > 0 ? err(problems) : ok(sealed);
}
