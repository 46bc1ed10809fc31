import { err, ok, type Result } from '../base/Result.ts';
import { cliWords } from '../text/cli.ts';

export interface CommandLine {
  readonly files: readonly string[];
  readonly json: boolean;
  /** Of an option that was given more than once, the last. */
  readonly options: Readonly<Record<string, string>>;
  /** Every value that was given to an option, in order. */
  readonly every?: Readonly<Record<string, readonly string[]>>;
  /** Options without a value that were given. */
  readonly flags: readonly string[];
}

/** Splits the words after the command. `valued` are the options that take a value, `bare` those that take none. Errors: a sentence. */
export function readCommandLine(
  words: readonly string[],
  valued: readonly string[],
  bare: readonly string[] = [],
): Result<CommandLine, string> {
  const files: string[] = [];
  const options: Record<string, string> = {};
  const every: Record<string, readonly string[]> = {};
  const flags: string[] = [];
  let json = false;
  for (let i = 0; i < words.length; i++) {
    const word = words[i] ?? '';
    if (word === '--json') json = true;
    else if (valued.includes(word)) {
      const value = words[++i];
      if (value === undefined) return err(cliWords.optionNeedsValue(word));
      options[word] = value;
      every[word] = [...(every[word] ?? []), value];
    } else if (bare.includes(word)) flags.push(word);
    else if (word.startsWith('--')) return err(cliWords.unknownOption(word));
    else files.push(word);
  }
  return ok({ files, json, options, every, flags });
}
