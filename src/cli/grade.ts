import { filesOf, readText } from '../platform/node/textFiles.ts';
import { cliWords, fileProblemLine, recordProblemText } from '../text/cli.ts';
import type { EvidenceTables } from '../training/evidence/EvidenceTables.ts';
import { loadScenario } from '../training/scenario/loadScenario.ts';
import type { Scenario } from '../training/scenario/Scenario.ts';
import { parseRecord } from '../training/sitting/parseRecord.ts';
import type { CommandLine } from './commandLine.ts';
import { debriefOf } from './debriefOf.ts';
import { keptTables } from './keptTables.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';

/** What came of one record. */
interface Grade {
  readonly file: string;
  readonly scenario: string | null;
  readonly claimed: number | null;
  readonly score: number | null;
  /** True when the claim is what the replay gives; null when nothing was claimed or nothing could be graded. */
  readonly holds: boolean | null;
  readonly problem: string | null;
  readonly says: string;
  readonly exit: ExitCode;
}

/** `grade RECORD…`: sits each record again, weighs what it showed, and says whether the score it claims holds. */
export function grade({ files, json, options }: CommandLine, shipped: string, output: Output): ExitCode {
  if (files.length === 0) {
    output.err(cliWords.missingFiles);
    return 2;
  }
  const folder = options['--scenarios'] ?? shipped;
  const paths = filesOf(folder, '.yaml');
  if (!paths.ok) {
    output.err(fileProblemLine(folder, paths.error));
    return 2;
  }
  const scenarios = paths.value.flatMap((path) => {
    const text = readText(path);
    const loaded = text.ok ? loadScenario(text.value, path) : null;
    return loaded?.ok ? [loaded.value] : [];
  });
  const tables = keptTables();
  if (!tables.ok) {
    output.err(tables.error);
    return 2;
  }
  const grades = files.map((file) => gradeOne(file, scenarios, tables.value));
  if (json)
    writeJson(
      output,
      grades.map(({ says: _says, exit: _exit, ...plain }) => plain),
    );
  else for (const { says, exit } of grades) (exit === 0 ? output.out : output.err)(says);
  return Math.max(...grades.map(({ exit }) => exit)) as ExitCode;
}

function gradeOne(file: string, scenarios: readonly Scenario[], tables: EvidenceTables): Grade {
  const nothing = { file, scenario: null, claimed: null, score: null, holds: null };
  const text = readText(file);
  if (!text.ok) return { ...nothing, problem: text.error, says: fileProblemLine(file, text.error), exit: 2 };
  const parsed = parseRecord(text.value);
  if (!parsed.ok) {
    const { code } = parsed.error;
    return { ...nothing, problem: code, says: `${file}: ${recordProblemText(parsed.error)}`, exit: 2 };
  }
  const record = parsed.value;
  const { id, contentHash } = record.scenario;
  const known = { ...nothing, scenario: id, claimed: record.claimedScore };
  const scenario =
    scenarios.find((candidate) => candidate.contentHash === contentHash) ??
    scenarios.find((candidate) => candidate.id === id);
  if (scenario === undefined) {
    return {
      ...known,
      problem: 'no-such-scenario',
      says: `${file}: ${cliWords.noSuchScenario(id)}`,
      exit: 2,
    };
  }
  const facts = debriefOf(scenario, record, tables);
  if (!facts.ok) {
    const { code } = facts.error;
    const says = cliWords.cannotGrade(file, facts.error.says);
    const claimsNothing = record.claimedScore === null;
    // An introduction that claims no points is as it should be.
    const exit = claimsNothing && code === 'introduction-has-no-score' ? 0 : 1;
    return { ...known, holds: claimsNothing ? null : false, problem: code, says, exit };
  }
  const score = facts.value.score.total;
  const claimed = record.claimedScore;
  if (claimed === null) {
    return { ...known, score, problem: null, says: cliWords.claimsNothing(file, score), exit: 0 };
  }
  const holds = claimed === score;
  const says = holds ? cliWords.holds(file, score) : cliWords.fails(file, claimed, score);
  return { ...known, score, holds, problem: null, says, exit: holds ? 0 : 1 };
}
