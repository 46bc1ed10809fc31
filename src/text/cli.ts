import { unreachable } from '../base/assert.ts';
import type { ScenarioProblem } from '../training/scenario/ScenarioProblem.ts';
import type { TimelineProblem } from '../training/score/Timeline.ts';
import type { RecordProblem } from '../training/sitting/parseRecord.ts';
import { say } from './translate.ts';

/** Sentences of the command line: what is wrong, and what to do about it. */

export const USAGE = `known-good: practise proving a part bad.

  known-good check SCENARIO… [--form | --seeds N] [--json]
      says whether scenario files are in order, and whether each job is fit to give out: its plan, what it can be taken
      for, how simulated learners fare under N seeds, and what to mend (seconds a job); with --form the files alone
  known-good play SCENARIO ACTIONS [--json] [--record FILE]
      does a file of actions on a scenario; prints what was seen, then the debrief; keeps the record
  known-good grade RECORD… [--json] [--scenarios DIR]
      sits records again and says whether the score they claim holds
  known-good codes [FAULT…] [--json]
      drives a truck with each fault of the catalogue, or those named, and prints the codes that come of it
  known-good tests [TEST…] [--json]
      lists the standard tests with their minutes and money, or prints the procedures of those named
  known-good calibration [--sittings N | --live N] [--json]
      random sittings by standard tests, and how often what the evidence claimed was true, weighed by the kept tables
      (3 minutes for 1000), or with --live as the score does it (some seconds each)
  known-good validity [SCENARIO…] [--seeds N] [--json]
      simulated learners sit the scenarios, all that are shipped unless told otherwise: how well their scores tell them
      apart, and where they do not (minutes)
  known-good schema [--out FILE]
      writes the JSON Schema of scenario files, by which an editor completes and checks them
  known-good tables [--out FILE]
      works every standard test on every suspect and keeps what comes of it, for the version of the rig at hand (minutes)

Exit: 0 all well, 1 a claim does not hold or a job cannot be graded, 2 a file or a command is wrong.
How to write scenarios and actions: scenarios/README.md`;

const FORMS: Readonly<Record<string, string>> = {
  slug: 'small letters, digits and single hyphens, as in torn-hose-2',
  'trouble-code':
    'a letter P, B, C or U and four hexadecimal digits, in quotes where YAML would read a number: "P0456"',
};

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'a group of keys',
};

/** One problem of a scenario file as `file:line:column: what is wrong; the fix`. */
export function scenarioProblemLine(problem: ScenarioProblem): string {
  const place = `${problem.file}:${problem.line}:${problem.column}`;
  const line = `${place}: ${problem.path === '' ? '' : `${problem.path}: `}${scenarioProblemText(problem)}`;
  return line.replaceAll(/[\p{C}\p{Zl}\p{Zp}]/gu, shown);
}

/** Stands for a character that would not show, or that would steer the terminal. */
function shown(character: string): string {
  return `<U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}>`;
}

function scenarioProblemText({ code, values }: ScenarioProblem): string {
  switch (code) {
    case 'too-large':
      return `the file has ${values.bytes} bytes. Keep it below ${values.limit}.`;
    case 'not-text':
      return 'this is not text in UTF-8. Save the file as plain text, in UTF-8.';
    case 'yaml-syntax':
      return `this is not YAML (${values.detail}). Check quotes, colons and indents here and on the line above.`;
    case 'nested-too-deep':
      return 'this is nested far too deep. A scenario needs six levels at most.';
    case 'brackets-closed':
      return 'brackets are closed here that were never opened. Remove them, or quote the text.';
    case 'several-documents':
      return 'a second document begins here. Keep one scenario in a file; remove the line "---".';
    case 'alias-not-allowed':
      return 'anchors (&) and aliases (*) are not allowed. Write the text out, or quote it if it begins with & or *.';
    case 'tag-not-allowed':
      return 'tags (!) are not allowed. Remove it, or quote the text if it begins with an exclamation mark.';
    case 'directive-not-allowed':
      return 'lines that begin with % are not allowed. Remove it, or quote the text.';
    case 'key-not-a-word':
      return 'a key must be one plain word before a colon. Write one, or quote the text if this was to be text.';
    case 'hidden-character':
      return `a character stands here that does not show (${values.character}). Delete it, or type the text anew.`;
    case 'unreadable-character':
      return 'a character here was lost (U+FFFD). Type it anew, and save the file as UTF-8.';
    case 'format-missing':
      return `the file does not say its format. Add "format: ${values.newest}".`;
    case 'format-newer':
      return `this file is of format ${values.found}, and this version of the program reads up to format ${values.newest}. Use a version that reads format ${values.found}.`;
    case 'format-unknown':
      return values.oldest === values.newest
        ? `there is no such format. Write "format: ${values.newest}".`
        : `there is no such format. Write a number from ${values.oldest} to ${values.newest}; a new file has "format: ${values.newest}".`;
    case 'duplicate-key':
      return `the key "${values.key}" stands twice. Remove one of the two.`;
    case 'not-a-map':
      return 'this is not a scenario. Begin with "format: 1" and the other keys, one a line.';
    case 'unknown-key':
      return `there is no key "${values.key}" here. Check its spelling, or remove it.`;
    case 'missing-key':
      return `the key "${values.key}" is missing. Add it.`;
    case 'wrong-type':
      return `found ${values.found}, but ${KINDS[String(values.expected)] ?? values.expected} belongs here. ${values.found === 'nothing' ? 'Write it.' : values.expected === 'string' ? 'Put text in quotes.' : 'Change it.'}`;
    case 'not-finite':
      return `${values.found} is not a number to work with. Write a plain number.`;
    case 'number-not-plain':
      return `${values.found} is read differently by different programs. Write a plain decimal number, without a zero ahead.`;
    case 'not-one-of':
      return `"${values.found}" is none of the words for this place. Use one of: ${values.allowed}.`;
    case 'number-too-small':
      return `${values.found} is too small. Use ${values.least} or more.`;
    case 'number-too-large':
      return `${values.found} is too large. Use ${values.most} or less.`;
    case 'not-a-whole-number':
      return `${values.found} is not a whole number. Round it.`;
    case 'text-too-long':
      return `this text is too long. Keep it to ${values.most} characters.`;
    case 'text-empty':
      return 'this text is empty. Write it.';
    case 'bad-form':
      return `"${values.found}" has not the form wanted here. Use ${FORMS[String(values.form)] ?? values.form}.`;
    case 'list-too-short':
      return `this list needs ${values.least} or more. Add to it.`;
    case 'list-too-long':
      return `this list is too long. Keep it to ${values.most}.`;
    case 'empty-condition':
      return 'this condition is empty, so it would always hold. Say what shows that the step is done.';
    case 'unknown-fault':
      return `there is no fault "${values.fault}". Use one of: ${values.known}.`;
    case 'duplicate-fault':
      return `the fault "${values.fault}" is listed twice. Remove one of the two.`;
    case 'severity-missing':
      return `the fault "${values.fault}" can be mild or bad. Add "severity:" from 0 (mildest) to 1 (worst).`;
    case 'severity-not-used':
      return `the fault "${values.fault}" is there or not; it has no degrees. Remove "severity:".`;
    case 'fault-not-at-start':
      return `the fault "${values.fault}" is damage that only a hand on the bench can do. Choose one that can be there when the job begins.`;
    case 'variants-not-allowed':
      return `the steps of a job of mode "${values.mode}" speak of one truck, so it has no variants and no ranges. Remove this, or change the mode.`;
    case 'range-not-upwards':
      return `severity runs from ${values.from} to ${values.to}, which is no way up. Make "severity-to:" the larger of the two, or remove it.`;
    case 'when-moved-not-allowed':
      return `the fault "${values.fault}" does not come and go with the harness. Remove "when-moved:", or use one of: ${values.allowed}.`;
    case 'root-not-listed':
      return `the root "${values.root}" is not in the list of faults. Add "- fault: ${values.root}" to it.`;
    case 'not-a-root':
      return `"${values.root}" is no root cause. Use one of: ${values.allowed}, or remove "root:".`;
    case 'faults-in-introduction':
      return `an introduction asks for no verdict, so its truck must be sound. Write "${values.list}: []", or change the mode.`;
    case 'steps-missing':
      return `a job of mode "${values.mode}" needs its steps. Add "walkthrough:" with a list of steps, or change the mode.`;
    case 'steps-not-allowed':
      return `a job of mode "${values.mode}" has no steps. Remove "walkthrough:", or make the mode walkthrough or introduction.`;
    case 'duplicate-step':
      return `two steps have the id "${values.id}". Give one of them another.`;
    case 'not-in-introduction':
      return `an introduction has no verdict and no score, so there is no "${values.key}" in it. Remove it, or change the mode.`;
    case 'weights-sum':
      return `these weights make ${values.sum} together, and must make ${values.all}. Give ${values.off} ${values.way} to one of them.`;
    case 'limits-empty':
      return 'these limits limit nothing. Add "minutes:", "dollars:" or both, or remove "limits:".';
    case 'more-problems':
      return `there are ${values.count} more problems. Mend these first.`;
    default:
      return unreachable(code);
  }
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
      return 'it was made on another scenario, or on another edition of it. Give the folder that holds that one with --scenarios.';
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
  unknownCommand: (word: string) => `There is no command "${word}".`,
  unknownOption: (word: string) => `There is no option "${word}" for this command.`,
  optionNeedsValue: (word: string) => `The option "${word}" needs a value after it.`,
  missingFiles: 'A file is missing on the command line.',
  notClosed: 'The file of actions does not close the job, so there is no debrief and no score.',
  introductionEnds: 'An introduction asks for no verdict, so there is no debrief and no score.',
  noSuchScenario: (id: string) =>
    `no scenario "${id}" in the folder. Give the right folder with --scenarios.`,
  holds: (file: string, score: number) => `${file}: the claimed score of ${score} holds.`,
  fails: (file: string, claimed: number, score: number) =>
    `${file}: the claimed score of ${claimed} does not hold. Sat again, it is ${score}.`,
  claimsNothing: (file: string, score: number) => `${file}: no score is claimed. Sat again, it is ${score}.`,
  cannotGrade: (file: string, why: string) => `${file}: cannot be graded: ${why}`,
} as const;
