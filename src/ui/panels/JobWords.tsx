import { jobSentence } from '../../text/jobWords.ts';

/** A sentence of a scenario file, in the language of the page where there is one, else marked as what it is. */
export function JobWords({ of }: { readonly of: string }) {
  const { words, lang } = jobSentence(of);
  return lang === undefined ? words : <span lang={lang}>{words}</span>;
}
