import { err, ok, type Result } from '../../base/Result.ts';
import { crossProblems } from './crossProblems.ts';
import { hashOfContent } from './hashOfContent.ts';
import { readYaml } from './readYaml.ts';
import type { Scenario, ScenarioContent } from './Scenario.ts';
import type { ScenarioProblem } from './ScenarioProblem.ts';
import { type ScenarioFile, scenarioSchema } from './scenarioSchema.ts';
import { schemaProblems } from './schemaProblems.ts';

/**
 * Reads a scenario file of format 1.
 * Errors: every problem of the file at once, in the order of their lines.
 */
export function loadScenario(text: string, fileName: string): Result<Scenario, readonly ScenarioProblem[]> {
  const reading = readYaml(text, fileName);
  const problems = [...reading.problems];
  if (reading.content === undefined) return err(sorted(problems));
  if (typeof reading.content !== 'object' || reading.content === null || Array.isArray(reading.content)) {
    return err(sorted([...problems, reading.places.problem('not-a-map', [])]));
  }
  const parsed = scenarioSchema.safeParse(reading.content);
  if (!parsed.success) problems.push(...schemaProblems(parsed.error.issues, reading.content, reading.places));
  problems.push(...crossProblems(reading.content, reading.places));
  if (!parsed.success || problems.length > 0) return err(sorted(problems));
  const content = contentOf(parsed.data);
  return ok({ ...content, contentHash: hashOfContent(content) });
}

function contentOf(file: ScenarioFile): ScenarioContent {
  return {
    format: file.format,
    id: file.id,
    title: file.title,
    summary: file.summary,
    mode: file.mode,
    level: file.level,
    minutes: file.minutes,
    aims: file.aims,
    workOrder: file['work-order'],
    bench: {
      ambientC: file.bench['ambient-celsius'],
      altitudeM: file.bench['altitude-metres'],
      fuelPercent: file.bench['fuel-percent'],
    },
    seed: file.seed,
    drives: file.drives,
    faults: file.faults.map(({ fault, severity, 'when-moved': whenMoved, root }) => ({
      fault,
      severity: severity ?? 0,
      ...(whenMoved === undefined ? {} : { whenMoved }),
      ...(root === undefined ? {} : { root }),
    })),
    rulesOff: file.rules?.off ?? [],
    steps: file.walkthrough ?? [],
    remark: file.remark,
  };
}

function sorted(problems: readonly ScenarioProblem[]): readonly ScenarioProblem[] {
  return [...problems].sort((a, b) => a.line - b.line || a.column - b.column);
}
