import { effect, type Signal, signal } from '@preact/signals';
import type { Settings } from '../platform/browser/settings.ts';
import { heedLanguage, setLanguage } from '../text/translate.ts';
import type { Trouble } from '../ui/panels/Shop.ts';
import {
  FETCHED_LANGUAGES,
  type FetchedLanguage,
  type Language,
  type Languages,
  TAGS,
} from './fetchedLanguages.ts';

const NOT_FETCHED = { en: 'troubles.no-english', es: 'troubles.no-spanish' } as const;

type Part = keyof FetchedLanguage;

/**
 * The sentences of the page's language, as far as they are asked for. Each part settles when it can be said, and from now on no other
 * language is turned to before that can be said in it too.
 */
export interface Sentences {
  /** Settles when the board can be drawn in the language of the settings, so that nothing is drawn in another before. */
  readonly board: Promise<void>;
  /** The bench as it stands, with what the job says of itself. */
  job(id: string): Promise<void>;
  /** Everything that is said of a job. */
  whole(): Promise<void>;
  /** All of it and the back room. */
  backRoom(): Promise<void>;
  /** Fetches the bench's ahead of their use; whoever is offline fetches them with the job. */
  ahead(): void;
}

/**
 * Keeps the page in the language of the settings: sentences, `<html lang>`, and everything that was drawn from them.
 * A language that cannot be fetched leaves the page as it is, sets the setting back, and says so.
 */
export function followLanguage(
  settings: Signal<Settings>,
  trouble: Signal<Trouble | null>,
  languages: Languages = FETCHED_LANGUAGES,
): Sentences {
  const spoken = signal<Language>('en');
  heedLanguage(() => void spoken.value);
  const fetch = fetchedOnce(languages);
  /** What a language needs to be turned to, and the job it is to speak of. */
  const needed = new Set<Part>(['board']);
  let job = '';

  const turn = async (wanted: Language): Promise<void> => {
    try {
      await fetch(wanted, needed, job);
    } catch {
      if (settings.peek().language !== wanted) return;
      settings.value = { ...settings.peek(), language: spoken.peek() };
      trouble.value = {
        key: NOT_FETCHED[wanted],
        offers: [{ label: 'troubles.reload', run: () => location.reload() }],
      };
      return;
    }
    // While it was fetched another may have been chosen.
    if (settings.peek().language !== wanted) return;
    await setLanguage(TAGS[wanted]);
    document.documentElement.lang = TAGS[wanted];
    spoken.value = wanted;
    if (Object.values(NOT_FETCHED).some((key) => key === trouble.peek()?.key)) trouble.value = null;
  };

  let board: Promise<void> = Promise.resolve();
  effect(() => {
    const { language } = settings.value;
    if (language !== spoken.peek()) board = turn(language);
  });
  const need = (...parts: readonly Part[]): Promise<void> => {
    for (const part of parts) needed.add(part);
    return fetch(settings.peek().language, needed, job);
  };
  return {
    board,
    job: (id) => {
      job = id;
      return need('bench', 'job');
    },
    whole: () => need('whole'),
    backRoom: () => need('whole', 'backRoom'),
    ahead: () => void fetch(settings.peek().language, ['board', 'bench'], job).catch(() => {}),
  };
}

type FetchParts = (wanted: Language, parts: Iterable<Part>, job: string) => Promise<void>;

/** Fetches parts of a language, each once; one that did not come is fetched again the next time. */
function fetchedOnce(languages: Languages): FetchParts {
  const coming = new Map<string, Promise<void>>();
  const one = (wanted: Language, part: Part, job: string): Promise<void> => {
    const name = `${wanted} ${part} ${part === 'job' ? job : ''}`;
    const language = languages[wanted];
    const begun = coming.get(name) ?? (part === 'job' ? language.job(job) : language[part]());
    coming.set(name, begun);
    begun.catch(() => coming.delete(name));
    return begun;
  };
  return async (wanted, parts, job) => {
    await Promise.all([...parts].map((part) => one(wanted, part, job)));
  };
}
