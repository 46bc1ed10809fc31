import { describe, expect, it } from 'vitest';
import { checkStyle } from './support/checkStyle.ts';
import { readKept, sourceFiles } from './support/repoFiles.ts';

describe('source and test files', () => {
  const files = sourceFiles('src', 'tests', 'assets', 'vite.config.ts');

  it('are short, well named, and free of default exports, enums, barrels, any and silencers', () => {
    expect(files.length).toBeGreaterThan(20);
    expect(files.flatMap((path) => checkStyle(path, readKept(path)))).toEqual([]);
  });
});

describe('the checker of style', () => {
  const silencer = ['// @ts', 'ignore'].join('-');
  const cases: readonly [string, string, string, RegExp | null][] = [
    ['a default export', 'src/a.ts', 'export default 3;', /default export/],
    [
      'a default export by another name',
      'src/a.ts',
      'const a = 1; export { a as default };',
      /default export/,
    ],
    ['an enum', 'src/a.ts', 'enum A { B }', /enum/],
    ['a const enum', 'src/a.ts', 'export const enum A { B }', /enum/],
    ['any', 'src/a.ts', 'export const a: any = 1;', /any/],
    ['any in a generic', 'src/a.tsx', 'export const a = new Map<string, any>();', /any/],
    ['a barrel', 'src/a.ts', `export { a } from './b.ts';\nexport { c } from './d.ts';`, /barrel/],
    ['a barrel that imports first', 'src/a.ts', `import { a } from './b.ts';\nexport { a };`, /barrel/],
    ['export *', 'src/a.ts', `export * from './b.ts';\nexport const c = 1;`, /export \*/],
    ['a silencer', 'src/a.ts', `${silencer}\nexport const a = 1;`, /silenced/],
    ['a long file', 'src/a.ts', 'export const a = 1;\n'.replace('a', 'a0') + '\n'.repeat(400), /401 lines/],
    ['types.ts', 'src/sim/world/types.ts', 'export const a = 1;', /says nothing/],
    ['utils.tsx', 'src/ui/panels/utils.tsx', 'export const a = 1;', /says nothing/],
    ['settings with a default export', 'vite.config.ts', 'export default {};', null],
    ['a file of 400 lines', 'src/a.ts', 'export const a = 1;\n'.padEnd(19 + 400, '\n'), null],
    ['the word any in a text', 'src/a.ts', `export const a = 'any enum';`, null],
    [
      'one name passed on beside others',
      'src/a.ts',
      `export { a } from './b.ts';\nexport const c = 1;`,
      null,
    ],
  ];
  for (const [name, path, text, expected] of cases) {
    it(`${expected === null ? 'lets pass' : 'stops'} ${name}`, () => {
      const complaints = checkStyle(path, text);
      if (expected === null) expect(complaints).toEqual([]);
      else expect(complaints.join('\n')).toMatch(expected);
    });
  }
});
