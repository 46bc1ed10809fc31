import { describe, expect, it } from 'vitest';
import { checkImports, folderOf } from './support/checkImports.ts';
import { IMPORT_TABLE } from './support/importTable.ts';
import { readKept, sourceFiles } from './support/repoFiles.ts';

describe('who may import whom', () => {
  const files = sourceFiles('src', 'vite.config.ts');

  it('holds in every source file', () => {
    expect(files.length).toBeGreaterThan(10);
    expect(files.flatMap((path) => checkImports(path, readKept(path)))).toEqual([]);
  });

  it('leaves no cycle between folders in what is imported as a value', () => {
    for (const folder of Object.keys(IMPORT_TABLE)) expect(reach(folder), folder).not.toContain(folder);
  });
});

describe('the checker of imports', () => {
  const cases: readonly [string, string, string, RegExp | null][] = [
    [
      'a solver that reads the screen',
      'src/sim/network/a.ts',
      `import { a } from '../../ui/scene/a.ts';`,
      /may not import ui\/scene/,
    ],
    [
      'base that reads the world',
      'src/base/a.ts',
      `export { a } from '../sim/world/World.ts';`,
      /may not import sim\/world/,
    ],
    [
      'a view that asks for faults',
      'src/ui/scene/a.ts',
      `import type { F } from '../../sim/faults/f.ts';`,
      /may not import sim\/faults/,
    ],
    [
      'a dynamic import',
      'src/sim/world/a.ts',
      `const a = await import('../../text/en.ts');`,
      /may not import text/,
    ],
    [
      'a type taken by import()',
      'src/base/a.ts',
      `type A = import('../text/en.ts').A;`,
      /may not import text/,
    ],
    [
      'a value where types only',
      'src/text/a.ts',
      `import { ITEMS } from '../sim/devices/items.ts';`,
      /only types/,
    ],
    [
      'an inline type, which still runs the file',
      'src/text/a.ts',
      `import { type I } from '../sim/devices/items.ts';`,
      /only types/,
    ],
    ['a type where types only', 'src/text/a.ts', `import type { I } from '../sim/devices/items.ts';`, null],
    ['a foreign package', 'src/sim/world/a.ts', `import { z } from 'zod';`, /may not use zod/],
    [
      'a foreign scoped package',
      'src/ui/scene/a.ts',
      `import { s } from '@preact/signals';`,
      /may not use @preact\/signals/,
    ],
    ['node in the browser', 'src/app/main.tsx', `import fs from 'node:fs';`, /may not use node:fs/],
    [
      'the command line in the browser',
      'src/app/main.tsx',
      `import { m } from '../cli/main.ts';`,
      /may not import cli/,
    ],
    ['a folder nobody planned', 'src/misc/a.ts', '', /not in the import table/],
    [
      'the names of places in a view',
      'src/ui/scene/a.ts',
      `import { CAVITIES } from '../../sim/devices/places.ts';`,
      null,
    ],
    [
      'another device in a view',
      'src/ui/scene/a.ts',
      `import { M } from '../../sim/devices/Meter.ts';`,
      /may not import sim\/devices/,
    ],
    ['a file below its own folder', 'src/sim/world/apply/a.ts', `import { W } from '../World.ts';`, null],
    ['a package below its name', 'src/ui/panels/a.tsx', `import { useState } from 'preact/hooks';`, null],
    ['an import in a comment', 'src/base/a.ts', `// import { a } from '../text/en.ts';`, null],
    ['an import in a text', 'src/base/a.ts', `const a = "import { a } from '../text/en.ts'";`, null],
  ];
  for (const [name, path, text, expected] of cases) {
    it(`${expected === null ? 'lets pass' : 'stops'} ${name}`, () => {
      const complaints = checkImports(path, text);
      if (expected === null) expect(complaints).toEqual([]);
      else expect(complaints.join('\n')).toMatch(expected);
    });
  }

  it('names folders as the table does', () => {
    expect(folderOf('src/sim/world/apply/place.ts')).toBe('sim/world');
    expect(folderOf('src/app/main.tsx')).toBe('app');
    expect(folderOf('assets/sounds/tone.wav')).toBe('assets');
  });
});

/** Every folder that a folder's values can come from, through any number of steps. */
function reach(folder: string): ReadonlySet<string> {
  const seen = new Set<string>();
  const open = valueFolders(folder);
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    if (seen.has(next)) continue;
    seen.add(next);
    open.push(...valueFolders(next));
  }
  return seen;
}

function valueFolders(folder: string): string[] {
  const patterns = IMPORT_TABLE[folder]?.folders ?? [];
  return patterns.flatMap((pattern) => {
    if (!pattern.endsWith('*')) return [pattern];
    return Object.keys(IMPORT_TABLE).filter(
      (name) => name !== folder && name.startsWith(pattern.slice(0, -1)),
    );
  });
}
