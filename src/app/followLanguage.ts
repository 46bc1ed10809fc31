import { effect, type Signal, signal } from '@preact/signals';
import type { Settings } from '../platform/browser/settings.ts';
import { addJobSentences } from '../text/jobWords.ts';
import { addLanguage, type Catalogue, heedLanguage, setLanguage } from '../text/translate.ts';
import type { Trouble } from '../ui/panels/Shop.ts';

type Language = Settings['language'];

/** Regional tags: they choose the decimal sign and the dates. North American trade Spanish writes the point. */
const TAGS: Readonly<Record<Language, string>> = { en: 'en', es: 'es-US' };

const FETCH_FAILED = 'troubles.no-spanish';

/** Catalogues that are fetched when their language is asked for; English is part of the program. */
const FETCH: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Catalogue>>> = {
  es: async () => {
    const [{ catalogue }, { jobSentences, veiledSentences }] = await Promise.all([
      import('../text/es/catalogue.ts'),
      import('virtual:spanish-jobs'),
    ]);
    addJobSentences(TAGS.es, jobSentences, veiledSentences);
    return catalogue;
  },
};

/**
 * Keeps the page in the language of the settings: sentences, `<html lang>`, and everything that was drawn from them.
 * A catalogue that cannot be fetched leaves the page as it is, sets the setting back, and says so. Resolves when the
 * first language stands, so that nothing is drawn in another before.
 */
export function followLanguage(
  settings: Signal<Settings>,
  trouble: Signal<Trouble | null>,
  fetchers: typeof FETCH = FETCH,
): Promise<void> {
  const spoken = signal<Language>('en');
  heedLanguage(() => void spoken.value);
  const have = new Set<Language>(['en']);

  const turn = async (wanted: Language): Promise<void> => {
    if (wanted !== 'en' && !have.has(wanted)) {
      try {
        addLanguage(TAGS[wanted], await fetchers[wanted]());
        have.add(wanted);
      } catch {
        if (settings.peek().language !== wanted) return;
        settings.value = { ...settings.peek(), language: spoken.peek() };
        trouble.value = {
          key: FETCH_FAILED,
          offers: [{ label: 'troubles.reload', run: () => location.reload() }],
        };
        return;
      }
    }
    // While it was fetched another may have been chosen.
    if (settings.peek().language !== wanted) return;
    await setLanguage(TAGS[wanted]);
    document.documentElement.lang = TAGS[wanted];
    spoken.value = wanted;
    if (trouble.peek()?.key === FETCH_FAILED) trouble.value = null;
  };

  let first: Promise<void> = Promise.resolve();
  effect(() => {
    const { language } = settings.value;
    if (language !== spoken.peek()) first = turn(language);
  });
  return first;
}
