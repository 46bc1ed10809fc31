import { describe, expect, it } from 'vitest';
import { BUDGETS, countedFiles, weigh } from '../../../src/platform/node/build/budgets.ts';
import type { BuiltChunk, BuiltGraph } from '../../../src/platform/node/build/sizes.ts';

const chunk = (source: string | null, more: Partial<BuiltChunk> = {}): BuiltChunk => ({
  source,
  imports: [],
  dynamicImports: [],
  files: [],
  ...more,
});

/** What a bench takes in any language. */
const STANDING = ['bench.js', 'world.js', 'scene.js', 'webgl.js', 'worker.js'];
const SPANISH = ['tablero.js', 'tickets.js', 'banco.js', 'jobs.js', 'todo.js'];

/** A small build: a page with a font, a bench that shares code with its worker, two jobs, and what comes later. */
function build(sizes: Readonly<Record<string, number>> = {}): BuiltGraph {
  return {
    chunks: new Map([
      [
        'page.js',
        chunk('index.html', {
          imports: ['shared.js'],
          dynamicImports: ['bench.js', 'easy.js', 'hard.js', 'benchWords.js', 'allWords.js', ...SPANISH],
          files: ['page.css', 'assets/letters-latin-400.woff2', 'assets/letters-latin-ext-400.woff2'],
        }),
      ],
      ['shared.js', chunk(null)],
      [
        'bench.js',
        chunk('src/app/JobScreen.tsx', { imports: ['world.js'], dynamicImports: ['scene.js', 'verdict.js'] }),
      ],
      ['world.js', chunk(null)],
      ['scene.js', chunk('src/ui/scene/createScene.ts', { dynamicImports: ['webgl.js', 'canvas.js'] })],
      ['webgl.js', chunk('src/ui/scene/renderer/webgl.ts')],
      ['canvas.js', chunk('src/ui/scene/renderer/canvas.ts')],
      ['verdict.js', chunk('src/ui/panels/VerdictDialog.tsx')],
      ['benchWords.js', chunk('src/text/en/benchScreen.ts')],
      ['allWords.js', chunk('src/text/en/catalogue.ts', { imports: ['benchWords.js'] })],
      ['tablero.js', chunk('src/text/es/firstScreen.ts')],
      ['tickets.js', chunk('virtual:spanish-board')],
      ['banco.js', chunk('src/text/es/benchScreen.ts', { imports: ['tablero.js'] })],
      ['todo.js', chunk('src/text/es/catalogue.ts', { imports: ['banco.js'] })],
      ['jobs.js', chunk('virtual:spanish-jobs', { dynamicImports: ['facil.js', 'dificil.js', 'todos.js'] })],
      ['facil.js', chunk('virtual:spanish-job/easy')],
      ['dificil.js', chunk('virtual:spanish-job/hard')],
      ['todos.js', chunk('virtual:spanish-job/*')],
      [
        'worker.js',
        chunk('src/app/evidence/evidenceWorker.ts', { imports: ['world.js'], files: ['shop.json'] }),
      ],
      ['easy.js', chunk('virtual:scenario/easy')],
      ['hard.js', chunk('virtual:scenario/hard')],
    ]),
    sizeOf: (file) => sizes[file] ?? 1000,
  };
}

describe('what counts for a budget', () => {
  it('for the first screen: the page, what it imports, styles, and the fonts of the letters that are used', () => {
    expect(new Set(countedFiles(build())['first screen'])).toEqual(
      new Set(['index.html', 'page.js', 'shared.js', 'page.css', 'assets/letters-latin-400.woff2']),
    );
  });

  it('for the first screen in Spanish: also the sentences that it has, and no others', () => {
    const counts = countedFiles(build());
    expect(new Set(counts['first screen in Spanish'])).toEqual(
      new Set([...counts['first screen'], 'tablero.js', 'tickets.js']),
    );
    expect(counts.bench).not.toContain('tablero.js');
  });

  it('for the bench: all that, code that is fetched to stand it up, the worker without its tables, and the heaviest job', () => {
    const { bench, 'first screen': first } = countedFiles(build({ 'hard.js': 3000 }));
    expect(new Set(bench)).toEqual(new Set([...first, ...STANDING, 'benchWords.js', 'hard.js']));
  });

  it('for the bench in Spanish: the same without its English, and what is said there and in that one job', () => {
    const { 'bench in Spanish': bench, 'first screen in Spanish': first } = countedFiles(
      build({ 'hard.js': 3000, 'facil.js': 2500 }),
    );
    expect(new Set(bench)).toEqual(
      new Set([...first, ...STANDING, 'banco.js', 'jobs.js', 'hard.js', 'dificil.js']),
    );
    const other = countedFiles(build({ 'hard.js': 3000, 'facil.js': 4500 }))['bench in Spanish'];
    expect(other).toContain('facil.js');
    expect(other).not.toContain('dificil.js');
  });

  it('counts what page and worker share once', () => {
    const { bench } = countedFiles(build());
    expect(bench.filter((file) => file === 'world.js')).toHaveLength(1);
  });

  it('counts code that nobody has named as later', () => {
    const graph = build();
    const more = new Map(graph.chunks);
    more.set('bench.js', chunk('src/app/JobScreen.tsx', { dynamicImports: ['new.js'] }));
    more.set('new.js', chunk('src/ui/panels/SomethingNew.tsx'));
    expect(countedFiles({ ...graph, chunks: more }).bench).toContain('new.js');
  });

  it('does not pass over a build without a bench', () => {
    const graph = build();
    const chunks = new Map([...graph.chunks].filter(([file]) => file !== 'bench.js'));
    expect(() => countedFiles({ ...graph, chunks })).toThrow('src/app/JobScreen.tsx');
  });
});

describe('the verdict of the scales', () => {
  it('is good within all budgets, and says what they come to', () => {
    const { kept, lines } = weigh(build());
    expect(kept).toBe(true);
    expect(lines[0]).toMatch(/^first screen: 4\.9 of 150\.0 KiB gzip/);
  });

  it('is bad when one of them is exceeded, by a byte', () => {
    const rest = 4000;
    const inSpanish = { 'tablero.js': 0, 'tickets.js': 0 };
    expect(weigh(build({ ...inSpanish, 'page.js': BUDGETS['first screen'] - rest })).kept).toBe(true);
    const over = weigh(build({ ...inSpanish, 'page.js': BUDGETS['first screen'] - rest + 1 }));
    expect(over.kept).toBe(false);
    expect(over.lines[0]).toContain('OVER ITS BUDGET');
    expect(weigh(build({ 'tickets.js': BUDGETS['first screen in Spanish'] })).kept).toBe(false);
    expect(weigh(build({ 'world.js': BUDGETS.bench })).kept).toBe(false);
    expect(weigh(build({ 'banco.js': BUDGETS['bench in Spanish'] })).kept).toBe(false);
  });
});
