import type { Settings } from '../platform/browser/settings.ts';
import { addJobSentences } from '../text/jobWords.ts';
import { addLanguage } from '../text/translate.ts';

export type Language = Settings['language'];

/** Regional tags: they choose the decimal sign and the dates. North American trade Spanish writes the point. */
export const TAGS: Readonly<Record<Language, string>> = { en: 'en', es: 'es-US' };

/** What is said in a language comes by screen. Each settles when it can be said. */
export interface FetchedLanguage {
  /** What is said before a job is opened. */
  board(): Promise<void>;
  /** What is said at the bench as it stands. */
  bench(): Promise<void>;
  /** Everything that is said of a job: dialogs, coach, service data and debrief besides. */
  whole(): Promise<void>;
  /** What the back room says besides. */
  backRoom(): Promise<void>;
  /** What one job says of itself. */
  job(id: string): Promise<void>;
}
export type Languages = Readonly<Record<Language, FetchedLanguage>>;

/** In English the board's sentences are part of the page, and a job's are written in its file. */
export const FETCHED_LANGUAGES: Languages = {
  en: {
    board: async () => {},
    bench: async () => addLanguage(TAGS.en, (await import('../text/en/benchScreen.ts')).benchScreen),
    whole: async () => addLanguage(TAGS.en, (await import('../text/en/catalogue.ts')).catalogue),
    backRoom: async () => addLanguage(TAGS.en, (await import('../text/en/backRoomScreen.ts')).backRoomScreen),
    job: async () => {},
  },
  es: {
    board: async () => {
      const [{ firstScreen }, { boardSentences }] = await Promise.all([
        import('../text/es/firstScreen.ts'),
        import('virtual:spanish-board'),
      ]);
      addLanguage(TAGS.es, firstScreen);
      addJobSentences(TAGS.es, boardSentences);
    },
    bench: async () => addLanguage(TAGS.es, (await import('../text/es/benchScreen.ts')).benchScreen),
    whole: async () => addLanguage(TAGS.es, (await import('../text/es/catalogue.ts')).catalogue),
    backRoom: async () => addLanguage(TAGS.es, (await import('../text/es/backRoomScreen.ts')).backRoomScreen),
    job: async (id) => {
      const { jobFetchers, allJobs } = await import('virtual:spanish-jobs');
      const { jobSentences, veiledSentences } = await (jobFetchers[id] ?? allJobs)();
      addJobSentences(TAGS.es, jobSentences, veiledSentences);
    },
  },
};
