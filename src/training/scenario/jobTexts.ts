/** Languages that a scenario file may hold its texts in. The first stands in where one is missing. */
export const JOB_LANGUAGES = ['en', 'es'] as const;
export type JobLanguage = (typeof JOB_LANGUAGES)[number];

/** A text as the file has it: plain, or by language. */
export type JobText = string | { readonly [L in JobLanguage]?: string | undefined };

/** What sentences of a scenario are in another language: each with its own, in the order of the sentences. */
export type OtherWords = Readonly<Partial<Record<JobLanguage, readonly (readonly [string, string])[]>>>;

/** The sentence that stands for a text everywhere: the English one, or the first that there is. */
export function sentenceOf(text: JobText): string {
  if (typeof text === 'string') return text;
  return text.en ?? text.es ?? '';
}

/**
 * What the texts are in other languages. A sentence that is written in another language only is its own translation there, which
 * tells that it is no English.
 */
export function otherWordsOf(texts: readonly JobText[]): OtherWords {
  const seen = new Set<string>();
  const said = texts.flatMap((text) => {
    if (typeof text === 'string') return [];
    const sentence = sentenceOf(text);
    return JOB_LANGUAGES.flatMap((language) => {
      const words = text[language];
      const key = `${language} ${sentence}`;
      if (words === undefined || words === text.en || seen.has(key)) return [];
      seen.add(key);
      return [[language, [sentence, words]] as const];
    });
  });
  return inOrder(said);
}

/** Those of the words whose sentences pass, or of several tables together. */
export function wordsAmong(
  tables: readonly (OtherWords | undefined)[],
  passes: (sentence: string) => boolean = () => true,
): OtherWords {
  const all = tables.flatMap((words) =>
    JOB_LANGUAGES.flatMap((language) => (words?.[language] ?? []).map((pair) => [language, pair] as const)),
  );
  return inOrder(all.filter(([, [sentence]]) => passes(sentence)));
}

export function areEmpty(words: OtherWords): boolean {
  return Object.keys(words).length === 0;
}

/** In an order that does not depend on where they stood, so that what was parted is put together the same. */
function inOrder(all: readonly (readonly [JobLanguage, readonly [string, string]])[]): OtherWords {
  return Object.fromEntries(
    JOB_LANGUAGES.flatMap((language) => {
      const pairs = all.filter(([of]) => of === language).map(([, pair]) => pair);
      const sorted = [...pairs].sort(([one], [other]) => (one < other ? -1 : one > other ? 1 : 0));
      return sorted.length === 0 ? [] : [[language, sorted] as const];
    }),
  );
}
