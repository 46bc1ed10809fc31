import { fileURLToPath } from 'node:url';
import { cliWords, USAGE } from '../text/cli.ts';
import { calibration } from './calibration.ts';
import { check } from './check.ts';
import { codes } from './codes.ts';
import { readCommandLine } from './commandLine.ts';
import { grade } from './grade.ts';
import type { ExitCode, Output } from './Output.ts';
import { play } from './play.ts';
import { schema } from './schema.ts';
import { seal } from './seal.ts';
import { tables } from './tables.ts';
import { tests } from './tests.ts';
import { validity } from './validity.ts';
import { variants } from './variants.ts';

const SHIPPED = fileURLToPath(new URL('../../scenarios/', import.meta.url));
const OPTIONS: Readonly<Record<string, readonly string[]>> = {
  check: ['--seeds'],
  play: ['--record', '--class-code', '--seat'],
  grade: ['--scenarios', '--scenario', '--class-code'],
  seal: ['--class-code', '--seats', '--out'],
  variants: ['--class-code', '--seats'],
  codes: ['--rig'],
  tests: ['--rig'],
  calibration: ['--sittings', '--live'],
  schema: ['--out'],
  tables: ['--out', '--rig'],
  validity: ['--seeds'],
};
const FLAGS: Readonly<Record<string, readonly string[]>> = { check: ['--form'] };

/** Does what the words of a command line ask for. */
export function runCommand(words: readonly string[], output: Output): ExitCode | Promise<ExitCode> {
  const [command, ...rest] = words;
  if (command === undefined || command === 'help' || command === '--help') {
    output.out(USAGE);
    return command === undefined ? 2 : 0;
  }
  const valued = Object.hasOwn(OPTIONS, command) ? OPTIONS[command] : undefined;
  const line = valued === undefined ? null : readCommandLine(rest, valued, FLAGS[command]);
  if (line === null || !line.ok) {
    output.err(line === null ? cliWords.unknownCommand(command) : line.error);
    output.err(USAGE);
    return 2;
  }
  switch (command) {
    case 'check':
      return check(line.value, output);
    case 'play':
      return play(line.value, output);
    case 'codes':
      return codes(line.value, output);
    case 'calibration':
      return calibration(line.value, output);
    case 'seal':
      return seal(line.value, output);
    case 'variants':
      return variants(line.value, output);
    case 'schema':
      return schema(line.value, output);
    case 'tables':
      return tables(line.value, output);
    case 'tests':
      return tests(line.value, output);
    case 'validity':
      return validity(line.value, SHIPPED, output);
    default:
      return grade(line.value, SHIPPED, output);
  }
}
