import type { ScenarioContent } from './Scenario.ts';
import type { ScenarioFile } from './scenarioSchema.ts';

/** The content of a checked file, with the names that the program uses. */
export function contentOf(file: ScenarioFile): ScenarioContent {
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
