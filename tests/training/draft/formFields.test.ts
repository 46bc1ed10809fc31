import { describe, expect, it } from 'vitest';
import { fieldLimits } from '../../../src/training/draft/fieldLimits.ts';
import { FORM, fieldsBelow, isInside, NOT_IN_THE_FORM } from '../../../src/training/draft/formFields.ts';
import { scenarioFieldPaths } from '../../../src/training/scenario/jsonSchema.ts';

const inForm = FORM.flatMap(({ fields }) => fields);
const paths = scenarioFieldPaths();
/** A path or anything above it: what is written of a list of faults as one need not be told field by field. */
const within = (path: string, whole: readonly string[]): boolean =>
  whole.some((each) => path === each || path.startsWith(`${each}.`) || path.startsWith(`${each}[`));
const asOne = inForm
  .filter(({ control }) => control === 'faults' || control === 'variants' || control === 'steps')
  .map(({ path }) => path);

describe('the form', () => {
  it('has a row for every key of the format, or a reason for having none', () => {
    const groups = paths.filter((path) => paths.some((other) => other.startsWith(`${path}.`)));
    const missing = paths.filter(
      (path) =>
        !inForm.some((row) => row.path === path) &&
        !within(path, asOne) &&
        !within(path, Object.keys(NOT_IN_THE_FORM)) &&
        !(groups.includes(path) && inForm.some((row) => row.path.startsWith(`${path}.`))),
    );
    expect(missing).toEqual([]);
  });

  it('has no row for what the format does not have', () => {
    expect(inForm.filter(({ path }) => !paths.includes(path))).toEqual([]);
    expect(Object.keys(NOT_IN_THE_FORM).filter((path) => !paths.includes(path))).toEqual([]);
  });

  it('takes its limits from the schema', () => {
    expect(fieldLimits('minutes')).toMatchObject({ kind: 'number', lowest: 5, highest: 240, whole: true });
    expect(fieldLimits('title')).toMatchObject({ kind: 'text', most: 80, optional: false, languages: true });
    expect(fieldLimits('title.es')).toMatchObject({
      kind: 'text',
      most: 80,
      optional: true,
      languages: false,
    });
    expect(fieldLimits('aims')).toMatchObject({ kind: 'list', least: 1, most: 8 });
    expect(fieldLimits('work-order.codes[].status')).toMatchObject({ options: ['stored', 'pending'] });
    expect(fieldLimits('faults[].severity')).toMatchObject({ optional: true, lowest: 0, highest: 1 });
    expect(fieldLimits('level')?.options).toEqual([1, 2, 3, 4]);
    expect(fieldLimits('rules.off')).toMatchObject({ kind: 'list', optional: false });
    expect(fieldLimits('rules')).toMatchObject({ kind: 'group', optional: true });
    expect(fieldLimits('nothing.such')).toBeNull();
  });

  it('knows what stands inside what', () => {
    expect(fieldsBelow('work-order.codes').map(({ path }) => path)).toEqual([
      'work-order.codes[].code',
      'work-order.codes[].status',
    ]);
    expect(isInside('weights.method')).toBe(true);
    expect(isInside('drives.cycles')).toBe(false);
  });

  it('gives each control a field of its kind', () => {
    const KINDS: Readonly<Record<string, readonly string[]>> = {
      line: ['text'],
      paragraph: ['text'],
      number: ['number'],
      choice: ['text', 'number'],
      switch: ['truth'],
      lines: ['list'],
      picks: ['list'],
      'all-picks': ['list'],
      rows: ['list'],
      group: ['group'],
      seed: ['text'],
      faults: ['list'],
      variants: ['list'],
      steps: ['list'],
    };
    const odd = inForm.filter(
      ({ path, control }) => !KINDS[control]?.includes(fieldLimits(path)?.kind ?? ''),
    );
    expect(odd).toEqual([]);
    const choices = inForm.filter(({ control }) => control === 'choice');
    expect(choices.filter(({ path }) => fieldLimits(path)?.options === null)).toEqual([]);
  });
});
