import { FIRST_RIG, rigNamed } from '../sim/rigs/rigs.ts';
import { SET_UPS } from '../sim/rigs/standardTests/setUps.ts';
import { testMinutes } from '../sim/rigs/standardTests/testMinutes.ts';
import { cliTests, type TestLine } from '../text/cliTests.ts';
import { standardProcedure } from '../text/standardProcedure.ts';
import { speakOfRig } from '../text/translate.ts';
import { bookMinutes } from '../training/sitting/book.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';
import { rigOption } from './rigOption.ts';

/** `tests [TEST…]`: the standard tests with what they cost, or the written procedures of those named. */
export function tests({ files: names, json, options }: CommandLine, output: Output): ExitCode {
  const named = rigOption(options['--rig'], output);
  if (named === null) return 2;
  speakOfRig(named === FIRST_RIG ? undefined : named);
  const all = rigNamed(named).tests;
  const unknown = names.find((name) => !all.some(({ id }) => id === name));
  if (unknown !== undefined) {
    output.err(cliTests.noSuchTest(unknown));
    return 2;
  }
  const lines: readonly TestLine[] = all
    .filter(({ id }) => names.length === 0 || names.includes(id))
    .map((test) => ({ test, setUp: SET_UPS[test.prepares], minutes: testMinutes(test, bookMinutes) }));
  if (json) {
    writeJson(
      output,
      lines.map(({ test, setUp, minutes }) => ({
        ...test,
        minutes,
        written: standardProcedure(test, setUp),
      })),
    );
  } else if (names.length === 0) {
    for (const text of [...cliTests.heading(lines.length), ...lines.map(cliTests.line)]) output.out(text);
  } else {
    for (const text of lines.flatMap((one, i) => [...(i > 0 ? [''] : []), ...cliTests.sheet(one)]))
      output.out(text);
  }
  return 0;
}
