import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { openScenario } from '../../src/cli/openScenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const folder = mkdtempSync(join(tmpdir(), 'known-good-hostile-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const file = join(folder, 'job.yaml');

function linesOf(bytes: Uint8Array | string): readonly string[] {
  writeFileSync(file, bytes);
  return refusal(file);
}

/** What is said, in less than two seconds of processor time. */
function refusal(path: string): readonly string[] {
  const before = process.cpuUsage();
  const opened = openScenario(path);
  const { user, system } = process.cpuUsage(before);
  expect((user + system) / 1e6).toBeLessThan(2);
  return opened.ok ? [] : opened.error.lines;
}

/** A byte a letter, as before UTF-8. */
const latin1 = Buffer.from(SCENARIO_TEXT.replace('short job', 'caf\u00e9 job'), 'latin1');
const NOT_TEXT = `${file}: this is not UTF-8 text. Save it as UTF-8.`;

describe('the bytes of a scenario file', () => {
  it.each<readonly [string, Uint8Array]>([
    ['UTF-16 with its mark', Buffer.from(`\ufeff${SCENARIO_TEXT}`, 'utf16le')],
    ['UTF-16 with the high byte first', Buffer.from(`\ufeff${SCENARIO_TEXT}`, 'utf16le').swap16()],
    ['Latin-1', latin1],
    ['half a letter at the end', Buffer.from(`${SCENARIO_TEXT}# \u03a9`, 'utf8').subarray(0, -1)],
    [
      'a letter in more bytes than it needs',
      Buffer.concat([Buffer.from(SCENARIO_TEXT), Buffer.from([0xc0, 0xaf])]),
    ],
    [
      'half a pair in three bytes',
      Buffer.concat([Buffer.from(SCENARIO_TEXT), Buffer.from([0xed, 0xa0, 0x80])]),
    ],
    ['a picture', Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 0x0d])],
  ])('as %s are refused', (_name, bytes) => {
    expect(linesOf(bytes)).toEqual([NOT_TEXT]);
  });

  it('of UTF-16 without a mark are refused', () => {
    expect(linesOf(Buffer.from(SCENARIO_TEXT, 'utf16le'))).toEqual([
      `${file}:1:2: this is not text in UTF-8. Save the file as plain text, in UTF-8.`,
    ]);
  });

  it('with a mark of byte order are read', () => {
    expect(linesOf(`\ufeff${SCENARIO_TEXT}`)).toEqual([]);
  });

  it('may be a quarter of a mebibyte, and not one more', () => {
    const full = Buffer.from(SCENARIO_TEXT.padEnd(256 * 1024, '#'));
    expect(linesOf(full)).toEqual([]);
    expect(linesOf(Buffer.concat([full, Buffer.from('#')]))).toEqual([
      `${file}:1:1: the file has 257 KiB. No more than 256 KiB are allowed: shorten it.`,
    ]);
  });

  it.each([17, 100, 4096])('of %i MiB are not even read', (size) => {
    writeFileSync(file, SCENARIO_TEXT);
    // Grown without writing: the blocks are not there, but whoever reads the file gets every byte.
    truncateSync(file, size * 1024 * 1024);
    const before = process.memoryUsage().rss;
    expect(refusal(file)).toEqual([
      `${file}: this file is too large for what it should be. Check that it is the right one.`,
    ]);
    expect(process.memoryUsage().rss - before).toBeLessThan(16 * 1024 * 1024);
  });
});

describe('what is no file', () => {
  it('is not waited for', () => {
    const pipe = join(folder, 'pipe.yaml');
    execFileSync('mkfifo', [pipe]);
    for (const path of [folder, pipe, '/dev/zero']) {
      expect(refusal(path)).toEqual([
        `${path}: this cannot be read or written. Check that it is a file and that you may use it.`,
      ]);
    }
  });

  it('or is not there, is said to be so', () => {
    expect(refusal(join(folder, 'none.yaml'))[0]).toContain('there is no such file. Check the path.');
  });
});
