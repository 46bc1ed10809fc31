import { fnv1a32 } from '../base/hash.ts';

/** Sentences in another language, each under the key of what it translates. */
export type KeyedSentences = Readonly<Record<string, string>>;

/** A short name of a sentence as it is written: the page fetches a translation without the English a second time. */
export function sentenceKey(written: string): string {
  return fnv1a32(written).toString(36);
}

/** Translations by the sentence as it is written, put under keys. Errors: throws where two sentences have the same. */
export function keyed(translated: Readonly<Record<string, string>>): KeyedSentences {
  const pairs = Object.entries(translated).map(([written, words]) => [sentenceKey(written), words] as const);
  const table = Object.fromEntries(pairs);
  if (Object.keys(table).length !== pairs.length)
    throw new Error('two sentences of the jobs have the same key');
  return table;
}
