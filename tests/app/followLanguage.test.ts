import { computed, signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { followLanguage } from '../../src/app/followLanguage.ts';
import { parseSettings, type Settings } from '../../src/platform/browser/settings.ts';
import { catalogue as spanish } from '../../src/text/es/catalogue.ts';
import { heedLanguage, say, setLanguage } from '../../src/text/translate.ts';
import type { Trouble } from '../../src/ui/panels/Shop.ts';

const page = { documentElement: { lang: 'en' } };
const choose = (settings: { value: Settings }, language: Settings['language']): void => {
  settings.value = { ...settings.value, language };
};
/** Every promise that is already settled gets its turn. */
const turns = () => new Promise((done) => setTimeout(done, 0));

function started(language: Settings['language'], es: () => Promise<typeof spanish>) {
  const settings = signal<Settings>({ ...parseSettings(null), language });
  const trouble = signal<Trouble | null>(null);
  return { settings, trouble, first: followLanguage(settings, trouble, { es }) };
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
    const { first } = started('es', async () => spanish);
    await first;
    expect(page.documentElement.lang).toBe('es-US');
    expect(say('bench.settings')).toBe('Ajustes');
  });

  it('to and fro, and whoever drew a sentence draws it anew', async () => {
    const { settings, first } = started('en', async () => spanish);
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
      return spanish;
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
      online ? Promise.resolve(spanish) : Promise.reject(new Error('offline')),
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
    let come = (_: typeof spanish): void => {};
    const { settings, first } = started('en', () => new Promise((done) => (come = done)));
    await first;
    choose(settings, 'es');
    choose(settings, 'en');
    come(spanish);
    await turns();
    expect(say('bench.settings')).toBe('Settings');
    expect(page.documentElement.lang).toBe('en');
  });
});
