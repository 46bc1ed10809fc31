import { jobSentence } from '../../text/jobWords.ts';
import { keepUnits } from './keepUnits.ts';

/** A sentence of a scenario file, in the language of the page where there is one, else marked as what it is. */
export function JobWords({ of }: { readonly of: string }) {
  const { words, lang } = jobSentence(of);
  const kept = keepUnits(words);
  return lang === undefined ? kept : <span lang={lang}>{kept}</span>;
}
