import type { OtherWords } from '../training/scenario/jobTexts.ts';
import { type KeyedSentences, sentenceKey } from './sentenceKey.ts';
import { language } from './translate.ts';
import { inShownUnits } from './units.ts';
import { unveil, type Veiled } from './veil.ts';

/** Scenario files are written in English. */
const WRITTEN_IN = 'en';

/** Sentences of scenario files in other languages. */
const tables = new Map<string, JobTable>();

interface JobTable {
  readonly sentences: KeyedSentences;
  readonly veiled: Veiled;
}

/** What files say of themselves in other languages than the one that stands for a sentence: by language, then by sentence. */
const own = new Map<string, Map<string, string>>();

/** Adds what a scenario file says in several languages. */
export function addOwnWords(words: OtherWords = {}): void {
  for (const [code, pairs] of Object.entries(words)) {
    const table = own.get(code) ?? new Map<string, string>();
    own.set(code, table);
    for (const [sentence, said] of pairs ?? []) table.set(sentence, said);
  }
}

/** The language that a sentence is written in: one that it is its own translation in, or the usual one. */
function writtenIn(sentence: string): string {
  for (const [code, table] of own) if (table.get(sentence) === sentence) return code;
  return WRITTEN_IN;
}

/** A sentence of a job, with the language it is in where that is not the page's. */
export interface JobSentence {
  readonly words: string;
  readonly lang: string | undefined;
}

/**
 * Adds what sentences of scenario files are in a language, to those that it has. A sentence that was changed since has no
 * translation any more.
 */
export function addJobSentences(code: string, sentences: JobTable['sentences'], veiled: Veiled = {}): void {
  const before = tables.get(code);
  tables.set(code, {
    sentences: { ...before?.sentences, ...sentences },
    veiled: { ...before?.veiled, ...veiled },
  });
}

/**
 * A sentence of a scenario file in the present units and language: as the file itself has it, else as somebody translated it,
 * else in the language it is written in.
 */
export function jobSentence(written: string): JobSentence {
  const now = language();
  const said = own.get(now.slice(0, 2))?.get(written);
  if (said !== undefined) return { words: inShownUnits(said), lang: undefined };
  const lang = writtenIn(written);
  if (now === WRITTEN_IN || lang !== WRITTEN_IN)
    return { words: inShownUnits(written), lang: lang === now ? undefined : lang };
  const table = tables.get(now);
  const words = table?.sentences[sentenceKey(written)] ?? (table && unveil(table.veiled, written));
  return words === undefined
    ? { words: inShownUnits(written), lang: WRITTEN_IN }
    : { words: inShownUnits(words), lang: undefined };
}
