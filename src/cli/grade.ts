import { ok, type Result } from '../base/Result.ts';
import { filesOf, readText } from '../platform/node/textFiles.ts';
import { cliWords, fileProblemLine, recordProblemText } from '../text/cli.ts';
import { handoutWords } from '../text/cliHandout.ts';
import { classMark } from '../training/handout/classCode.ts';
import { truthOfRecord } from '../training/handout/truthOfRecord.ts';
import { loadScenario } from '../training/scenario/loadScenario.ts';
import type { Scenario } from '../training/scenario/Scenario.ts';
import { parseRecord } from '../training/sitting/parseRecord.ts';
import type { CommandLine } from './commandLine.ts';
import { debriefOf } from './debriefOf.ts';
import { keptTables } from './keptTables.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { keyOfClass, openHanded } from './openHanded.ts';

/** What came of one record. */
interface Grade {
  readonly file: string;
  readonly scenario: string | null;
  readonly claimed: number | null;
  readonly score: number | null;
  /** Of a class whose seats have trucks of their own. */
  readonly seat: number | null;
  /** True when the claim is what the replay gives; null when nothing was claimed or nothing could be graded. */
  readonly holds: boolean | null;
  readonly problem: string | null;
  readonly says: string;
  readonly exit: ExitCode;
}

/**
 * `grade RECORD…`: sits each record again, weighs what it showed, and says whether the score it claims holds.
 * `--scenario` names a file that the records may be of, sealed ones too; with `--class-code` they must be of that class.
 */
export function grade(
  { files, json, options, every }: CommandLine,
  shipped: string,
  output: Output,
): ExitCode {
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
  const classCode = options['--class-code'];
  const given = (every?.['--scenario'] ?? []).map((path) => openHanded(path, classCode));
  const wrong = given.flatMap((one) => (one.ok ? [] : one.error.lines));
  if (wrong.length > 0) {
    for (const line of wrong) output.err(line);
    return 2;
  }
  const inFolder = paths.value.flatMap((path) => {
    const text = readText(path);
    const loaded = text.ok ? loadScenario(text.value, path) : null;
    return loaded?.ok ? [loaded.value] : [];
  });
  // Those that were named come first: they are what the records are held against.
  const scenarios = [...given.flatMap((one) => (one.ok ? [one.value] : [])), ...inFolder];
  const markOf = classMarks(classCode);
  const grades = files.map((file) => gradeOne(file, scenarios, markOf));
  if (json)
    writeJson(
      output,
      grades.map(({ says: _says, exit: _exit, ...plain }) => plain),
    );
  else for (const { says, exit } of grades) (exit === 0 ? output.out : output.err)(says);
  if (!json) for (const line of sharedSeats(grades)) output.err(line);
  return Math.max(...grades.map(({ exit }) => exit)) as ExitCode;
}

function gradeOne(file: string, scenarios: readonly Scenario[], markOf: MarkOf): Grade {
  const nothing = { file, scenario: null, seat: null, claimed: null, score: null, holds: null };
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
  const family =
    scenarios.find((candidate) => candidate.contentHash === contentHash) ??
    scenarios.find((candidate) => candidate.id === id);
  if (family === undefined) {
    return {
      ...known,
      problem: 'no-such-scenario',
      says: `${file}: ${cliWords.noSuchScenario(id)}`,
      exit: 2,
    };
  }
  const mark = markOf(family);
  if (!mark.ok) return { ...known, problem: 'class-code-unfit', says: mark.error, exit: 2 };
  const truth =
    family.contentHash === contentHash
      ? truthOfRecord(family, record, mark.value)
      : ok({ scenario: family, seat: null });
  if (!truth.ok) {
    const says = cliWords.cannotGrade(file, handoutWords.doesNotHold[truth.error]);
    return { ...known, holds: claimOf(record), problem: truth.error, says, exit: 1 };
  }
  const { scenario, seat } = truth.value;
  const tables = keptTables(scenario.rig);
  if (!tables.ok) return { ...known, seat, problem: 'no-tables', says: tables.error, exit: 2 };
  const facts = debriefOf(scenario, record, tables.value);
  if (!facts.ok) {
    const { code } = facts.error;
    const says = cliWords.cannotGrade(file, facts.error.says);
    const claimsNothing = record.claimedScore === null;
    // An introduction that claims no points is as it should be.
    const exit = claimsNothing && code === 'introduction-has-no-score' ? 0 : 1;
    return { ...known, seat, holds: claimOf(record), problem: code, says, exit };
  }
  const score = facts.value.score.total;
  const claimed = record.claimedScore;
  const atSeat = (line: string): string => (seat === null ? line : handoutWords.atSeat(line, seat));
  if (claimed === null) {
    const says = atSeat(cliWords.claimsNothing(file, score));
    return { ...known, seat, score, problem: null, says, exit: 0 };
  }
  const holds = claimed === score;
  const says = atSeat(holds ? cliWords.holds(file, score) : cliWords.fails(file, claimed, score));
  return { ...known, seat, score, holds, problem: null, says, exit: holds ? 0 : 1 };
}

/** Seats that more than one record was sat at: somebody may have opened a neighbour's. */
function sharedSeats(grades: readonly Grade[]): readonly string[] {
  const at = new Map<string, Grade[]>();
  for (const grade of grades) {
    if (grade.seat === null) continue;
    const place = `${grade.scenario} ${grade.seat}`;
    at.set(place, [...(at.get(place) ?? []), grade]);
  }
  return [...at.values()]
    .filter((same) => same.length > 1)
    .map((same) =>
      handoutWords.sharedSeat(
        same[0]?.seat ?? 0,
        same.map(({ file }) => file),
      ),
    );
}

/** What is said of a claim that nothing bears out; null where nothing was claimed. */
function claimOf({ claimedScore }: { readonly claimedScore: number | null }): false | null {
  return claimedScore === null ? null : false;
}

/** The mark that a scenario's records carry under the class code asked for; null where none was. Errors: a sentence. */
type MarkOf = (scenario: Scenario) => Result<string | null, string>;

function classMarks(classCode: string | undefined): MarkOf {
  const known = new Map<string, Result<string | null, string>>();
  return (scenario) => {
    if (classCode === undefined || scenario.variants === undefined) return ok(null);
    let mark = known.get(scenario.contentHash);
    if (mark === undefined) {
      const key = keyOfClass(classCode, scenario);
      mark = key.ok ? ok(classMark(key.value)) : key;
      known.set(scenario.contentHash, mark);
    }
    return mark;
  };
}
