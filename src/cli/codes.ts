import { faultById } from '../sim/faults/catalogue.ts';
import { rigNamed } from '../sim/rigs/rigs.ts';
import { cliCodes } from '../text/cliCodes.ts';
import { codeRows, codeTable, DRIVES } from './codeTable.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { rigOption } from './rigOption.ts';

/** `codes [FAULT…]`: what the faults named, or all of the catalogue, make the controller notice, from mild to worst. */
export function codes({ files: names, json, options }: CommandLine, output: Output): ExitCode {
  const unknown = names.find((name) => faultById(name) === undefined);
  if (unknown !== undefined) {
    output.err(cliCodes.noSuchFault(unknown));
    return 2;
  }
  const named = rigOption(options['--rig'], output);
  if (named === null) return 2;
  const { faults: all } = rigNamed(named);
  const faults = names.length === 0 ? all : all.filter(({ id }) => names.includes(id));
  if (json) {
    writeJson(output, { drives: DRIVES, rows: codeTable(faults, named) });
    return 0;
  }
  for (const line of cliCodes.heading(DRIVES)) output.out(line);
  // Row by row, for every one is a truck driven.
  for (const row of codeRows(faults, named)) output.out(cliCodes.line(row));
  return 0;
}
