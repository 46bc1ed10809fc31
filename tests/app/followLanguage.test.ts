import { computed, signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { followLanguage } from '../../src/app/followLanguage.ts';
import { parseSettings, type Settings } from '../../src/platform/browser/settings.ts';
import { catalogue as spanish } from '../../src/text/es/catalogue.ts';
import { firstScreen } from '../../src/text/es/firstScreen.ts';
import { heedLanguage, say, setLanguage } from '../../src/text/translate.ts';
import type { Trouble } from '../../src/ui/panels/Shop.ts';

const page = { documentElement: { lang: 'en' } };
const choose = (settings: { value: Settings }, language: Settings['language']): void => {
  settings.value = { ...settings.value, language };
};
/** Every promise that is already settled gets its turn. */
const turns = () => new Promise((done) => setTimeout(done, 0));

function started(
  language: Settings['language'],
  board: () => Promise<typeof firstScreen>,
  whole: () => Promise<typeof spanish> = async () => spanish,
) {
  const settings = signal<Settings>({ ...parseSettings(null), language });
  const trouble = signal<Trouble | null>(null);
  const sentences = followLanguage(settings, trouble, { es: { board, whole } });
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

  it('draws the board by its own sentences, and fetches the others with the first job, once', async () => {
    let fetched = 0;
    const { sentences, first } = started(
      'es',
      async () => firstScreen,
      async () => {
        fetched += 1;
        return spanish;
      },
    );
    await first;
    expect(say('board.title')).toBe('Tablero de trabajos');
    expect(fetched).toBe(0);
    await sentences.whole();
    expect(say('undo.strokes')).toBe(spanish.undo.strokes);
    sentences.ahead();
    await sentences.whole();
    expect(fetched).toBe(1);
  });

  it('turns in mid-job to no language that cannot say everything', async () => {
    let come = (_: typeof spanish): void => {};
    const { settings, sentences } = started(
      'en',
      async () => firstScreen,
      () => new Promise((done) => (come = done)),
    );
    await sentences.whole();
    choose(settings, 'es');
    await turns();
    expect(page.documentElement.lang).toBe('en');
    come(spanish);
    await turns();
    expect(page.documentElement.lang).toBe('es-US');
  });

  it('lets a job that is opened without its sentences know, and fetches them when they are asked for again', async () => {
    let online = false;
    const { sentences, trouble, first } = started(
      'es',
      async () => firstScreen,
      () => (online ? Promise.resolve(spanish) : Promise.reject(new Error('offline'))),
    );
    await first;
    sentences.ahead();
    await expect(sentences.whole()).rejects.toThrow('offline');
    expect(trouble.value).toBeNull();
    online = true;
    await sentences.whole();
  });
});
