import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { SET_UPS } from '../../src/sim/rigs/standardTests/setUps.ts';
import { STANDARD_TESTS } from '../../src/sim/rigs/standardTests/standardTests.ts';
import { describeAction } from '../../src/text/describeAction.ts';
import { describeEntry } from '../../src/text/describeEntry.ts';
import { chamberAir, chamberAirShort } from '../../src/text/describeInside.ts';
import { describeInstruments } from '../../src/text/describeInstruments.ts';
import { catalogue as english } from '../../src/text/en/catalogue.ts';
import { besideReading } from '../../src/text/entryBeside.ts';
import { catalogue as spanish } from '../../src/text/es/catalogue.ts';
import { jobSentences } from '../../src/text/es/jobs.ts';
import { addJobSentences, jobSentence } from '../../src/text/jobWords.ts';
import { keyed } from '../../src/text/sentenceKey.ts';
import { standardProcedure } from '../../src/text/standardProcedure.ts';
import { addLanguage, say, setLanguage, type TextKey } from '../../src/text/translate.ts';
import { displayUnits, inShownUnits, setDisplayUnits } from '../../src/text/units.ts';
import type { LogEntry } from '../../src/training/sitting/LogEntry.ts';
import type { SittingAction } from '../../src/training/sitting/SittingAction.ts';
import { CHAMBERS } from '../../src/ui/inside/chamberLetters.ts';
import { goldenNames, sitGolden } from '../support/goldenJobs.ts';
import { foreignUnit, quantities, saysTheSame } from './support/unitsWritten.ts';

/** Every sentence of a catalogue by its key. */
function sentences(node: object, path = ''): [string, string][] {
  return Object.entries(node).flatMap(([key, value]) =>
    typeof value === 'string'
      ? [[path + key, value] as [string, string]]
      : sentences(value, `${path}${key}.`),
  );
}

/** Texts of the shipped scenario files, and whatever else stands in them. */
function words(node: unknown): string[] {
  if (typeof node === 'string') return [node.trim()];
  return typeof node === 'object' && node !== null ? Object.values(node).flatMap(words) : [];
}
const jobs = readdirSync('scenarios')
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => ({ name, words: words(parse(readFileSync(`scenarios/${name}`, 'utf8'))) }));

const TWICE = /\[([^[\]|]+)\|([^[\]|]+)\]/g;
/** Dials are drawn as they are, the settings name both systems, and miles are counted where miles are shown. */
const BOTH = /^(drawing\.(inHg|kPa)|settings\.unitSystems\.|roadTest\.mileCount_)/;
/** What fills the gaps of a sentence, where its number is one of another unit. Other gaps get words. */
const NUMBERS: Readonly<Record<string, string | number>> = {
  kPa: 3.5,
  inHg: 4,
  inches: 14.1,
  digits: 10.2,
  count: 2,
};
const filled = (text: string): Record<string, string | number> =>
  Object.fromEntries([...text.matchAll(/\{\{(\w+)\}\}/g)].map(([, gap = '']) => [gap, NUMBERS[gap] ?? 'x']));

afterEach(() => setDisplayUnits('us'));

describe('what is written twice', () => {
  it('is shown in the units that are chosen, and nothing else is touched', () => {
    const written = 'Draw [15 inHg|51 kPa], not [a list] and not a | b.';
    expect(inShownUnits(written)).toBe('Draw 15 inHg, not [a list] and not a | b.');
    setDisplayUnits('metric');
    expect(inShownUnits(written)).toBe('Draw 51 kPa, not [a list] and not a | b.');
  });

  // Factors: NIST SP 811 (2008), appendix B.8.
  it('is the same quantity, by the published factors', () => {
    const everywhere = [
      ...sentences(english).map(([, text]) => text),
      ...sentences(spanish).map(([, text]) => text),
      ...jobs.flatMap(({ words: all }) => all),
      ...Object.values(jobSentences),
    ].filter((text) => !/\{\{/.test(text));
    const pairs = everywhere.flatMap((text) =>
      [...text.matchAll(TWICE)].map(([, us = '', si = '']) => [us, si]),
    );
    const withNumbers = pairs.filter((pair) => /(?<!\p{L})\d/u.test(pair.join(' ')));
    expect(withNumbers.length).toBeGreaterThan(120);
    expect(withNumbers.filter(([us = '', si = '']) => !saysTheSame(us, si))).toEqual([]);
  });

  it('never lets a limit grow', () => {
    const [rated, metric] = [quantities('22 inHg')[0], quantities('74 kPa')[0]];
    expect(metric?.value).toBeLessThan(rated?.value ?? 0);
  });

  it('would be found wanting by the checker', () => {
    expect(saysTheSame('15 inHg', '51 kPa')).toBe(true);
    expect(saysTheSame('15 inHg', '54 kPa')).toBe(false);
    expect(saysTheSame('14 inH2O', '35 kPa')).toBe(false);
    expect(saysTheSame('300 miles', '500 km')).toBe(false);
    expect(saysTheSame('68 °F', '22 °C')).toBe(false);
    expect(saysTheSame('10 ± 0.8 inH2O', '25 ± 3 hPa')).toBe(false);
    expect(foreignUnit('at 20 °C', 'us')).toBe('°C');
    expect(foreignUnit('at 68 °F (20 °C)', 'us')).toBeNull();
    expect(foreignUnit('at 68 °F (20 °C)', 'metric')).toBe('°F');
  });
});

for (const language of ['en', 'es-US'] as const) {
  describe(`nothing is shown in the other system, ${language}`, () => {
    beforeAll(async () => {
      addLanguage('en', english);
      addLanguage('es-US', spanish);
      addJobSentences('es-US', keyed(jobSentences));
      await setLanguage(language);
    });
    afterAll(() => setLanguage('en'));

    /** Both systems are asked for the same sentences; what cannot be read in one is returned with it. */
    const foreign = (shown: () => readonly string[]): string[] =>
      (['us', 'metric'] as const).flatMap((system) => {
        setDisplayUnits(system);
        return [...new Set(shown())]
          .filter((text) => foreignUnit(text, displayUnits()) !== null || /\[[^\]]*\|/.test(text))
          .map((text) => `${system}: ${text}`);
      });

    it('by the catalogue', () => {
      const keys = sentences(english).filter(([key]) => !BOTH.test(key));
      const shown = (): string[] =>
        keys.map(([key, text]) => say(key.replace(/_(zero|one|other)$/, '') as TextKey, filled(text)));
      // Every sentence is there: a key comes back from nowhere.
      expect(shown().filter((text) => keys.some(([key]) => key === text))).toEqual([]);
      expect(foreign(shown)).toEqual([]);
    });

    it('by a job', () => {
      expect(foreign(() => jobs.flatMap((job) => job.words.map((text) => jobSentence(text).words)))).toEqual(
        [],
      );
    });

    it('by a standard procedure', () => {
      const all = (): string[] =>
        STANDARD_TESTS.flatMap((test) => {
          const sheet = standardProcedure(test, SET_UPS[test.prepares]);
          const { name, proves, needs, setUp, work, undo, cautions } = sheet;
          return [name, proves, ...needs, ...setUp, ...work, ...undo, ...cautions];
        });
      expect(all().length).toBeGreaterThan(300);
      expect(foreign(all)).toEqual([]);
    });

    it('by the log and the acts of whole jobs', () => {
      const log: LogEntry[] = [];
      const acts: SittingAction[] = [{ kind: 'set-smoke', gas: 'inert', pa: 2500 }];
      for (const name of goldenNames.filter((file) => file.endsWith('.full.txt')).slice(0, 6)) {
        const { view, record } = sitGolden(name);
        log.push(...view.log);
        acts.push(...record.actions.map(({ action }) => action));
      }
      expect(new Set(log.map(({ about }) => about))).toEqual(
        new Set(['reading', 'codes', 'finding', 'drive']),
      );
      const told = (): string[] => [
        ...log.flatMap((entry) => {
          const { what, conditions, value, heard } = describeEntry(entry, true);
          return [what, conditions, value, heard ?? '', ...besideReading(entry)];
        }),
        ...log.flatMap(({ seen }) => describeInstruments(seen).map(({ says }) => says)),
        ...acts.map(describeAction),
      ];
      expect(told().some((text) => /\d inHg/.test(text))).toBe(true);
      expect(foreign(told)).toEqual([]);
    });

    it('by the inside', () => {
      const air = [-3.5, -0.3, 0, 0.01, 0.4, 2.5, 50.8];
      expect(CHAMBERS.length).toBeGreaterThan(0);
      expect(foreign(() => air.flatMap((kPa) => [chamberAir(kPa), chamberAirShort(kPa)]))).toEqual([]);
    });
  });
}

describe('outside src/text', () => {
  /** A unit behind a number or alone in quotes. */
  const UNIT =
    /(?:\}|\d) ?(?:inHg|kPa|inH2O|hPa|psi|°[CF]|km|miles?)\b|['"`](?:inHg|inH2O|kPa|hPa|psi|°[CF]|km)['"`]/;
  it('no unit is put behind a number', () => {
    const files = ['src/ui', 'src/app'].flatMap((folder) =>
      readdirSync(folder, { recursive: true, encoding: 'utf8' })
        .filter((name) => /\.tsx?$/.test(name))
        .map((name) => `${folder}/${name}`),
    );
    expect(files.length).toBeGreaterThan(100);
    const code = (path: string): string => readFileSync(path, 'utf8').replace(/\/\*[\s\S]*?\*\/|\/\/.*/g, '');
    expect(files.filter((path) => UNIT.test(code(path)))).toEqual([]);
  });
});
