import { describe, expect, it } from 'vitest';
import { SHARING } from '../support/sharing.ts';
import { readKept, sourceFiles } from './support/repoFiles.ts';

/** What changes the program for whoever comes after in the same process. */
const STAYS =
  /\bvi\.(?:mock|doMock|hoisted|resetModules|stubEnv)\(|process\.(?:chdir\(|env(?:\.\w+|\[[^\]]+\]) =[^=])/;

const FOLDERS = SHARING.map((pattern) => pattern.replace('**/*.test.ts', ''));

describe('tests that share a process', () => {
  it('leave the program as it was', () => {
    const files = sourceFiles('tests').filter((path) => FOLDERS.some((folder) => path.startsWith(folder)));
    expect(files.length).toBeGreaterThan(100);
    const stays = files.filter((path) => path !== 'tests/laws/sharing.test.ts' && STAYS.test(readKept(path)));
    expect(stays).toEqual([]);
  });

  it('are known by what they do', () => {
    for (const does of [
      "vi.mock('./a.ts')",
      'vi.hoisted(() => 1)',
      "process.env['A'] = 'b'",
      'process.chdir(folder)',
    ])
      expect(STAYS.test(does), does).toBe(true);
    for (const does of ["vi.spyOn(a, 'b')", "process.env.GOLDEN === 'renew'"])
      expect(STAYS.test(does), does).toBe(false);
  });
});
