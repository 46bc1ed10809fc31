import { isMap } from 'yaml';
import { err, ok, type Result } from '../../base/Result.ts';
import { contentOf } from './contentOf.ts';
import { crossProblems } from './crossProblems.ts';
import { FORMATS, toNewestFormat } from './formats.ts';
import { hashOfContent } from './hashOfContent.ts';
import { readYaml } from './readYaml.ts';
import type { Scenario } from './Scenario.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import { scenarioSchema } from './scenarioSchema.ts';
import { schemaProblems } from './schemaProblems.ts';

/** More than anyone will mend before looking again. */
const MOST_PROBLEMS = 100;

/**
 * Reads a scenario file of the newest format, or of an older one that is brought up to it.
 * Errors: every problem of the file at once, in the order of their lines; of very many the first.
 */
export function loadScenario(
  text: string,
  fileName: string,
  formats = FORMATS,
): Result<Scenario, readonly ScenarioProblem[]> {
  const { document, places, problems } = readYaml(text, fileName);
  if (document === null) return err(told(problems));
  if (!isMap(document.contents)) return err(told([...problems, places.problem('not-a-map', [])]));
  const format = toNewestFormat(document, formats, places);
  if (!format.known) return err(told([...problems, ...format.problems]));
  const raw = document.toJS({ maxAliasCount: 0 }) as object;
  const parsed = scenarioSchema.safeParse(raw);
  // What is wrong with the format has been told with better words.
  const issues = (parsed.error?.issues ?? []).filter(({ path }) => path[0] !== 'format');
  const all = [
    ...problems,
    ...format.problems,
    ...schemaProblems(issues, raw, places),
    ...crossProblems(raw, places),
  ];
  if (!parsed.success || all.length > 0) return err(told(all));
  const content = contentOf(parsed.data);
  return ok({ ...content, contentHash: hashOfContent(content) });
}

/** In the order of the text; a number in odd writing that is wrong in another way too is told of once. */
function told(problems: readonly ScenarioProblem[]): readonly ScenarioProblem[] {
  const place = ({ line, column }: ScenarioProblem): string => `${line}:${column}`;
  const others = new Set(problems.filter(({ code }) => code !== 'number-not-plain').map(place));
  const sorted = problems
    .filter((problem) => problem.code !== 'number-not-plain' || !others.has(place(problem)))
    .sort((a, b) => a.line - b.line || a.column - b.column);
  const last = sorted[MOST_PROBLEMS - 1];
  if (sorted.length <= MOST_PROBLEMS || last === undefined) return sorted;
  const count = sorted.length - MOST_PROBLEMS;
  return [...sorted.slice(0, MOST_PROBLEMS), { ...last, code: 'more-problems', path: '', values: { count } }];
}
