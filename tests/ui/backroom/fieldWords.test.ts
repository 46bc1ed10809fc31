import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { FAULTS } from '../../../src/sim/faults/catalogue.ts';
import type { FaultEntry } from '../../../src/sim/faults/Fault.ts';
import { backRoomScreen } from '../../../src/text/es/backRoomScreen.ts';
import { catalogue } from '../../../src/text/es/catalogue.ts';
import { severityWords } from '../../../src/text/severityWords.ts';
import { addLanguage, has, setLanguage } from '../../../src/text/translate.ts';
import { setDisplayUnits } from '../../../src/text/units.ts';
import { fieldLimits } from '../../../src/training/draft/fieldLimits.ts';
import { FORM } from '../../../src/training/draft/formFields.ts';
import { faultsWith } from '../../../src/ui/backroom/faults/FaultPicker.tsx';
import { severityFigure } from '../../../src/ui/backroom/faults/severityFigure.ts';
import { fieldHint, fieldId, fieldLabel, optionLabel } from '../../../src/ui/backroom/fieldWords.ts';
import { shownQuantity } from '../../../src/ui/backroom/shownQuantity.ts';

const fields = FORM.flatMap((section) => section.fields);
const keyOf = (path: string): string => path.split('.').at(-1) ?? path;

function everyWord(): readonly string[] {
  return fields.flatMap(({ path, control }) => {
    const options = fieldLimits(control.endsWith('picks') ? `${path}[]` : path)?.options ?? [];
    const nameless = fieldLabel(path) === keyOf(path) ? [path] : [];
    const raw = options.filter((option) => optionLabel(path, option) === String(option));
    return [...nameless, ...raw.map((option) => `${path}: ${option}`)];
  });
}

describe('the list of faults', () => {
  const found = (words: string): readonly string[] => faultsWith(words, FAULTS).map(({ id }) => id);

  it('is cut to those that have all the words, of the fault or of its item', () => {
    expect(found('  ')).toHaveLength(FAULTS.length);
    expect(found('SENSE ground')).toContain('sense-to-ground');
    expect(found('sense ground')).not.toContain('sense-open');
    expect(found('no such words')).toEqual([]);
  });
});

describe('a degree that is a share', () => {
  it('says of what, for each fault that has one', () => {
    const shares = FAULTS.filter(({ severity }) => severity?.unit === 'share');
    expect(shares.length).toBeGreaterThan(5);
    for (const fault of shares)
      expect(severityFigure(fault, 0.5), fault.id).toMatch(/%.*[a-z]{3}|[a-z]{2}.*%/);
    expect(severityFigure(shares.find(({ id }) => id === 'battery-weak') as FaultEntry, 1)).toBe(
      '10 % of its charge left',
    );
  });
});

describe('the words of the form', () => {
  it('name every field, and every word that may be chosen, as a reader knows it', () => {
    expect(everyWord()).toEqual([]);
  });

  it('are those of the job for its variants', () => {
    expect(fieldLabel('variants[0].complaint')).toBe(fieldLabel('work-order.complaint'));
    expect(fieldLabel('variants[0].faults[1].severity')).toBe(fieldLabel('faults[0].severity'));
    expect(fieldHint('variants[2].remark')).toBe(fieldHint('remark'));
  });

  it('give each place of the form a name of its own in the page', () => {
    const places = ['aims', 'aims[0]', 'aims[10]', 'work-order.codes[0].code', 'work-order.codes[0]'];
    expect(new Set(places.map(fieldId)).size).toBe(places.length);
    expect(fieldId('work-order.codes[0].code')).toBe('field-work-order-codes-0-code');
  });

  describe('in Spanish', () => {
    beforeAll(async () => {
      addLanguage('es-US', catalogue);
      addLanguage('es-US', backRoomScreen);
      await setLanguage('es-US');
    });
    afterAll(() => setLanguage('en'));

    it('too', () => {
      // Rules, tools and items have their own words, which a test of the whole catalogue holds.
      expect(everyWord()).toEqual([]);
      expect(has('backRoom.title')).toBe(true);
      expect(fieldLabel('title')).toBe('T\u00edtulo');
    });
  });
});

describe('how bad a fault is, in figures', () => {
  afterAll(() => setDisplayUnits('us'));

  it('has a unit for every fault that has degrees', () => {
    for (const { id, severity } of FAULTS) {
      if (severity === null) continue;
      for (const value of [severity.mildest, severity.worst]) {
        expect(severityWords(severity.unit, value), id).toMatch(/^\d[\d.,]* (k?\u03a9|in|%|inHg)$/);
      }
    }
  });

  it('follows the units of the reader', () => {
    expect(severityWords('ohm', 8.2158)).toBe('8.22 \u03a9');
    expect(severityWords('ohm', 1500)).toBe('1.50 k\u03a9');
    expect(severityWords('m', 0.000508)).toBe('0.020 in');
    setDisplayUnits('metric');
    expect(severityWords('m', 0.000508)).toBe('0.51 mm');
    expect(shownQuantity('bench.ambient-celsius', 20)).toBeUndefined();
    setDisplayUnits('us');
    expect(shownQuantity('bench.ambient-celsius', 20)).toBe('68 \u00b0F');
    // A foot is 0.3048 m by international agreement.
    expect(shownQuantity('bench.altitude-metres', 304.8)).toBe('1000 ft');
  });
});
