import { readFileSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { describe, expect, it } from 'vitest';
import { benchScreen } from '../../src/text/en/benchScreen.ts';
import { catalogue } from '../../src/text/en/catalogue.ts';
import { firstScreen } from '../../src/text/en/firstScreen.ts';
import { benchScreen as spanishBench } from '../../src/text/es/benchScreen.ts';
import { firstScreen as spanishFirst } from '../../src/text/es/firstScreen.ts';

const ROOT = join(import.meta.dirname, '../..');

/** Sources that are there as soon as `entry` is: what it imports, and what that imports, but not what is fetched later. */
function thereWith(entries: readonly string[]): readonly string[] {
  const seen = new Set<string>();
  const visit = (path: string): void => {
    if (seen.has(path)) return;
    seen.add(path);
    const text = readFileSync(join(ROOT, path), 'utf8');
    for (const [, clause, from] of text.matchAll(/^(?:import|export)\s+([^;]*?\s+from\s+)?'(\.[^']+)';/gms)) {
      if (clause?.startsWith('type ') || from === undefined || !/\.tsx?$/.test(from)) continue;
      visit(normalize(join(dirname(path), from)));
    }
  };
  entries.forEach(visit);
  return [...seen];
}

/** Groups of sentences that a source names in full: `say('board.title')`, `say(`modes.${mode}`)`, a key in a table. */
function groupsNamedIn(path: string): ReadonlySet<string> {
  const text = readFileSync(join(ROOT, path), 'utf8').replace(/\/\*\*.*?\*\//gs, '');
  const groups = new Set<string>();
  for (const [, group] of text.matchAll(/['`]([a-z][a-zA-Z]*)\.[a-zA-Z$][^'`\s]*['`]/g)) {
    if (group !== undefined && group in catalogue) groups.add(group);
  }
  return groups;
}

function missing(entries: readonly string[], sentences: object): readonly string[] {
  return thereWith(entries)
    .filter((path) => !path.startsWith('src/text/en/'))
    .flatMap((path) =>
      [...groupsNamedIn(path)].filter((group) => !(group in sentences)).map((group) => `${path}: ${group}`),
    );
}

/** Said of a drive or a reading, which there is none of on the first screen. */
const NEVER_ON_THE_BOARD = ['src/text/format.ts: roadTest'];

describe('a screen has its sentences as soon as it has its code', () => {
  it('the first screen', () => {
    const lacks = missing(['src/app/main.tsx'], firstScreen);
    expect(lacks.filter((line) => !NEVER_ON_THE_BOARD.includes(line))).toEqual([]);
  });

  it('the first screen in Spanish, and no more than in English', () => {
    expect(Object.keys(spanishFirst).sort()).toEqual(Object.keys(firstScreen).sort());
  });

  it('the bench', () => {
    const bench = ['src/app/main.tsx', 'src/app/JobScreen.tsx', 'src/ui/scene/createScene.ts'];
    expect(missing(bench, benchScreen)).toEqual([]);
  });

  it('the bench in Spanish, and no more than in English', () => {
    expect(Object.keys(spanishBench).sort()).toEqual(Object.keys(benchScreen).sort());
  });

  it('finds sentences where there are some', () => {
    expect([...groupsNamedIn('src/ui/panels/Board.tsx')]).toContain('board');
    expect(thereWith(['src/app/main.tsx'])).toContain('src/ui/panels/Board.tsx');
    expect(thereWith(['src/app/main.tsx'])).not.toContain('src/ui/panels/BenchScreen.tsx');
    expect(missing(['src/ui/panels/CoachPanel.tsx'], firstScreen)).not.toEqual([]);
  });
});
