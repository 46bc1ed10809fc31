import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { SealedFile } from '../../src/training/handout/JobFile.ts';
import { openSealedFile } from '../../src/training/handout/openSealedFile.ts';
import { readJobFile } from '../../src/training/handout/readJobFile.ts';
import { laidOut, type SealOptions, sealedFileOf, sumOf } from '../../src/training/handout/sealedFileOf.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

function sealed(text: string = SCENARIO_TEXT, options: SealOptions = {}): string {
  const made = sealedFileOf(text, 'short.yaml', options);
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
}

function read(text: string): SealedFile {
  const file = readJobFile(text, 'handed.job.json');
  if (!file.ok || file.value.kind !== 'sealed') throw new Error(JSON.stringify(file));
  return file.value.file;
}

const scenario = loadScenario(SCENARIO_TEXT, 'short.yaml');
if (!scenario.ok) throw new Error('the short scenario is in order');
const FAULT = 'capsule-torn';

describe('a sealed file', () => {
  it('opens to the scenario and the text it was made from', () => {
    const opened = openSealedFile(read(sealed()));
    expect(opened).toEqual({ ok: true, value: { scenario: scenario.value, text: SCENARIO_TEXT, key: null } });
  });

  it('is ASCII in short lines, the same each time, and says title and hash alone', () => {
    const text = sealed(SCENARIO_TEXT.replace('A short job', 'Señal débil'));
    expect(text).toMatch(/^[\n\x20-\x7e]*$/);
    expect(Math.max(...text.split('\n').map(({ length }) => length))).toBeLessThan(100);
    expect(text).toBe(sealed(SCENARIO_TEXT.replace('A short job', 'Señal débil')));
    expect(read(text).title).toBe('Señal débil');
    expect(read(sealed()).contentHash).toBe(scenario.value.contentHash);
  });

  it('shows neither fault nor remark nor work order, plain or decoded', () => {
    for (const options of [{}, { classCode: 'Copper-17' }]) {
      const text = sealed(SCENARIO_TEXT, options);
      const decoded = Buffer.from(read(text).sealed.join(''), 'base64').toString('latin1');
      for (const told of [
        FAULT,
        'capsule',
        'severity',
        'Nothing more to say',
        'The lamp is on',
        'P0456',
        'Copper',
      ])
        for (const given of [text, decoded]) expect(given, told).not.toContain(told);
    }
  });

  it('survives the mark of a text editor, line ends of two characters and blanks of a mail program', () => {
    const crlf = sealed().replaceAll('\n', '\r\n');
    for (const given of [
      crlf,
      `\ufeff${crlf}`,
      `\n\n  ${sealed()}\n\n`,
      sealed().replaceAll('\n ', '\n\u00a0'),
    ])
      expect(openSealedFile(read(given)).ok).toBe(true);
  });

  it('with a class code opens by that code alone, however it is typed', () => {
    const file = read(sealed(SCENARIO_TEXT, { classCode: 'Copper 17-b' }));
    for (const typed of ['Copper 17-b', ' copper17B ', 'COPPER-17 B'])
      expect(openSealedFile(file, typed), typed).toMatchObject({ ok: true, value: { text: SCENARIO_TEXT } });
    expect(openSealedFile(file)).toEqual({ ok: false, error: { code: 'class-code-wanted' } });
    for (const typed of ['copper 17', 'copper 18b', 'short'])
      expect(openSealedFile(file, typed), typed).toEqual({ ok: false, error: { code: 'class-code-wrong' } });
    for (const typed of ['', 'a-b', '...', 'x'.repeat(61), 'y '.repeat(40_000)])
      expect(openSealedFile(file, typed)).toEqual({ ok: false, error: { code: 'class-code-unfit' } });
  });

  it('without the class code gives nothing away to who has the hash', () => {
    const file = read(sealed(SCENARIO_TEXT, { classCode: 'Copper 17-b' }));
    const open = openSealedFile({ ...file, asks: { classCode: false, seats: 0 } });
    expect(open).toEqual({ ok: false, error: { code: 'job-file-not-its-own' } });
  });

  it('is not made of a scenario that is not in order, nor under a code that is no code', () => {
    const broken = sealedFileOf(SCENARIO_TEXT.replace('level: 1', 'level: 9'), 'short.yaml');
    expect(broken).toMatchObject({ ok: false, error: { code: 'scenario', problems: [{ line: 6 }] } });
    expect(sealedFileOf(SCENARIO_TEXT, 'short.yaml', { classCode: '7' })).toEqual({
      ok: false,
      error: { code: 'class-code-unfit' },
    });
  });

  it('is refused with any byte changed, lost or added, except blanks', () => {
    const text = sealed();
    fc.assert(
      fc.property(
        fc.nat(text.length - 1),
        fc.constantFrom('change', 'lose', 'add'),
        fc.integer({ min: 0x21, max: 0x7e }),
        (at, how, code) => {
          const letter = String.fromCharCode(code);
          const old = text.charAt(at);
          if (how === 'change' && (letter === old || /\s/.test(old))) return;
          if (how === 'lose' && /\s/.test(old)) return;
          const rest = text.slice(how === 'add' ? at : at + 1);
          const changed = readJobFile(`${text.slice(0, at)}${how === 'lose' ? '' : letter}${rest}`, 'x.json');
          // A file that no longer begins as a sealed one is read as a scenario file, and refused as that.
          expect(changed.ok).toBe(false);
        },
      ),
      { numRuns: 400 },
    );
  });

  it('that was put together by hand is refused when it is opened', () => {
    const file = read(sealed());
    const other = read(sealed(SCENARIO_TEXT.replace('minutes: 20', 'minutes: 30')));
    const lies: readonly SealedFile[] = [
      { ...file, title: 'Another title' },
      { ...file, asks: { classCode: true, seats: 0 } },
      { ...file, contentHash: other.contentHash },
      { ...file, sealed: other.sealed },
      { ...file, asks: { classCode: false, seats: 4 } },
    ];
    for (const lie of lies) expect(openSealedFile(lie, 'Copper 17').ok).toBe(false);
  });
});

describe('a file that was handed out', () => {
  it('may be a scenario file that anybody can read', () => {
    expect(readJobFile(SCENARIO_TEXT, 'short.yaml')).toEqual({
      ok: true,
      value: { kind: 'readable', name: 'short.yaml', text: SCENARIO_TEXT, scenario: scenario.value },
    });
  });

  it('is refused with the one thing that is wrong with it', () => {
    const head = '{\n "known-good": "sealed job",';
    const cases: readonly (readonly [string, string])[] = [
      ['', 'job-file-empty'],
      [' \r\n\t', 'job-file-empty'],
      [head, 'job-file-damaged'],
      [`${head} "format": 2, "anything": [] }`, 'job-file-newer'],
      [`${head} "format": 1, "title": "x" }`, 'job-file-damaged'],
      [`${head} "__proto__": { "format": 1 } }`, 'job-file-damaged'],
      [sealed().slice(0, 900), 'job-file-damaged'],
      [sealed() + sealed(), 'job-file-damaged'],
      [sealed().replace('"format": 1', '"format": 1, "format": 1'), 'job-file-damaged'],
      [sealed().replace('"format": 1', '"format": 1e0'), 'job-file-damaged'],
      ['x'.repeat(400_000), 'job-file-too-large'],
      ['just words', 'scenario'],
      ['{ "some": "json" }', 'scenario'],
      ['\u0000\u0001PK', 'scenario'],
      [`${head.repeat(3000)}`, 'job-file-damaged'],
      [`${head} "sealed": ${'['.repeat(50_000)}`, 'job-file-damaged'],
    ];
    for (const [text, code] of cases)
      expect(readJobFile(text, 'x'), text.slice(0, 60)).toMatchObject({ ok: false, error: { code } });
  });

  it('with a title that is not what it looks like is refused, though its sum is right', () => {
    const { sum: _sum, ...rest } = read(sealed());
    for (const title of ['A\u202ebad job', 'nul\u0000', '']) {
      const lie = { ...rest, title };
      expect(readJobFile(laidOut({ ...lie, sum: sumOf(lie) }), 'x'), title).toMatchObject({
        ok: false,
        error: { code: 'job-file-damaged' },
      });
    }
  });

  it('is refused whatever it is, in time, and never throws', () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string({ unit: 'binary', maxLength: 400 }), fc.json()),
        fc.boolean(),
        (text, mark) => {
          const read = readJobFile(mark ? `{"known-good":"sealed job",${text}` : text, 'any');
          expect(read.ok).toBe(false);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('any text of a scenario file comes out of the seal as it went in', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 200 }), (comment) => {
        const line = comment.replaceAll(/[\p{C}\p{Z}]/gu, ' ');
        const text = `${SCENARIO_TEXT}# ${line}\n`;
        if (!loadScenario(text, 'x').ok) return;
        expect(openSealedFile(read(sealed(text)))).toMatchObject({ ok: true, value: { text } });
      }),
      { numRuns: 60 },
    );
  });
});
