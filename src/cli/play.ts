import { err, ok, type Result } from '../base/Result.ts';
import { readText, writeText } from '../platform/node/textFiles.ts';
import { actionProblemLine, cliWords, fileProblemLine, refusedLine } from '../text/cli.ts';
import { debriefLines, entryWords } from '../text/cliDebrief.ts';
import { handoutWords } from '../text/cliHandout.ts';
import { say, speakOfRig } from '../text/translate.ts';
import { MOST_SEATS } from '../training/handout/JobFile.ts';
import { drawOfSeat, seedOf } from '../training/handout/seats.ts';
import { drawnVariant, FIRST } from '../training/scenario/drawVariant.ts';
import { isJob } from '../training/scenario/modes.ts';
import type { Scenario } from '../training/scenario/Scenario.ts';
import type { DebriefFacts } from '../training/score/DebriefFacts.ts';
import { Sitting } from '../training/sitting/Sitting.ts';
import type { CommandLine } from './commandLine.ts';
import { debriefOf } from './debriefOf.ts';
import { keptTables } from './keptTables.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { keyOfClass, type NotHanded, openHanded } from './openHanded.ts';
import { parseActions } from './parseActions.ts';
import { runActions } from './runActions.ts';
import { Watcher } from './Watcher.ts';
import { wholeNumber } from './wholeNumber.ts';

/** `play SCENARIO ACTIONS`: does a file of actions and prints what was seen, then the debrief. */
export function play({ files, json, options }: CommandLine, output: Output): ExitCode {
  const [scenarioPath, actionsPath, ...more] = files;
  if (scenarioPath === undefined || actionsPath === undefined || more.length > 0) {
    output.err(cliWords.missingFiles);
    return 2;
  }
  const scenario = truthToPlay(scenarioPath, options);
  const text = readText(actionsPath);
  const lines = text.ok ? parseActions(text.value) : null;
  const wrong = [
    ...(scenario.ok ? [] : scenario.error.lines),
    ...(text.ok ? [] : [fileProblemLine(actionsPath, text.error)]),
    ...(lines === null || lines.ok
      ? []
      : lines.error.map((problem) => actionProblemLine(actionsPath, problem))),
  ];
  if (!scenario.ok || lines === null || !lines.ok) {
    for (const line of wrong) output.err(line);
    return 2;
  }
  speakOfRig(scenario.value.rig);
  const sitting = Sitting.begin(scenario.value, seedOf(scenario.value));
  const watcher = new Watcher();
  const run = runActions(sitting, lines.value, (line) => {
    const sight = watcher.look(sitting, line);
    if (!json) output.out(sight.words);
  });
  if (!run.ok) {
    const { line, text: asked, refusal } = run.error;
    output.err(refusedLine(actionsPath, line, asked, say(`refusals.${refusal}`)));
    return 2;
  }
  const job = isJob(scenario.value.mode);
  const closed = sitting.view().phase === 'closed';
  const facts = closed && job ? debriefed(scenario.value, sitting) : ok(null);
  if (!facts.ok) {
    output.err(cliWords.cannotGrade(actionsPath, facts.error));
    return 2;
  }
  const found: DebriefFacts | null = facts.value;
  const record = sitting.record(found?.score.total ?? null);
  const recordPath = options['--record'];
  if (recordPath !== undefined) {
    const written = writeText(recordPath, `${JSON.stringify(record)}\n`);
    if (!written.ok) {
      output.err(fileProblemLine(recordPath, written.error));
      return 2;
    }
  }
  if (json) {
    const { log } = sitting.view();
    writeJson(output, { sights: watcher.sights, log, debrief: found, record });
    return 0;
  }
  output.out('');
  for (const entry of sitting.view().log) output.out(entryWords(entry));
  output.out('');
  if (!job) output.out(cliWords.introductionEnds);
  else if (found === null) output.out(cliWords.notClosed);
  else for (const line of debriefLines(found, sitting.view().log)) output.out(line);
  return 0;
}

function debriefed(scenario: Scenario, sitting: Sitting): Result<DebriefFacts, string> {
  const tables = keptTables(scenario.rig);
  if (!tables.ok) return tables;
  const facts = debriefOf(scenario, sitting.record(), tables.value);
  return facts.ok ? facts : err(facts.error.says);
}

/** The truth that is played: of a scenario with variants that of the seat, or without a seat its first. */
function truthToPlay(path: string, options: CommandLine['options']): Result<Scenario, NotHanded> {
  const { '--class-code': classCode, '--seat': given } = options;
  const refuse = (line: string): Result<Scenario, NotHanded> => err({ code: 'seat', lines: [line] });
  const scenario = openHanded(path, classCode);
  if (!scenario.ok) return scenario;
  if (given === undefined) return ok(drawnVariant(scenario.value, FIRST));
  if (scenario.value.variants === undefined) return refuse(handoutWords.noVariants(path));
  const seat = wholeNumber(given, 1, MOST_SEATS);
  if (seat === null) return refuse(handoutWords.badSeat(given));
  if (classCode === undefined) return refuse(handoutWords.seatWantsCode);
  const key = keyOfClass(classCode, scenario.value);
  if (!key.ok) return refuse(key.error);
  return ok(drawnVariant(scenario.value, drawOfSeat(key.value, seat)));
}
