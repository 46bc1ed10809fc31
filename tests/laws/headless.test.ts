import { describe, expect, it } from 'vitest';
import { checkHeadless } from './support/checkHeadless.ts';
import { readKept, sourceFiles } from './support/repoFiles.ts';

describe('headless code', () => {
  const files = sourceFiles('src/base', 'src/sim', 'src/training');

  it('has no clock, no chance, no output, no browser, and only exact maths', () => {
    expect(files.length).toBeGreaterThan(10);
    expect(files.flatMap((path) => checkHeadless(path, readKept(path)))).toEqual([]);
  });
});

describe('the checker of headless code', () => {
  const stopped = [
    'const t = Date.now();',
    'const t = new Date();',
    'const t = performance.now();',
    'setTimeout(() => {}, 10);',
    'const r = Math.random();',
    'const y = Math.exp(x);',
    'const y = Math.log(x) + Math.sin(x);',
    'const y = x ** 2;',
    'let y = x; y **= 3;',
    'const { pow } = Math;',
    'const y = Math[name](x);',
    'console.log(1);',
    'document.title;',
    'const s = a.localeCompare(b);',
    'const p = { console };',
    'globalThis.setTimeout(f);',
  ];
  for (const text of stopped) {
    it(`stops ${text}`, () => {
      expect(checkHeadless('src/sim/world/a.ts', text).length).toBeGreaterThan(0);
    });
  }

  it('holds sim to fewer functions than training', () => {
    const text = 'const y = Math.round(x);';
    expect(checkHeadless('src/sim/world/a.ts', text)).toHaveLength(1);
    expect(checkHeadless('src/training/score/a.ts', text)).toEqual([]);
    expect(checkHeadless('src/training/score/a.ts', 'const y = Math.log(x);')).toHaveLength(1);
  });

  const passed = [
    'const y = Math.sqrt(Math.abs(x)) + Math.floor(z);',
    '// Math.random() is not used here, nor Date.now()',
    "const word = 'Date.now()';",
    'const seen = view.process.Date;',
    'interface A { readonly performance: number }',
    'function f(window: number) { return window * 2; }',
  ];
  for (const text of passed) {
    it(`lets pass ${text}`, () => {
      expect(checkHeadless('src/sim/world/a.ts', text)).toEqual([]);
    });
  }
});
