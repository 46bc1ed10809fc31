import { backRoomScreen as englishBackRoom } from '../../../src/text/en/backRoomScreen.ts';
import { catalogue as english } from '../../../src/text/en/catalogue.ts';
import { backRoomScreen as spanishBackRoom } from '../../../src/text/es/backRoomScreen.ts';
import { catalogue as spanish } from '../../../src/text/es/catalogue.ts';
import type { TextKey } from '../../../src/text/translate.ts';

export type Word = (key: TextKey, gaps?: Readonly<Record<string, string | number>>) => string;

/** The words of a language as the page prints them, for tests that walk the page in either. */
export function wordsOf(language: 'en' | 'es'): Word {
  const catalogue: unknown =
    language === 'en' ? { ...english, ...englishBackRoom } : { ...spanish, ...spanishBackRoom };
  return (key, gaps = {}) => {
    const found = key
      .split('.')
      .reduce<unknown>(
        (at, part) => (at as Readonly<Record<string, unknown>> | undefined)?.[part],
        catalogue,
      );
    if (typeof found !== 'string') throw new Error(`no words for ${key} in ${language}`);
    return found.replace(/\{\{(\w+)\}\}/g, (gap, name: string) => String(gaps[name] ?? gap));
  };
}
