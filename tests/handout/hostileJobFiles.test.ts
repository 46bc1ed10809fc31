import { describe, expect, it } from 'vitest';
import { JOB_FILE_MARK, type SealedFile } from '../../src/training/handout/JobFile.ts';
import { openSealedFile } from '../../src/training/handout/openSealedFile.ts';
import { readJobFile } from '../../src/training/handout/readJobFile.ts';
import { laidOut, sumOf } from '../../src/training/handout/sealedFileOf.ts';
import { toBase64 } from '../../src/training/scenario/base64.ts';
import { applyKeystream, asciiBytes } from '../../src/training/scenario/curtain.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

/** What somebody could put together who knows the format: whole by its sum, with whatever within. */
function forged(within: unknown, more: Partial<SealedFile> = {}): string {
  const contentHash = 'a'.repeat(64);
  const bytes = asciiBytes(JSON.stringify(within));
  applyKeystream(bytes, contentHash);
  const head = {
    [JOB_FILE_MARK]: 'sealed job',
    format: 1,
    title: 'A forged job',
    contentHash,
    asks: { classCode: false, seats: 0 },
    sealed: toBase64(bytes).match(/.{1,76}/g) ?? [],
    ...more,
  } as Omit<SealedFile, 'sum'>;
  return laidOut({ ...head, sum: sumOf(head) });
}

/** The refusal of a file, whether it comes on reading or on opening. */
function refusal(text: string): string {
  const read = readJobFile(text, 'forged.job.json');
  if (!read.ok) return read.error.code;
  if (read.value.kind !== 'sealed') return 'readable';
  const opened = openSealedFile(read.value.file, 'Copper 17');
  return opened.ok ? 'opened' : opened.error.code;
}

const deep = (open: string, close: string, times: number): string => open.repeat(times) + close.repeat(times);

const WITHIN: readonly (readonly [string, unknown, string])[] = [
  ['another scenario than its hash says', SCENARIO_TEXT, 'job-file-not-its-own'],
  ['no text', { a: 1 }, 'job-file-not-its-own'],
  ['nothing', null, 'job-file-not-its-own'],
  ['an empty text', '', 'scenario'],
  ['an alias bomb', `a: &a [x, x]\nb: &b [*a, *a]\nc: [*b, *b]\n${SCENARIO_TEXT}`, 'scenario'],
  ['deep nesting', `${SCENARIO_TEXT}x: ${deep('[', ']', 20_000)}`, 'scenario'],
  ['a tag', `${SCENARIO_TEXT}x: !!js/function "function () {}"\n`, 'scenario'],
  ['the key of a prototype', `${SCENARIO_TEXT}__proto__: { mode: assessment }\n`, 'scenario'],
  ['a number that is none', SCENARIO_TEXT.replace('severity: 0.5', 'severity: .nan'), 'scenario'],
  ['hidden characters', SCENARIO_TEXT.replace('A short job', 'A \u202eshort job'), 'scenario'],
  ['a text beyond the limit', `${SCENARIO_TEXT}# ${'x'.repeat(262_000)}`, 'scenario'],
];

const AROUND: readonly (readonly [string, string, string])[] = [
  ['markup as its title', forged('x', { title: '<img src=x onerror=alert(1)>' }), 'scenario'],
  ['a title beyond the limit', forged('x', { title: 'x'.repeat(81) }), 'job-file-damaged'],
  ['a hash that is none', forged('x', { contentHash: 'none' }), 'job-file-damaged'],
  ['sealed parts that are no base 64', forged('x', { sealed: ['****'] }), 'job-file-damaged'],
  ['no sealed part', forged('x', { sealed: [] }), 'job-file-damaged'],
  [
    'more seats than a school has',
    forged('x', { asks: { classCode: true, seats: 1e9 } }),
    'job-file-damaged',
  ],
  [
    'seats without a class code',
    forged(SCENARIO_TEXT, { asks: { classCode: false, seats: 3 } }),
    'job-file-not-its-own',
  ],
  [
    'a class code that was never set',
    forged('x', { asks: { classCode: true, seats: 0 } }),
    'class-code-wrong',
  ],
  ['a key more', forged('x', { more: 1 } as object), 'job-file-damaged'],
  [
    'the key of a prototype',
    forged('x').replace('{', '{ "known-good": "sealed job", "__proto__": {},'),
    'job-file-damaged',
  ],
  ['a format of tomorrow', forged('x', { format: 2 } as object), 'job-file-newer'],
  ['a format that is no number', forged('x', { format: '1' } as object), 'job-file-damaged'],
  ['deep nesting', `{"known-good": ${deep('[', ']', 60_000)}}`, 'job-file-damaged'],
  [
    'deep nesting of maps',
    `{"known-good": ${'{"a":'.repeat(40_000)}1${'}'.repeat(40_000)}}`,
    'job-file-damaged',
  ],
  ['a number without end', `{"known-good": 1${'0'.repeat(100_000)}}`, 'job-file-damaged'],
  ['very many blanks', `{"known-good"${' '.repeat(300_000)}`, 'job-file-damaged'],
  [
    'very many keys',
    `{"known-good": 1${Array.from({ length: 30_000 }, (_, i) => `,"k${i}":1`).join('')}}`,
    'job-file-damaged',
  ],
  ['more than any file has', forged('x') + ' '.repeat(400_000), 'job-file-too-large'],
];

/** The refusal, in less than two seconds of processor time. */
function refusedInTime(text: string): string {
  const before = process.cpuUsage();
  const code = refusal(text);
  const { user, system } = process.cpuUsage(before);
  expect((user + system) / 1e6).toBeLessThan(2);
  return code;
}

describe('a sealed file that was put together by hand', () => {
  for (const [name, within, code] of WITHIN) {
    it(`with ${name} within is refused in time`, () => {
      const text = forged(within);
      expect(refusedInTime(text)).toBe(code);
    });
  }
  for (const [name, text, code] of AROUND) {
    it(`with ${name} is refused in time`, () => {
      expect(refusedInTime(text)).toBe(code);
    });
  }

  it('leaves every object as it was', () => {
    expect(({} as Record<string, unknown>)['mode']).toBeUndefined();
    expect(Object.keys(Object.prototype)).toEqual([]);
  });
});
