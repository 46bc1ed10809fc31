import { computed, signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { FetchedLanguage } from '../../src/app/fetchedLanguages.ts';
import { followLanguage } from '../../src/app/followLanguage.ts';
import { parseSettings, type Settings } from '../../src/platform/browser/settings.ts';
import { backRoomScreen } from '../../src/text/es/backRoomScreen.ts';
import { benchScreen } from '../../src/text/es/benchScreen.ts';
import { catalogue as spanish } from '../../src/text/es/catalogue.ts';
import { firstScreen } from '../../src/text/es/firstScreen.ts';
import { addLanguage, heedLanguage, say, setLanguage } from '../../src/text/translate.ts';
import type { Trouble } from '../../src/ui/panels/Shop.ts';

const page = { documentElement: { lang: 'en' } };
const choose = (settings: { value: Settings }, language: Settings['language']): void => {
  settings.value = { ...settings.value, language };
};
/** Every promise that is already settled gets its turn. */
const turns = () => new Promise((done) => setTimeout(done, 0));

const nothing = async (): Promise<void> => {};
const ENGLISH = { board: nothing, bench: nothing, whole: nothing, backRoom: nothing, job: nothing };

/** The page at its start, with a Spanish that comes as the test says. */
function started(
  language: Settings['language'],
  board: () => Promise<typeof firstScreen>,
  more: Partial<Record<'bench' | 'whole', () => Promise<Partial<typeof spanish>>>> = {},
  languages: Partial<{ en: Partial<FetchedLanguage>; es: Partial<FetchedLanguage> }> = {},
) {
  const settings = signal<Settings>({ ...parseSettings(null), language });
  const trouble = signal<Trouble | null>(null);
  const added = (fetch: () => Promise<object>) => async () => addLanguage('es-US', await fetch());
  const sentences = followLanguage(settings, trouble, {
    en: { ...ENGLISH, ...languages.en },
    es: {
      board: added(board),
      bench: added(more.bench ?? (async () => benchScreen)),
      whole: added(more.whole ?? (async () => spanish)),
      backRoom: added(async () => backRoomScreen),
      job: nothing,
      ...languages.es,
    },
  });
  return { settings, trouble, sentences, first: sentences.board };
}

beforeEach(() => {
  page.documentElement.lang = 'en';
  vi.stubGlobal('document', page);
});
afterEach(async () => {
  heedLanguage(() => {});
  await setLanguage('en');
  vi.unstubAllGlobals();
});

describe('the page follows the language of the settings', () => {
  it('from its first word', async () => {
    const { first } = started('es', async () => firstScreen);
    await first;
    expect(page.documentElement.lang).toBe('es-US');
    expect(say('bench.settings')).toBe('Ajustes');
  });

  it('to and fro, and whoever drew a sentence draws it anew', async () => {
    const { settings, first } = started('en', async () => firstScreen);
    await first;
    const title = computed(() => say('board.title'));
    const seen: string[] = [];
    const stop = title.subscribe((words) => seen.push(words));
    choose(settings, 'es');
    await turns();
    choose(settings, 'en');
    await turns();
    stop();
    expect(seen).toEqual(['Job board', 'Tablero de trabajos', 'Job board']);
    expect(page.documentElement.lang).toBe('en');
  });

  it('fetches a language only when it is asked for, and once', async () => {
    let fetched = 0;
    const { settings, first } = started('en', async () => {
      fetched += 1;
      return firstScreen;
    });
    await first;
    expect(fetched).toBe(0);
    for (const language of ['es', 'en', 'es'] as const) {
      choose(settings, language);
      await turns();
    }
    expect(fetched).toBe(1);
  });

  it('says so in a sentence when it cannot be fetched, and stays as it is', async () => {
    const { settings, trouble, first } = started('en', () => Promise.reject(new Error('offline')));
    await first;
    choose(settings, 'es');
    await turns();
    expect(trouble.value?.key).toBe('troubles.no-spanish');
    expect(settings.value.language).toBe('en');
    expect(page.documentElement.lang).toBe('en');
    expect(say('bench.settings')).toBe('Settings');
  });

  it('fetches again when it is chosen again, and takes the sentence back', async () => {
    let online = false;
    const { settings, trouble, first } = started('en', () =>
      online ? Promise.resolve(firstScreen) : Promise.reject(new Error('offline')),
    );
    await first;
    choose(settings, 'es');
    await turns();
    online = true;
    choose(settings, 'es');
    await turns();
    expect(trouble.value).toBeNull();
    expect(say('bench.settings')).toBe('Ajustes');
  });

  it('does not turn when another was chosen while it was fetched', async () => {
    let come = (_: typeof firstScreen): void => {};
    const { settings, first } = started('en', () => new Promise((done) => (come = done)));
    await first;
    choose(settings, 'es');
    choose(settings, 'en');
    come(firstScreen);
    await turns();
    expect(say('bench.settings')).toBe('Settings');
    expect(page.documentElement.lang).toBe('en');
  });

  it('draws the board by its own sentences, and fetches the bench with the first job, once', async () => {
    const fetched: string[] = [];
    const { sentences, first } = started(
      'es',
      async () => firstScreen,
      {
        bench: async () => {
          fetched.push('bench');
          return benchScreen;
        },
      },
      { es: { job: async (id) => void fetched.push(id) } },
    );
    await first;
    expect(say('board.title')).toBe('Tablero de trabajos');
    expect(fetched).toEqual([]);
    sentences.ahead();
    await sentences.job('ready-by-friday');
    expect(say('undo.strokes')).toBe(spanish.undo.strokes);
    await sentences.job('ready-by-friday');
    await sentences.job('not-a-click');
    expect(fetched).toEqual(['bench', 'ready-by-friday', 'not-a-click']);
  });

  it('fetches what is said of a job later, when a part of its screen is opened that says it', async () => {
    const { sentences, first } = started('es', async () => firstScreen);
    await first;
    await sentences.job('ready-by-friday');
    await sentences.whole();
    expect(say('coach.title')).toBe(spanish.coach.title);
  });

  it('turns in mid-job to no language that cannot say as much, and to none but the job that is open', async () => {
    let come = (_: typeof benchScreen): void => {};
    const jobs: string[] = [];
    const { settings, sentences } = started(
      'en',
      async () => firstScreen,
      { bench: () => new Promise((done) => (come = done)) },
      { es: { job: async (id) => void jobs.push(id) } },
    );
    await sentences.job('ready-by-friday');
    await sentences.job('not-a-click');
    choose(settings, 'es');
    await turns();
    expect(page.documentElement.lang).toBe('en');
    expect(jobs).toEqual(['not-a-click']);
    come(benchScreen);
    await turns();
    expect(page.documentElement.lang).toBe('es-US');
  });

  it('lets a job that is opened without its sentences know, and fetches them when they are asked for again', async () => {
    let online = false;
    const { sentences, trouble, first } = started('es', async () => firstScreen, {
      bench: () => (online ? Promise.resolve(benchScreen) : Promise.reject(new Error('offline'))),
    });
    await first;
    sentences.ahead();
    await expect(sentences.job('ready-by-friday')).rejects.toThrow('offline');
    expect(trouble.value).toBeNull();
    online = true;
    await sentences.job('ready-by-friday');
  });

  it('says so in Spanish when it is the English of the bench that cannot be fetched', async () => {
    const { settings, sentences, trouble, first } = started(
      'es',
      async () => firstScreen,
      {},
      { en: { bench: () => Promise.reject(new Error('offline')) } },
    );
    await first;
    await sentences.job('ready-by-friday');
    choose(settings, 'en');
    await turns();
    expect(trouble.value?.key).toBe('troubles.no-english');
    expect(settings.value.language).toBe('es');
    expect(page.documentElement.lang).toBe('es-US');
  });

  it('in the back room with what is said there, and goes on with it wherever one goes next', async () => {
    const { settings, sentences, first } = started('es', async () => firstScreen);
    await first;
    await sentences.backRoom();
    expect(say('scenarioProblems.text-empty')).toBe(backRoomScreen.scenarioProblems['text-empty']);
    choose(settings, 'en');
    await turns();
    await sentences.whole();
    choose(settings, 'es');
    await turns();
    expect(say('scenarioProblems.text-empty')).toBe(backRoomScreen.scenarioProblems['text-empty']);
  });
});
