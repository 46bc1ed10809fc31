import { unreachable } from '../base/assert.ts';
import type { ScenarioProblem } from '../training/scenario/ScenarioProblem.ts';
import type { TimelineProblem } from '../training/score/Timeline.ts';
import type { RecordProblem } from '../training/sitting/parseRecord.ts';
import { describeProblem } from './describeProblem.ts';
import { shownCharacters } from './shownCharacters.ts';
import { say } from './translate.ts';

/** Sentences of the command line: what is wrong, and what to do about it. */

export const USAGE = `known-good: practise proving a part bad.

  known-good check SCENARIO… [--form | --seeds N] [--json]
      says whether scenario files are in order, and whether each job is fit to give out: its plan, what it can be taken
      for, how simulated learners fare under N seeds, and what to mend (seconds a job); with --form the files alone
  known-good play SCENARIO ACTIONS [--json] [--record FILE] [--class-code CODE --seat N]
      does a file of actions on a scenario; prints what was seen, then the debrief; keeps the record
  known-good grade RECORD… [--json] [--scenarios DIR] [--scenario FILE]… [--class-code CODE]
      sits records again and says whether the score they claim holds, and at which seat of a class they were sat
  known-good seal SCENARIO… [--class-code CODE] [--seats N] [--out FILE] [--json]
      makes a file to hand out in which nobody reads what is wrong; with a class code it opens by that code alone
  known-good variants SCENARIO --class-code CODE [--seats N] [--json]
      what is wrong at each seat of a class, and whether all have an equally hard job
  known-good codes [FAULT…] [--rig RIG] [--json]
      drives a truck with each fault of the catalogue, or those named, and prints the codes that come of it
  known-good tests [TEST…] [--rig RIG] [--json]
      lists the standard tests with their minutes and money, or prints the procedures of those named
  known-good calibration [--sittings N | --live N] [--json]
      random sittings by standard tests, and how often what the evidence claimed was true, weighed by the kept tables
      (3 minutes for 1000), or with --live as the score does it (some seconds each)
  known-good validity [SCENARIO…] [--seeds N] [--json]
      simulated learners sit the scenarios, all that are shipped unless told otherwise: how well their scores tell them
      apart, and where they do not (minutes)
  known-good schema [--out FILE]
      writes the JSON Schema of scenario files, by which an editor completes and checks them
  known-good tables [--out FILE] [--rig RIG]
      works every standard test on every suspect and keeps what comes of it, for the version of the rig at hand (minutes)

Exit: 0 all well, 1 a claim does not hold or a job cannot be graded, 2 a file or a command is wrong.
How to write scenarios and actions: scenarios/README.md`;

/** One problem of a scenario file as `file:line:column: what is wrong; the fix`. */
export function scenarioProblemLine(problem: ScenarioProblem): string {
  const place = `${problem.file}:${problem.line}:${problem.column}`;
  const line = `${place}: ${problem.path === '' ? '' : `${problem.path}: `}${describeProblem(problem)}`;
  return shownCharacters(line);
}

/** What is wrong with a line of an action file. */
export interface ActionLineProblem {
  readonly line: number;
  readonly code: 'unknown-verb' | 'unknown-word' | 'bad-number' | 'wrong-shape' | 'open-quote' | 'too-large';
  readonly found: string;
  readonly allowed: string;
}

export function actionProblemLine(file: string, problem: ActionLineProblem): string {
  return `${file}:${problem.line}: ${actionProblemText(problem)}`;
}

function actionProblemText({ code, found, allowed }: ActionLineProblem): string {
  switch (code) {
    case 'unknown-verb':
      return `no line begins with "${found}". Begin with one of: ${allowed}.`;
    case 'unknown-word':
      return `"${found}" does not belong there. Use one of: ${allowed}.`;
    case 'bad-number':
      return `"${found}" is not a number for this place. Use ${allowed}.`;
    case 'wrong-shape':
      return `a line with "${found}" has another shape. Write it like this: ${allowed}`;
    case 'open-quote':
      return `a quote is opened and not closed in: ${found}. Close it with ${allowed}.`;
    case 'too-large':
      return `the file has ${found} characters. Keep it below ${allowed}.`;
    default:
      return unreachable(code);
  }
}

export function refusedLine(file: string, line: number, text: string, refusal: string): string {
  return `${file}:${line}: "${text}" cannot be done now. ${refusal}`;
}

export function recordProblemText({ code, path }: RecordProblem): string {
  switch (code) {
    case 'record-too-large':
      return 'this file is too large to be a record. Give the file that the program exported.';
    case 'record-not-json':
      return 'this is not JSON. Give the file that the program exported, unchanged.';
    case 'record-wrong-form':
      return `this is not a record of format 1 (at ${path === '' ? 'the top' : path}). Export it again.`;
    case 'record-unknown-action':
      return `this version knows no such action (at ${path}). Export it again, or use the version that wrote it.`;
    default:
      return unreachable(code);
  }
}

export function replayProblemText(problem: TimelineProblem): string {
  switch (problem.code) {
    case 'wrong-scenario':
      return 'it was made on another scenario, or on another edition of it. Give its file with --scenario, or the folder that holds it with --scenarios.';
    case 'wrong-seed':
      return 'it was made on another truck than its scenario gives to everybody. It was changed after it was made.';
    case 'wrong-mode':
      return 'it says another mode than its scenario has. It was changed after it was made.';
    case 'actions-out-of-order':
      return `action ${problem.index + 1} lies before the one ahead of it. It was changed after it was made.`;
    case 'tick-beyond-day':
      return `it runs for more than a day (at action ${problem.index + 1}). It was changed after it was made.`;
    case 'end-before-last-action':
      return 'it ends before its last action. It was changed after it was made.';
    case 'action-refused':
      return `the bench refuses action ${problem.index + 1}: ${say(`refusals.${problem.refusal}`)} It was changed after it was made.`;
    case 'end-differs':
      return 'it ends in another state than it says. It was changed, or made by another version.';
    case 'job-not-closed':
      return 'its job is not closed, so there is nothing to grade yet.';
    case 'introduction-has-no-score':
      return 'an introduction asks for no verdict, so it has no score.';
    default:
      return unreachable(problem);
  }
}

const FILE_PROBLEMS: Readonly<Record<string, string>> = {
  'file-not-found': 'there is no such file. Check the path.',
  'file-not-readable': 'this cannot be read or written. Check that it is a file and that you may use it.',
  'file-not-text': 'this is not UTF-8 text. Save it as UTF-8.',
  'file-too-large': 'this file is too large for what it should be. Check that it is the right one.',
  'not-a-folder': 'there is no such folder. Check the path.',
};

export function fileProblemLine(path: string, code: string): string {
  return `${path}: ${FILE_PROBLEMS[code] ?? code}`;
}

export const cliWords = {
  noSuchRig: (given: string, known: readonly string[]): string =>
    `There is no rig "${given}". Give --rig one of: ${known.join(', ')}.`,
  unknownCommand: (word: string) => `There is no command "${word}".`,
  unknownOption: (word: string) => `There is no option "${word}" for this command.`,
  optionNeedsValue: (word: string) => `The option "${word}" needs a value after it.`,
  missingFiles: 'A file is missing on the command line.',
  notClosed: 'The file of actions does not close the job, so there is no debrief and no score.',
  introductionEnds: 'An introduction asks for no verdict, so there is no debrief and no score.',
  noSuchScenario: (id: string) =>
    `no scenario "${id}" in the folder. Give the right folder with --scenarios, or its file with --scenario.`,
  holds: (file: string, score: number) => `${file}: the claimed score of ${score} holds.`,
  fails: (file: string, claimed: number, score: number) =>
    `${file}: the claimed score of ${claimed} does not hold. Sat again, it is ${score}.`,
  claimsNothing: (file: string, score: number) => `${file}: no score is claimed. Sat again, it is ${score}.`,
  cannotGrade: (file: string, why: string) => `${file}: cannot be graded: ${why}`,
} as const;
