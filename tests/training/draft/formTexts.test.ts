import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CONDITION_FIELDS } from '../../../src/text/scenarioConditions.ts';
import { applyEdit } from '../../../src/training/draft/applyEdit.ts';
import { conditionText, readCondition } from '../../../src/training/draft/conditionText.ts';
import { DraftText } from '../../../src/training/draft/DraftText.ts';
import { pathOf, rawText, schemaPathOf, typedNumber } from '../../../src/training/draft/rawText.ts';
import { slugOf } from '../../../src/training/draft/slugOf.ts';
import { hasLanguages, textIn, writtenIn } from '../../../src/training/draft/textIn.ts';
import { scenarioFiles } from '../../support/scenarioArbitrary.ts';

describe('a figure as it is typed', () => {
  it('is one, with a point or a comma', () => {
    expect(['20', ' 2.5 ', '2,5', '-4', '\u22124', '.5', '3.'].map(typedNumber)).toEqual([
      20, 2.5, 2.5, -4, -4, 0.5, 3,
    ]);
  });
  it('is none where it could be read in two ways', () => {
    expect(['', 'ten', '1e3', '0x10', '1.2.3', '1 000', 'NaN', 'Infinity'].map(typedNumber)).toEqual(
      Array(8).fill(null),
    );
  });
});

describe('a path in the file\u2019s writing', () => {
  it('is keys and places, and the other way round in the schema', () => {
    expect(pathOf('work-order.codes[12].status')).toEqual(['work-order', 'codes', 12, 'status']);
    expect(pathOf('aims[0]')).toEqual(['aims', 0]);
    expect(schemaPathOf('variants[1].faults[0].severity')).toBe('variants[].faults[].severity');
  });
});

describe('the name of a file', () => {
  it('is made of a title', () => {
    expect(slugOf("The lamp's on, again!")).toBe('the-lamps-on-again');
    expect(slugOf('  \u00bfQu\u00e9 pas\u00f3?  ')).toBe('que-paso');
    expect(slugOf('\u65e5\u672c')).toBe('');
  });
  it('has the form that the format asks for, whatever the title', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 90 }), (title) => {
        const slug = slugOf(title);
        expect(slug === '' || /^[a-z0-9]+(-[a-z0-9]+)*$/.test(slug)).toBe(true);
        expect(slug.length).toBeLessThanOrEqual(60);
      }),
    );
  });
});

describe('what a step waits for, as lines', () => {
  it('is read back the same, whatever it is', () => {
    fc.assert(
      fc.property(scenarioFiles, (file) => {
        for (const { done } of file.walkthrough ?? []) {
          const lines = conditionText(done);
          expect(readCondition(lines)).toEqual(JSON.parse(JSON.stringify(done)));
          expect(lines.trim().split('\n')).toHaveLength(Object.keys(done).length);
        }
      }),
      { numRuns: 60 },
    );
  });
  it('takes every example of the guide', () => {
    for (const { example } of Object.values(CONDITION_FIELDS)) {
      if (example !== undefined) expect(readCondition(example), example).not.toBeNull();
    }
  });
  it('waits until half a line can be read', () => {
    expect(readCondition('key: on\npl')).toBeNull();
    expect(readCondition('fitted: [{ item: cap-a')).toBeNull();
    expect(readCondition('*a')).toBeNull();
    expect(readCondition('')).toEqual({});
  });
});

describe('a text in two languages', () => {
  const write = (text: string, language: 'en' | 'es', words: string): string =>
    writtenIn(new DraftText(text), ['title'], language, words).reduce((now, edit) => {
      const done = applyEdit(new DraftText(now), edit);
      if (!done.ok) throw new Error(done.error);
      return done.value;
    }, text);
  const both = (text: string) => {
    const form = new DraftText(text);
    return [textIn(form, ['title'], 'en'), textIn(form, ['title'], 'es')];
  };

  it('is plain in one, and by language in two', () => {
    const plain = write('title: Lamp\n', 'en', 'The lamp');
    expect(plain).toBe('title: The lamp\n');
    const two = write(plain, 'es', 'La luz');
    expect(two).toBe('title:\n  en: The lamp\n  es: La luz\n');
    expect(both(two)).toEqual(['The lamp', 'La luz']);
    expect(hasLanguages(new DraftText(two))).toBe(true);
    expect(write(two, 'es', '')).toBe(plain);
    expect(both(write(two, 'en', ''))).toEqual(['', 'La luz']);
  });

  it('is found in lists, and what is no language is none', () => {
    expect(hasLanguages(new DraftText('aims:\n  - { es: Mirar }\n'))).toBe(true);
    expect(hasLanguages(new DraftText('bench:\n  fuel-percent: 5\naims: [a]\n'))).toBe(false);
  });
});

describe('a single value as a form shows it', () => {
  it('is as it is written', () => {
    const form = new DraftText('a: 007\nb: true\nc: [1]\nd:\ne: " x "\n');
    const shown = ['a', 'b', 'c', 'd', 'e', 'f'].map((key) => rawText(form.at([key])));
    expect(shown).toEqual(['007', 'true', '', '', ' x ', '']);
  });
});
