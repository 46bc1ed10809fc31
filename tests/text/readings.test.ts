import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { RigDefinition } from '../../src/sim/rigs/RigDefinition.ts';
import { EVERY_RIG } from '../../src/sim/rigs/rigs.ts';
import { runStandardTest } from '../../src/sim/rigs/standardTests/runStandardTest.ts';
import { createWorld } from '../../src/sim/world/World.ts';
import '../../src/text/backRoomEnglish.ts';
import { readingLabel, readingWords, spreadWords } from '../../src/text/describeReading.ts';
import { backRoomScreen } from '../../src/text/es/backRoomScreen.ts';
import { catalogue } from '../../src/text/es/catalogue.ts';
import { addLanguage, setLanguage } from '../../src/text/translate.ts';
import { setDisplayUnits } from '../../src/text/units.ts';
import type { MarkReadings } from '../../src/training/proof/FaultReadings.ts';

/** Benches on which tests say much: sound, leaking, dead, and coming and going. */
const BENCHES = [
  [],
  [{ fault: 'capsule-torn', severity: 0.6 }],
  [{ fault: 'fuse-blown', severity: 0 }],
  [{ fault: 'switch-intermittent', severity: 0.5 }],
  [{ fault: 'meter-battery-low', severity: 0.5 }],
];

/** Every mark of every test as it was shown on these benches. */
function allMarks(): readonly MarkReadings[] {
  return EVERY_RIG.flatMap((rig) => marksOf(rig));
}

function marksOf(rig: RigDefinition): readonly MarkReadings[] {
  const known = BENCHES.filter((faults) =>
    faults.every(({ fault }) => rig.faults.some(({ id }) => id === fault)),
  );
  const place = { rig: rig.id, ambientC: 20, altitudeM: 200, fuelLevel: 0.5 };
  return known.flatMap((faults) =>
    rig.tests.flatMap((test) => {
      const bench = createWorld({ seed: 'words', faults, ...place });
      const shown = runStandardTest(test, bench);
      const names = new Set(shown.map(({ channel, setUp }) => `${channel} ${setUp}`));
      return [...names].map((name) => {
        const own = shown.filter(({ channel, setUp }) => `${channel} ${setUp}` === name);
        return { setUp: own[0]?.setUp ?? '', good: own, faulted: own, others: own, telling: 'same' as const };
      });
    }),
  );
}

/** What a sentence of a reading must not hold: keys, gaps, and ids with a dash between small words. */
const LEFT_OVER = /\{\{|readings\.|undefined|NaN|\b[a-z]+-[a-z]+\b/;
const DASHED = ['back-probe', 'self-test', 'pull-up'];

const marks = allMarks();

describe.each([
  ['en', 'us'],
  ['en', 'metric'],
  ['es-US', 'us'],
] as const)('readings in words, %s, %s', (language, units) => {
  beforeAll(async () => {
    addLanguage('es-US', { ...catalogue, ...backRoomScreen });
    await setLanguage(language);
    setDisplayUnits(units);
  });
  afterAll(async () => {
    await setLanguage('en');
    setDisplayUnits('us');
  });

  it('have a name and a value at every mark of every standard test', () => {
    expect(marks.length).toBeGreaterThan(400);
    for (const mark of marks) {
      for (const words of [readingLabel(mark), readingWords(mark.good), spreadWords(mark.others) ?? '']) {
        const left = LEFT_OVER.exec(words)?.[0];
        expect(left === undefined || DASHED.includes(left) ? '' : left, `${mark.setUp}: ${words}`).toBe('');
      }
      expect(readingWords(mark.good), mark.setUp).not.toBe('');
    }
  });

  it('tell the marks of one test apart', () => {
    for (const id of new Set(EVERY_RIG.flatMap(({ tests }) => tests.map((test) => test.id)))) {
      const own = marks.filter(({ setUp }) => setUp.startsWith(`${id}/`));
      const names = new Map(
        own.map((mark) => [`${mark.good[0]?.channel} ${mark.setUp}`, readingLabel(mark)]),
      );
      expect(new Set(names.values()).size, `${id}: ${[...names.values()].join('; ')}`).toBe(names.size);
    }
  });
});

describe('repeats of a reading', () => {
  const clicks = (...values: readonly boolean[]) =>
    values.map((value) => ({ kind: 'yes-no', channel: 'click', setUp: 't/in', tick: 0, value }) as const);
  const meter = (...values: readonly (number | null)[]) =>
    values.map(
      (value) =>
        ({
          kind: 'number',
          channel: 'meter',
          setUp: 't/volts',
          tick: 0,
          value,
          half: 0.01,
          unit: 'V',
        }) as const,
    );

  it('are counted where they are yes or no, and told from the lowest to the highest where they are numbers', () => {
    expect(readingWords(clicks(true))).toBe('click');
    expect(readingWords(clicks(true, false, true))).toBe('2 of 3');
    expect(readingWords(meter(8.98, 8.98))).toBe('8.98 V');
    expect(readingWords(meter(8.98, 3.1, 9))).toBe('3.10 V to 9.00 V');
    expect(readingWords(meter(8.98, null))).toBe('8.98 V, OL, over range');
    expect(readingWords([])).toBe('not come to');
    expect(spreadWords(meter(8.98, 8.9))).toBe('good ones 8.90 V to 8.98 V');
    expect(spreadWords(meter(8.98, 8.98))).toBeNull();
  });
});
