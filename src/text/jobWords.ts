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
 * A sentence of a scenario file in the present units and language, or in the language it is written in where nobody
 * has translated it.
 */
export function jobSentence(written: string): JobSentence {
  const now = language();
  if (now === WRITTEN_IN) return { words: inShownUnits(written), lang: undefined };
  const table = tables.get(now);
  const words = table?.sentences[sentenceKey(written)] ?? (table && unveil(table.veiled, written));
  return words === undefined
    ? { words: inShownUnits(written), lang: WRITTEN_IN }
    : { words: inShownUnits(words), lang: undefined };
}
