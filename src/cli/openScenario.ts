import { err, type Result } from '../base/Result.ts';
import { readText } from '../platform/node/textFiles.ts';
import { fileProblemLine, scenarioProblemLine } from '../text/cli.ts';
import { loadScenario } from '../training/scenario/loadScenario.ts';
import type { Scenario } from '../training/scenario/Scenario.ts';
import type { ScenarioProblem } from '../training/scenario/ScenarioProblem.ts';

export interface NotOpened {
  /** One line a problem, with file, line and fix. */
  readonly lines: readonly string[];
  readonly problems: readonly ScenarioProblem[];
}

/** Reads and checks a scenario file. */
export function openScenario(path: string): Result<Scenario, NotOpened> {
  const text = readText(path);
  if (!text.ok) return err({ lines: [fileProblemLine(path, text.error)], problems: [] });
  const loaded = loadScenario(text.value, path);
  if (loaded.ok) return loaded;
  return err({ lines: loaded.error.map(scenarioProblemLine), problems: loaded.error });
}
