import { SET_UPS } from '../sim/rigs/standardTests/setUps.ts';
import { STANDARD_TESTS } from '../sim/rigs/standardTests/standardTests.ts';
import { testMinutes } from '../sim/rigs/standardTests/testMinutes.ts';
import { cliTests, type TestLine } from '../text/cliTests.ts';
import { standardProcedure } from '../text/standardProcedure.ts';
import { bookMinutes } from '../training/sitting/book.ts';
import type { CommandLine } from './commandLine.ts';
import { type ExitCode, type Output, writeJson } from './Output.ts';

/** `tests [TEST…]`: the standard tests with what they cost, or the written procedures of those named. */
export function tests({ files: names, json }: CommandLine, output: Output): ExitCode {
  const unknown = names.find((name) => !STANDARD_TESTS.some(({ id }) => id === name));
  if (unknown !== undefined) {
    output.err(cliTests.noSuchTest(unknown));
    return 2;
  }
  const lines: readonly TestLine[] = STANDARD_TESTS.filter(
    ({ id }) => names.length === 0 || names.includes(id),
  ).map((test) => ({ test, setUp: SET_UPS[test.prepares], minutes: testMinutes(test, bookMinutes) }));
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
