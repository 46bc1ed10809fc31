import { describe, expect, it } from 'vitest';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { codeBlocks, namedScripts, unknownPaths, unmappedFolders } from './support/checkDocuments.ts';
import { keptFiles, readKept, sourceFiles } from './support/repoFiles.ts';

const readme = readKept('README.md');
const developers = readKept('DEVELOPERS.md');
const scripts = Object.keys((JSON.parse(readKept('package.json')) as { scripts: object }).scripts);

describe('README.md', () => {
  it('shows a scenario that loads', () => {
    const [example, ...more] = codeBlocks(readme, 'yaml');
    expect(more).toEqual([]);
    const loaded = loadScenario(example ?? '', 'README.md');
    expect(loaded.ok ? null : loaded.error).toBeNull();
  });

  it('names first the two commands, and only commands that exist', () => {
    expect(codeBlocks(readme, '').slice(0, 2)).toEqual(['npm start', 'npm test']);
    expect(scripts).toEqual(expect.arrayContaining(['start', 'test', ...namedScripts(readme)]));
  });
});

describe('DEVELOPERS.md', () => {
  it('maps every folder of the sources', () => {
    expect(unmappedFolders(developers, sourceFiles('src'))).toEqual([]);
  });

  it('names only paths and commands that exist', () => {
    expect(unknownPaths(developers, keptFiles())).toEqual([]);
    expect(scripts).toEqual(expect.arrayContaining([...namedScripts(developers)]));
  });
});

describe('the checkers of documents', () => {
  it('find a folder without an entry, and an entry without its invariant', () => {
    const text = '### `src/base`\nWords.\n*Invariant:* one.\n\n### `src/app`\nWords.\n';
    const files = ['src/base/a.ts', 'src/app/main.tsx', 'src/text/en/bench.ts'];
    expect(unmappedFolders(text, files)).toEqual(['app', 'text']);
  });

  it('find a path that is not there', () => {
    const text = 'See `src/base/ticks.ts`, `src/base` and `tests/gone/`; run `npx vitest run tests/world`.';
    expect(unknownPaths(text, ['src/base/ticks.ts'])).toEqual(['tests/gone']);
  });

  it('find the scripts a text names', () => {
    expect(namedScripts('`npm run -s known-good -- check` and `npm run dev`')).toEqual(['known-good', 'dev']);
  });
});
