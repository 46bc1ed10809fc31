import { effect, type Signal, signal } from '@preact/signals';
import type { Settings } from '../platform/browser/settings.ts';
import { addJobSentences } from '../text/jobWords.ts';
import { addLanguage, type Catalogue, heedLanguage, setLanguage } from '../text/translate.ts';
import type { Trouble } from '../ui/panels/Shop.ts';

type Language = Settings['language'];

/** Regional tags: they choose the decimal sign and the dates. North American trade Spanish writes the point. */
const TAGS: Readonly<Record<Language, string>> = { en: 'en', es: 'es-US' };

const FETCH_FAILED = 'troubles.no-spanish';

/** A language that is fetched when it is asked for, in two parts. English is part of the program. */
interface FetchedLanguage {
  /** What is said before a job is opened. */
  board(): Promise<Partial<Catalogue>>;
  /** Everything. */
  whole(): Promise<Catalogue>;
}
type Part = keyof FetchedLanguage;
type Fetchers = Readonly<Record<Exclude<Language, 'en'>, FetchedLanguage>>;

const FETCH: Fetchers = {
  es: {
    board: async () => {
      const [{ firstScreen }, { boardSentences }] = await Promise.all([
        import('../text/es/firstScreen.ts'),
        import('virtual:spanish-board'),
      ]);
      addJobSentences(TAGS.es, boardSentences);
      return firstScreen;
    },
    whole: async () => {
      const [{ catalogue }, { jobSentences, veiledSentences }] = await Promise.all([
        import('../text/es/catalogue.ts'),
        import('virtual:spanish-jobs'),
      ]);
      addJobSentences(TAGS.es, jobSentences, veiledSentences);
      return catalogue;
    },
  },
};

/** The sentences of the page's language. */
export interface Sentences {
  /** Settles when the board can be drawn in the language of the settings, so that nothing is drawn in another before. */
  readonly board: Promise<void>;
  /** Settles when everything can be said in it, and from now on no other language is turned to before it can. */
  whole(): Promise<void>;
  /** Fetches all of it ahead of its use; whoever is offline fetches it with the job. */
  ahead(): void;
}

/**
 * Keeps the page in the language of the settings: sentences, `<html lang>`, and everything that was drawn from them.
 * A language that cannot be fetched leaves the page as it is, sets the setting back, and says so.
 */
export function followLanguage(
  settings: Signal<Settings>,
  trouble: Signal<Trouble | null>,
  fetchers: Fetchers = FETCH,
): Sentences {
  const spoken = signal<Language>('en');
  heedLanguage(() => void spoken.value);
  const fetch = fetchedOnce(fetchers);
  /** What a language needs to be turned to. */
  let needed: readonly Part[] = ['board'];

  const turn = async (wanted: Language): Promise<void> => {
    try {
      await fetch(wanted, needed);
    } catch {
      if (settings.peek().language !== wanted) return;
      settings.value = { ...settings.peek(), language: spoken.peek() };
      trouble.value = {
        key: FETCH_FAILED,
        offers: [{ label: 'troubles.reload', run: () => location.reload() }],
      };
      return;
    }
    // While it was fetched another may have been chosen.
    if (settings.peek().language !== wanted) return;
    await setLanguage(TAGS[wanted]);
    document.documentElement.lang = TAGS[wanted];
    spoken.value = wanted;
    if (trouble.peek()?.key === FETCH_FAILED) trouble.value = null;
  };

  let board: Promise<void> = Promise.resolve();
  effect(() => {
    const { language } = settings.value;
    if (language !== spoken.peek()) board = turn(language);
  });
  const whole = (): Promise<void> => fetch(settings.peek().language, ['board', 'whole']);
  return {
    board,
    whole: () => {
      needed = ['board', 'whole'];
      return whole();
    },
    ahead: () => void whole().catch(() => {}),
  };
}

/** Fetches parts of a language and adds them, each once; one that did not come is fetched again the next time. */
function fetchedOnce(fetchers: Fetchers): (wanted: Language, parts: readonly Part[]) => Promise<void> {
  const coming = new Map<string, Promise<void>>();
  const one = (wanted: Exclude<Language, 'en'>, part: Part): Promise<void> => {
    const name = `${wanted} ${part}`;
    const begun =
      coming.get(name) ?? fetchers[wanted][part]().then((sentences) => addLanguage(TAGS[wanted], sentences));
    coming.set(name, begun);
    begun.catch(() => coming.delete(name));
    return begun;
  };
  return async (wanted, parts) => {
    if (wanted !== 'en') await Promise.all(parts.map((part) => one(wanted, part)));
  };
}
