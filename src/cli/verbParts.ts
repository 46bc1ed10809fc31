import { err, ok, type Result } from '../base/Result.ts';
import type { SittingAction } from '../training/sitting/SittingAction.ts';
import type { ScriptProblem, ScriptStep } from './ScriptStep.ts';

/** The pieces that verbs of action files are made of. */

export type LineFault = Omit<ScriptProblem, 'line'>;
export type Parsed = Result<ScriptStep, LineFault>;
/** What a line says after its first word. */
export type Verb = (words: readonly string[]) => Parsed;

/** A hand needs about a second for one thing on the bench. Common practice, no source. */
const HAND_SECONDS = 1;

export const act = (action: SittingAction, handSeconds = HAND_SECONDS): Parsed =>
  ok({ kind: 'act', action, handSeconds });
export const shape = (verb: string, allowed: string): { ok: false; error: LineFault } =>
  err({ code: 'wrong-shape', found: verb, allowed });

export const ON_OFF = ['on', 'off'] as const;

/** One of a closed list of words. */
export function oneOf<T extends string>(
  allowed: readonly T[],
  found: string,
  then: (word: T) => Parsed,
): Parsed {
  const word = allowed.find((candidate) => candidate === found);
  return word === undefined ? err({ code: 'unknown-word', found, allowed: allowed.join(', ') }) : then(word);
}

export function numberIn(low: number, high: number, found: string, then: (value: number) => Parsed): Parsed {
  const value = /^\d+(\.\d+)?$/.test(found) ? Number(found) : Number.NaN;
  if (value >= low && value <= high) return then(value);
  return err({ code: 'bad-number', found, allowed: `${low} to ${high}` });
}

export function wholeIn(low: number, high: number, found: string, then: (value: number) => Parsed): Parsed {
  return numberIn(low, high, found, (value) =>
    Number.isInteger(value) ? then(value) : err({ code: 'bad-number', found, allowed: `${low} to ${high}` }),
  );
}

/** A verb with a fixed number of words, some of which are only there to be read. */
export function fixed(
  verb: string,
  usage: string,
  count: number,
  parse: (words: readonly string[]) => Parsed,
): Verb {
  return (words) => (words.length === count ? parse(words) : shape(verb, usage));
}

export const bare = (verb: string, action: SittingAction, handSeconds = HAND_SECONDS): Verb =>
  fixed(verb, verb, 0, () => act(action, handSeconds));

/** A verb with one word after it, out of a closed list. `usage` shows the line; its first word is the verb. */
export function choice<T extends string>(
  usage: string,
  allowed: readonly T[],
  action: (word: T) => SittingAction,
): Verb {
  return fixed(usage.split(' ')[0] ?? usage, usage, 1, ([word = '']) =>
    oneOf(allowed, word, (chosen) => act(action(chosen))),
  );
}
