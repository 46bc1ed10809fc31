import type { JobFileProblem } from '../training/handout/JobFile.ts';
import { describeProblem } from './describeProblem.ts';
import { kibibytes } from './kibibytes.ts';
import { shownCharacters } from './shownCharacters.ts';
import { say } from './translate.ts';

/** What is wrong with a file that was handed out: one sentence with its fix, or one for each problem of a scenario file. */
export function describeJobFile(problem: JobFileProblem): readonly string[] {
  switch (problem.code) {
    case 'scenario':
      return problem.problems.map((one) => {
        const where = say('jobFiles.at', { line: one.line, column: one.column });
        const what = describeProblem(one);
        return shownCharacters(`${where}: ${one.path === '' ? '' : `${one.path}: `}${what}`);
      });
    case 'job-file-too-large': {
      return [
        say('jobFiles.problems.job-file-too-large', {
          size: kibibytes(problem.bytes),
          limit: kibibytes(problem.limit),
        }),
      ];
    }
    default:
      return [say(`jobFiles.problems.${problem.code}`)];
  }
}

/** The same of a file that was chosen in a browser, which may not even be read. */
export function describeGivenFile(problem: GivenFileProblem): readonly string[] {
  switch (problem.code) {
    case 'job-file-not-read':
    case 'job-file-stopped':
      return [say(`jobFiles.problems.${problem.code}`)];
    default:
      return describeJobFile(problem);
  }
}

type GivenFileProblem =
  | JobFileProblem
  | { readonly code: 'job-file-not-read' }
  | { readonly code: 'job-file-stopped' };

/** Why an answer to what a sealed file asks for will not do. */
export function describeAnswer(
  problem:
    | { readonly code: 'class-code-unfit' | 'class-code-wrong' }
    | { readonly code: 'seat-unfit'; readonly seats: number },
): string {
  return problem.code === 'seat-unfit'
    ? say('jobFiles.problems.seat-unfit', { seats: problem.seats })
    : say(`jobFiles.problems.${problem.code}`);
}
