import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Document, isMap, isScalar } from 'yaml';
import { scenarioProblemLine } from '../../src/text/cli.ts';
import { FORMATS, type Formats } from '../../src/training/scenario/formats.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

/** Two formats that never were: −1 said `name` for the title, −1 and 0 gave the temperature in Fahrenheit. */
const MADE_UP: Formats = {
  newest: 1,
  migrations: [
    { from: -1, migrate: (document) => renameKey(document, [], 'name', 'title') },
    {
      from: 0,
      migrate: (document) => {
        renameKey(document, ['bench'], 'ambient-fahrenheit', 'ambient-celsius');
        const node = document.getIn(['bench', 'ambient-celsius'], true);
        if (isScalar(node) && typeof node.value === 'number') node.value = ((node.value - 32) * 5) / 9;
      },
    },
  ],
};

function renameKey(document: Document, path: readonly string[], from: string, to: string): void {
  const map = path.length === 0 ? document.contents : document.getIn(path, true);
  if (!isMap(map)) return;
  for (const { key } of map.items) if (isScalar(key) && key.value === from) key.value = to;
}

const OLDEST = SCENARIO_TEXT.replace('format: 1', 'format: -1')
  .replace('title:', 'name:')
  .replace('ambient-celsius: 20', 'ambient-fahrenheit: 68');

function lines(text: string, formats: Formats = FORMATS): string[] {
  const loaded = loadScenario(text, 'job.yaml', formats);
  return loaded.ok ? [] : loaded.error.map(scenarioProblemLine);
}

describe('a file of an older format', () => {
  it('goes through one migration after the other, and is then the same as one written anew', () => {
    const old = loadScenario(OLDEST, 'job.yaml', MADE_UP);
    expect(old).toEqual(loadScenario(SCENARIO_TEXT, 'job.yaml'));
    const middle = OLDEST.replace('format: -1', 'format: 0').replace('name:', 'title:');
    expect(loadScenario(middle, 'job.yaml', MADE_UP)).toEqual(old);
  });

  it('is not touched by the migrations before its own', () => {
    expect(lines(OLDEST.replace('format: -1', 'format: 0'), MADE_UP)).toEqual([
      expect.stringContaining('the key "title" is missing'),
      expect.stringContaining('there is no key "name"'),
    ]);
  });

  it('has its problems at the places of its own text', () => {
    const text = OLDEST.replace('name: A short job', 'name: 12').replace(': 68', ': 300');
    expect(lines(text, MADE_UP)).toEqual([
      'job.yaml:3:7: title: found 12, but text belongs here. Put text in quotes.',
      expect.stringMatching(
        /^job\.yaml:22:23: bench\.ambient-celsius: 148\.8\d* is too large\. Use 50 or less\.$/,
      ),
    ]);
  });

  it('with the wrong shape is told of as any other', () => {
    expect(lines(OLDEST.replace(/bench:\n(?: {2}.*\n)+/, 'bench: sunny\n'), MADE_UP)).toEqual([
      'job.yaml:21:8: bench: found sunny, but a group of keys belongs here. Change it.',
    ]);
  });
});

describe('a format that cannot be read', () => {
  it.each([
    [
      'format: 2',
      'job.yaml:1:9: format: this file is of format 2, and this version of the program reads up to format 1. Use a version that reads format 2.',
    ],
    ['format: 1.5', 'job.yaml:1:9: format: there is no such format. Write "format: 1".'],
    ['format: 0', 'job.yaml:1:9: format: there is no such format. Write "format: 1".'],
    ['format: "1"', 'job.yaml:1:9: format: there is no such format. Write "format: 1".'],
    ['format:', 'job.yaml:1:1: format: the file does not say its format. Add "format: 1".'],
    ['format: { a: 1 }', 'job.yaml:1:9: format: there is no such format. Write "format: 1".'],
    ['# none', 'job.yaml:2:1: format: the file does not say its format. Add "format: 1".'],
  ])('%s', (line, sentence) => {
    expect(lines(SCENARIO_TEXT.replace('format: 1', line))).toEqual([sentence]);
  });

  it('names the formats that there are, where there are several', () => {
    expect(lines(SCENARIO_TEXT.replace('format: 1', 'format: -7'), MADE_UP)[0]).toContain(
      'Write a number from -1 to 1; a new file has "format: 1".',
    );
  });

  it('missing or odd hides no other problem; newer hides them all, for nobody knows what they mean', () => {
    const worse = SCENARIO_TEXT.replace('level: 1', 'level: 9');
    expect(lines(worse.replace('format: 1', 'format: one'))).toHaveLength(2);
    expect(lines(worse.replace('format: 1\n', ''))).toHaveLength(2);
    expect(lines(worse.replace('format: 1', 'format: 2'))).toHaveLength(1);
  });
});

describe('the table of migrations', () => {
  it('has one for each format between the oldest and the newest', () => {
    const { newest, migrations } = FORMATS;
    const from = migrations.map((each) => each.from).sort((a, b) => a - b);
    expect(from).toEqual(from.map((_, i) => newest - from.length + i));
  });

  it('leads to the format that the schema asks for, and that the guide names', () => {
    const guide = readFileSync(new URL('../../scenarios/README.md', import.meta.url), 'utf8');
    expect(guide).toContain(`| \`format\` | always \`${FORMATS.newest}\` |`);
    expect(lines(SCENARIO_TEXT.replace('format: 1', `format: ${FORMATS.newest}`))).toEqual([]);
  });
});
