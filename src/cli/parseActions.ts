import { err, ok, type Result } from '../base/Result.ts';
import type { ScriptLine, ScriptProblem } from './ScriptStep.ts';
import type { LineFault } from './verbParts.ts';
import { VERBS } from './verbs.ts';

/** Longest action file, characters: some tens of thousands of lines. */
const MAX_CHARS = 1024 * 1024;

/** Reads an action file: one action a line, `#` begins a comment. Errors: every bad line at once. */
export function parseActions(text: string): Result<readonly ScriptLine[], readonly ScriptProblem[]> {
  if (text.length > MAX_CHARS) {
    return err([{ line: 1, code: 'too-large', found: `${text.length}`, allowed: `${MAX_CHARS}` }]);
  }
  const lines: ScriptLine[] = [];
  const problems: ScriptProblem[] = [];
  text.split(/\r?\n/).forEach((raw, index) => {
    const line = index + 1;
    const words = wordsOf(raw);
    if (words === null) {
      problems.push({ line, code: 'open-quote', found: raw.trim(), allowed: '"' });
      return;
    }
    const [verb, ...rest] = words;
    if (verb === undefined) return;
    const parse = Object.hasOwn(VERBS, verb) ? VERBS[verb] : undefined;
    if (parse === undefined) {
      problems.push({ line, code: 'unknown-verb', found: verb, allowed: Object.keys(VERBS).join(', ') });
      return;
    }
    const parsed: Result<ScriptLine['step'], LineFault> = parse(rest);
    if (parsed.ok) lines.push({ line, text: raw.trim(), step: parsed.value });
    else problems.push({ line, ...parsed.error });
  });
  return problems.length > 0 ? err(problems) : ok(lines);
}

/** Words of a line; a text in double quotes is one word. Null when a quote is left open. */
function wordsOf(line: string): string[] | null {
  const words: string[] = [];
  const pattern = /\s*(?:"([^"]*)"|(#.*)|([^\s"#]+)|("))/gy;
  for (let match = pattern.exec(line); match !== null; match = pattern.exec(line)) {
    const [, quoted, comment, word, open] = match;
    if (open !== undefined) return null;
    if (comment !== undefined) break;
    words.push(quoted ?? word ?? '');
  }
  return words;
}
