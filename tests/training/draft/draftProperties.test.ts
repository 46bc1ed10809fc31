import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { applyEdit } from '../../../src/training/draft/applyEdit.ts';
import { draftOf } from '../../../src/training/draft/Draft.ts';
import { DraftText, type FieldPath } from '../../../src/training/draft/DraftText.ts';
import type { FormEdit, Plain } from '../../../src/training/draft/FormEdit.ts';
import { loadScenario } from '../../../src/training/scenario/loadScenario.ts';
import { writeScenario } from '../../../src/training/scenario/writeScenario.ts';
import { HOSTILE } from '../../support/hostileScenarios.ts';
import { scenarioFiles } from '../../support/scenarioArbitrary.ts';
import { SCENARIO_TEXT } from '../../support/scenarioText.ts';

const contentOf = (form: DraftText): Record<string, unknown> =>
  Object.fromEntries(form.topKeys().map((key) => [key, form.plainAt([key])]));
/** As JSON has it: what is written as nothing by less than nothing is read as nothing. */
const plain = <T>(value: T): T => JSON.parse(JSON.stringify(value)) as T;

/** The edits by which a hand would write a value into an empty form: keys one by one, lists entry by entry. */
function typedIn(path: FieldPath, value: unknown): FormEdit[] {
  if (Array.isArray(value)) {
    const list: FormEdit = { kind: 'set', path, value: [] };
    return [
      list,
      ...value.map((entry, index): FormEdit => ({ kind: 'insert', path, index, value: entry as Plain })),
    ];
  }
  // What a step asks for is written as one.
  if (typeof value !== 'object' || value === null || path.at(-1) === 'done') {
    return [{ kind: 'set', path, value: value as Plain }];
  }
  return Object.entries(value).flatMap(([key, below]) => typedIn([...path, key], below));
}

function written(text: string, edits: readonly FormEdit[]): string {
  return edits.reduce((now, edit) => {
    const done = applyEdit(new DraftText(now), edit);
    if (!done.ok) throw new Error(`${JSON.stringify(edit)}: ${done.error}`);
    return done.value;
  }, text);
}

describe('form, file and form again', () => {
  it('shows of a written scenario what was written', () => {
    fc.assert(
      fc.property(scenarioFiles, (file) => {
        expect(contentOf(new DraftText(writeScenario(file)))).toEqual(plain(file));
      }),
      { numRuns: 150 },
    );
  });

  it('makes of any form, field by field in any order, the file that holds it', () => {
    fc.assert(
      fc.property(scenarioFiles, fc.integer(), (file, turn) => {
        const keys = Object.keys(file);
        const turned = keys.map((_key, i) => keys[(i + Math.abs(turn)) % keys.length] ?? '');
        const edits = turned.flatMap((key) => typedIn([key], file[key as keyof typeof file]));
        const text = written('', edits);
        expect(contentOf(new DraftText(text))).toEqual(plain(file));
        const [byHand, form] = [loadScenario(writeScenario(file), 'a'), loadScenario(text, 'a')];
        if (!byHand.ok || !form.ok) throw new Error(JSON.stringify(form));
        expect(form.value.contentHash).toBe(byHand.value.contentHash);
      }),
      { numRuns: 60 },
    );
  });

  it('goes back to the same form when a change is taken back', () => {
    fc.assert(
      fc.property(scenarioFiles, scenarioFiles, fc.nat(), (file, other, pick) => {
        const text = writeScenario(file);
        const edits = Object.entries(other).flatMap(([key, value]) => typedIn([key], value));
        const edit = edits.filter(({ kind, path }) => kind === 'set' && !path.some(isIndex))[pick % 9];
        if (edit?.kind !== 'set') return;
        // A text that is plain in this file has no languages to write below it, and a seed that is a word has no policy.
        const above = new DraftText(text).plainAt(edit.path.slice(0, -1));
        if (edit.path.length > 1 && above !== undefined && typeof above !== 'object') {
          expect(applyEdit(new DraftText(text), edit)).toEqual({ ok: false, error: 'in-the-way' });
          return;
        }
        const old = new DraftText(text).plainAt(edit.path);
        const back: FormEdit =
          old === undefined ? { kind: 'remove', path: edit.path } : { ...edit, value: old as Plain };
        expect(contentOf(new DraftText(written(text, [edit, back])))).toEqual(plain(file));
      }),
      { numRuns: 100 },
    );
  });

  it('keeps every comment', () => {
    fc.assert(
      fc.property(scenarioFiles, fc.constantFrom('title', 'seed', 'remark', 'minutes'), (file, key) => {
        const lines = writeScenario(file).split('\n');
        const commented = lines
          .map((line, i) => (/^[a-z-]+:/.test(line) ? `# note ${i}\n${line}` : line))
          .join('\n');
        const value = key === 'minutes' ? 99 : 'other-words';
        const text = written(commented, [{ kind: 'set', path: [key], value }]);
        expect(text.match(/^# note \d+$/gm)).toEqual(commented.match(/^# note \d+$/gm));
        expect(new DraftText(text).plainAt([key])).toBe(value);
      }),
      { numRuns: 60 },
    );
  });
});

const isIndex = (part: string | number): boolean => typeof part === 'number';

describe('a text that is broken', () => {
  const LETTERS = [...':-#\'"[]{}&*!|>% \n\n\t,?abc1.\r\u0000\u00e9'];
  const mangled = fc
    .tuple(
      fc.constantFrom(SCENARIO_TEXT, ''),
      fc.array(fc.tuple(fc.nat(), fc.nat(6), fc.array(fc.constantFrom(...LETTERS), { maxLength: 5 })), {
        maxLength: 12,
      }),
    )
    .map(([text, cuts]) =>
      cuts.reduce<string>((now, [at, gone, put]) => {
        const from = now.length === 0 ? 0 : at % now.length;
        return now.slice(0, from) + put.join('') + now.slice(from + gone);
      }, text),
    );
  const EDITS: readonly FormEdit[] = [
    { kind: 'set', path: ['title'], value: 'Other' },
    { kind: 'set', path: ['work-order', 'number'], value: 'HP-2' },
    { kind: 'remove', path: ['seed'] },
    { kind: 'insert', path: ['aims'], index: 0, value: 'An aim.' },
    { kind: 'take', path: ['faults'], index: 0 },
    { kind: 'move', path: ['work-order', 'cautions'], from: 0, to: 1 },
  ];

  it('gives a form, and takes a change or says why not', () => {
    fc.assert(
      fc.property(mangled, fc.constantFrom(...EDITS), (text, edit) => {
        const form = draftOf(text).form;
        const done = applyEdit(form, edit);
        if (!done.ok || edit.kind !== 'set') return;
        expect(new DraftText(done.value).plainAt(edit.path)).toBe(edit.value);
        // Of what stands elsewhere nothing is lost.
        for (const key of form.topKeys().filter((each) => each !== edit.path[0])) {
          expect(new DraftText(done.value).plainAt([key])).toEqual(form.plainAt([key]));
        }
      }),
      { numRuns: 1500 },
    );
  });

  it.each(HOSTILE.map(([name, text]) => [name, text] as const))('is shown as it is: %s', (_name, text) => {
    const form = new DraftText(text);
    for (const edit of EDITS) {
      const began = process.cpuUsage();
      applyEdit(form, edit);
      expect(process.cpuUsage(began).user, edit.kind).toBeLessThan(2_000_000);
    }
    expect(form.text).toBe(text);
  });
});
