import { describe, expect, it } from 'vitest';
import { checkTies, checkTopLevel, checkVersions } from './support/checkRepository.ts';
import { keptFiles, readKept } from './support/repoFiles.ts';

const NOT_TEXT = /\.(wav|woff2?|ttf|otf|png|jpg|ico)$/;

describe('the repository', () => {
  const files = keptFiles();

  it('holds at its top only what the map allows', () => {
    expect(files).toContain('package.json');
    expect(checkTopLevel(files)).toEqual([]);
  });

  it('is tied to no machine and no package registry', () => {
    const texts = files.filter((path) => !NOT_TEXT.test(path));
    expect(texts.flatMap((path) => checkTies(path, readKept(path)))).toEqual([]);
  });

  it('pins every package to one version', () => {
    expect(checkVersions(readKept('package.json'))).toEqual([]);
  });
});

describe('the checkers of the repository', () => {
  it('stop a stranger at the top', () => {
    const files = ['src/a.ts', 'notes/a.md', 'tsconfig.headless.json', 'Makefile', '.ci/run'];
    expect(checkTopLevel(files)).toEqual(['notes', 'Makefile']);
  });

  // In pieces, so that this file does not break the rule it tests.
  const tied = [
    ['', 'home', 'ann', 'truck'].join('/'),
    `cd ${['', 'tmp', 'x'].join('/')}`,
    ['C:', 'Users', 'ann'].join('\\'),
    `https:${['', '', 'registry.example.org', 'zod'].join('/')}`,
    `https:${['', '', 'npm.example.org', 'zod'].join('/')}`,
    ['registry', 'https://example.org'].join('='),
    `{ "${'resolved'}": "https://example.org/zod.tgz" }`,
    `http:${['', '', '192.168.1.7'].join('/')}`,
  ];
  for (const text of tied) {
    it(`stop ${text}`, () => expect(checkTies('a.md', text).length).toBeGreaterThan(0));
  }

  for (const text of [
    'http://127.0.0.1:4173/',
    'npm ci',
    'src/work/order.ts',
    'https://example.org/home/page',
    './tmp',
  ]) {
    it(`let pass ${text}`, () => expect(checkTies('a.md', text)).toEqual([]));
  }

  it('stop a version that floats', () => {
    const text = JSON.stringify({
      dependencies: { a: '^1.2.3', b: '1.2.3' },
      devDependencies: { c: 'latest' },
    });
    expect(checkVersions(text)).toEqual(['a: ^1.2.3', 'c: latest']);
  });
});
