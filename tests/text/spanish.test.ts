import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { backRoomScreen as englishBackRoom } from '../../src/text/en/backRoomScreen.ts';
import { catalogue as english } from '../../src/text/en/catalogue.ts';
import { backRoomScreen as spanishBackRoom } from '../../src/text/es/backRoomScreen.ts';
import { catalogue as spanish } from '../../src/text/es/catalogue.ts';
import { capital, fixed, money } from '../../src/text/format.ts';
import { addLanguage, language, say, setLanguage } from '../../src/text/translate.ts';

/** Every sentence of a catalogue by its key. */
function sentences(node: object, path = ''): Map<string, string> {
  const all = new Map<string, string>();
  for (const [key, value] of Object.entries(node)) {
    if (typeof value === 'string') all.set(path + key, value);
    else for (const [below, text] of sentences(value, `${path}${key}.`)) all.set(below, text);
  }
  return all;
}

const en = sentences({ ...english, ...englishBackRoom });
const es = sentences({ ...spanish, ...spanishBackRoom });
const gaps = (text: string): string[] => [...new Set(text.match(/\{\{\w+\}\}/g) ?? [])].sort();

describe('the Spanish catalogue', () => {
  it('has the keys of the English one and no others', () => {
    expect([...es.keys()].filter((key) => !en.has(key))).toEqual([]);
    expect([...en.keys()].filter((key) => !es.has(key))).toEqual([]);
  });

  it('has the same gaps in every sentence', () => {
    const differing = [...es].filter(([key, text]) => `${gaps(text)}` !== `${gaps(en.get(key) ?? '')}`);
    expect(differing).toEqual([]);
  });

  it('has its plural forms in pairs', () => {
    const ones = [...es.keys()].filter((key) => key.endsWith('_one'));
    expect(ones.length).toBeGreaterThan(8);
    expect(ones.filter((key) => !es.has(key.replace(/_one$/, '_other')))).toEqual([]);
  });

  it('holds no empty sentence', () => {
    expect([...es].filter(([, text]) => text.trim() === '')).toEqual([]);
  });

  it('opens what it asks or calls out, and closes what it opens', () => {
    const count = (text: string, sign: string): number => text.split(sign).length - 1;
    const lame = [...es].filter(
      ([key, text]) =>
        key !== HELP_KEY && (count(text, '¿') !== count(text, '?') || count(text, '¡') !== count(text, '!')),
    );
    expect(lame).toEqual([]);
  });

  it('ends a whole sentence where the English does', () => {
    const ends = (text: string): boolean => /[.?!:…]$/.test(text);
    // Shorter than this it is a label, and may be an abbreviation.
    const differing = [...es].filter(
      ([key, text]) => text.length > 10 && ends(text) !== ends(en.get(key) ?? ''),
    );
    expect(differing.map(([key]) => key)).toEqual([]);
  });

  it('says nothing in English', () => {
    const alike = [...es].filter(([key, text]) => text === en.get(key) && /\p{L}{2}/u.test(bare(text)));
    expect(alike.map(([key]) => key).sort()).toEqual([...ALIKE].sort());
  });

  it('speaks to the learner as usted', () => {
    const familiar = /\b(tú|tu|tus|te|ti|contigo|vosotros|vuestr[oa]s?)\b/i;
    expect([...es].filter(([, text]) => familiar.test(text))).toEqual([]);
  });
});

/** A sentence without its gaps. */
function bare(text: string): string {
  return text.replace(/\{\{\w+\}\}/g, '');
}

/** Names the key `?` of the keyboard. */
const HELP_KEY = 'bench.shortcuts';

/** What is the same word in both languages: signs, units, names. */
const ALIKE: readonly string[] = [
  'app.name',
  'backRoom.kibibytes',
  'backRoom.mebibytes',
  'drawing.auto',
  'drawing.com',
  'drawing.inHg',
  'drawing.kPa',
  'drawing.milliamps',
  'drawing.smokeUnit',
  'inside.vacuumBoth',
  'knew.answers.no',
  'proofPanel.minutes',
  'proofPanel.parLine.par',
  'reader.no',
  'readings.terminal',
  'readings.when.cycle-outcome',
  'service.pages.monitor',
  'service.pins.1.wire',
  'service.pins.2.wire',
  'service.pins.3.wire',
  'serviceTools.meterLines.input.value',
  'serviceTools.otherLines.led.value',
  'serviceTools.vacuumLines.jar.value',
  'settings.language',
  'settings.languages.en',
  'settings.languages.es',
];

describe('the program in Spanish', () => {
  beforeAll(async () => {
    addLanguage('es-US', spanish);
    await setLanguage('es-US');
  });
  afterAll(() => setLanguage('en'));

  it('answers in it at once, and tells its tag', () => {
    expect(language()).toBe('es-US');
    expect(say('hand.begin')).toBe(spanish.hand.begin);
    expect(say('refusals.pin-has-lead')).toBe(spanish.refusals['pin-has-lead']);
  });

  it('fills gaps and chooses plural forms', () => {
    expect(say('hand.clamp', { port: say('sites.air-port'), setting: say('clamps.loose') })).toBe(
      'Abrazadera del puerto de aire, floja',
    );
    expect(say('log.strokes', { count: 1 })).toBe('1 carrera');
    expect(say('log.strokes', { count: 53 })).toBe('53 carreras');
    expect(say('verdict.youCite', { count: 0 })).toBe(spanish.verdict.youCite_zero);
  });

  // Source: Unicode CLDR, numbers of es-US: the decimal sign of the United States and Mexico is the point.
  it('writes numbers with the point, as shops of North America do', () => {
    expect(fixed(9.04, 2)).toBe('9.04');
    expect(fixed(1234.5, 1)).toBe('1234.5');
    expect(money(85)).toBe('$85');
  });

  it('puts capitals on letters with accents', () => expect(capital('émbolo')).toBe('Émbolo'));
});
