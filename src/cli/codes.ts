import { FAULTS, faultById } from '../sim/faults/catalogue.ts';
import { cliCodes } from '../text/cliCodes.ts';
import { codeRows, codeTable, DRIVES } from './codeTable.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';

/** `codes [FAULT…]`: what the faults named, or all of the catalogue, make the controller notice, from mild to worst. */
export function codes({ files: names, json }: CommandLine, output: Output): ExitCode {
  const unknown = names.find((name) => faultById(name) === undefined);
  if (unknown !== undefined) {
    output.err(cliCodes.noSuchFault(unknown));
    return 2;
  }
  const faults = names.length === 0 ? FAULTS : FAULTS.filter(({ id }) => names.includes(id));
  if (json) {
    writeJson(output, { drives: DRIVES, rows: codeTable(faults) });
    return 0;
  }
  for (const line of cliCodes.heading(DRIVES)) output.out(line);
  // Row by row, for every one is a truck driven.
  for (const row of codeRows(faults)) output.out(cliCodes.line(row));
  return 0;
}
