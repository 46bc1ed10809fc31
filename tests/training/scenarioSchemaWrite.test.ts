import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { contentOf } from '../../src/training/scenario/contentOf.ts';
import { hashOfContent } from '../../src/training/scenario/hashOfContent.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { type ScenarioFile, scenarioSchema } from '../../src/training/scenario/scenarioSchema.ts';
import { writeScenario } from '../../src/training/scenario/writeScenario.ts';
import { scenarioFiles } from '../support/scenarioArbitrary.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

/** As JSON has it: less than nothing by nothing is nothing, and a key without a value is no key. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value));

describe('a scenario written as a file', () => {
  it('is read back with the same content and hash, whatever it says', () => {
    fc.assert(
      fc.property(scenarioFiles, (file) => {
        const text = writeScenario(file);
        const loaded = loadScenario(text, 'job.yaml');
        const content = contentOf(file);
        expect(loaded.ok ? [] : loaded.error).toEqual([]);
        expect(loaded.ok && plain(loaded.value)).toEqual(
          plain({ ...content, contentHash: hashOfContent(content) }),
        );
        expect(writeScenario(parse(text) as ScenarioFile)).toBe(text);
      }),
      { numRuns: 400 },
    );
  });

  it('half done, with any text anywhere, is read back the same', () => {
    const anyText = fc.oneof(fc.string({ unit: 'binary' }), fc.string({ unit: 'grapheme', maxLength: 300 }));
    const draft = fc.record(
      {
        title: fc.option(anyText),
        remark: anyText,
        aims: fc.array(anyText),
        'work-order': fc.record(
          { complaint: anyText, codes: fc.array(fc.record({ code: anyText })) },
          { requiredKeys: [] },
        ),
        faults: fc.array(
          fc.record({ fault: anyText, severity: fc.double({ noNaN: true, noDefaultInfinity: true }) }),
        ),
        walkthrough: fc.array(
          fc.record({ say: anyText, done: fc.dictionary(anyText, anyText, { noNullPrototype: true }) }),
        ),
        'no such key': anyText,
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(draft, (file) => {
        expect(plain(parse(writeScenario(file as unknown as ScenarioFile)))).toEqual(plain(file));
      }),
      { numRuns: 400 },
    );
  });

  it('has its keys in the order of the schema, however they came', () => {
    const file = parse(SCENARIO_TEXT) as Record<string, unknown>;
    const turned = Object.fromEntries(Object.entries(file).reverse());
    expect(writeScenario(turned as ScenarioFile)).toBe(writeScenario(file as ScenarioFile));
    const keys = writeScenario(turned as ScenarioFile).match(/^[a-z-]+(?=:)/gm);
    expect(keys).toEqual(Object.keys(scenarioSchema.shape).filter((key) => key in file));
  });

  it('reads like one written by hand', () => {
    const file = parse(SCENARIO_TEXT) as ScenarioFile;
    const long = 'The lamp came on. '.repeat(12).trim();
    const text = writeScenario({
      ...file,
      remark: long,
      mode: 'walkthrough',
      walkthrough: [{ id: 'a', say: 'Do.', how: 'So.', done: { key: 'on' } }],
    });
    expect(text).toContain('\naims:\n  - Say what the readings show.\n\nwork-order:\n  number: T-100\n');
    expect(text).toContain('    - { code: P0456, status: stored }\n');
    expect(text).toContain('    done: { key: on }\n\nremark: >-\n  The lamp');
    expect(text.split('\n').filter((line) => line.length > 120)).toEqual([]);
  });

  const folder = new URL('../../scenarios/', import.meta.url);
  it.each(readdirSync(folder).filter((name) => name.endsWith('.yaml')))('%s keeps its hash', (name) => {
    const text = readFileSync(new URL(name, folder), 'utf8');
    const [before, after] = [text, writeScenario(parse(text) as ScenarioFile)].map((each) =>
      loadScenario(each, name),
    );
    expect(after).toEqual(before);
  });
});
