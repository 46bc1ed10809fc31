import { cliCodes } from '../text/cliCodes.ts';
import { codeTable, DRIVES } from './codeTable.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';

/** `codes`: what every fault of the catalogue makes the controller notice, from mild to worst. */
export function codes({ files, json }: CommandLine, output: Output): ExitCode {
  const [extra] = files;
  if (extra !== undefined) {
    output.err(cliCodes.takesNoFiles(extra));
    return 2;
  }
  const rows = codeTable();
  if (json) writeJson(output, { drives: DRIVES, rows });
  else for (const line of cliCodes.table(rows, DRIVES)) output.out(line);
  return 0;
}
