import type { JobFileProblem } from '../training/handout/JobFile.ts';
import { scenarioProblemLine } from './cli.ts';
import { fixed } from './format.ts';
import { say } from './translate.ts';

/** What is wrong with a file that was handed out: one sentence with its fix, or one for each problem of a scenario file. */
export function describeJobFile(problem: JobFileProblem): readonly string[] {
  switch (problem.code) {
    case 'scenario':
      return problem.problems.map(scenarioProblemLine);
    case 'job-file-too-large': {
      const kilobytes = (bytes: number): string => fixed(Math.ceil(bytes / 1000), 0);
      return [
        say('jobFiles.problems.job-file-too-large', {
          size: kilobytes(problem.bytes),
          limit: kilobytes(problem.limit),
        }),
      ];
    }
    default:
      return [say(`jobFiles.problems.${problem.code}`)];
  }
}
