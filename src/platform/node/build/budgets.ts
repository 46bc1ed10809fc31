import { type BuiltGraph, fetchedWith, sumOf } from './sizes.ts';

/** Most gzipped bytes that a learner's device fetches before a screen stands, all that came before it counted. */
export const BUDGETS = {
  'first screen': 150 * 1024,
  'first screen in Spanish': 150 * 1024,
  bench: 450 * 1024,
} as const;

/**
 * What is fetched only when it is asked for, or ahead of that while the bench is in use: code by the source it begins with,
 * other files by a part of their name. Whatever else the first screen and the bench may lead to counts, so that a new
 * import weighs until somebody has said here why it need not.
 */
const LATER = {
  code: [
    // Dialogs and tabs that are shut when the bench is first seen.
    'src/ui/panels/VerdictDialog.tsx',
    'src/ui/panels/CupboardDialog.tsx',
    'src/ui/panels/RoadTestDialog.tsx',
    'src/ui/panels/CloseJobDialog.tsx',
    'src/ui/panels/MarkDialog.tsx',
    'src/ui/panels/ShortcutsDialog.tsx',
    'src/ui/panels/SettingsDialog.tsx',
    'src/ui/panels/SuspectBoard.tsx',
    'src/ui/panels/ServiceData.tsx',
    'src/ui/panels/ReaderPanel.tsx',
    'src/ui/panels/CoachPanel.tsx',
    'src/ui/inside/InsideView.tsx',
    // The strip chart's room is kept, and its curves are drawn when the bench has nothing else to do.
    'node_modules/uplot/dist/uPlot.esm.js',
    // Nothing sounds before the bench stands and something on it is touched.
    'src/ui/sound/howlerPlayer.ts',
    // What guards the program against a kept sitting that is not one: fetched where one was kept.
    'src/app/readStored.ts',
    'src/app/facts/readFacts.ts',
    // Sentences of these and of the closed job.
    'src/text/wholeEnglish.ts',
    // The closed job.
    'src/app/ClosedJob.tsx',
    'src/app/DebriefScreen.tsx',
    'src/app/replay/replayWorker.ts',
    'src/app/evidence/debriefing.ts',
    // Instead of, not beside, WebGL.
    'src/ui/scene/renderer/canvas.ts',
    // Keeps the program for use without the network, once the page is idle.
    'src/app/offline/followProgram.ts',
    // Another language, when it is chosen.
    'src/text/es/firstScreen.ts',
    'virtual:spanish-board',
    'src/text/es/catalogue.ts',
    'virtual:spanish-jobs',
  ],
  // Letters that no sentence of the program has.
  files: ['-latin-ext-'],
} as const;

/** The board's program, the bench's, and what opening a job fetches of that one job. */
const PAGE = 'index.html';
/** What the board waits for besides where it speaks Spanish. */
const SPANISH = ['src/text/es/firstScreen.ts', 'virtual:spanish-board'];
const BENCH = 'src/app/JobScreen.tsx';
const EVIDENCE = 'src/app/evidence/evidenceWorker.ts';
const JOB = 'virtual:scenario/';

/** The files that count for each budget. */
export function countedFiles(graph: BuiltGraph): Readonly<Record<keyof typeof BUDGETS, readonly string[]>> {
  const entry = (source: string): string => {
    const found = [...graph.chunks].find(([, chunk]) => chunk.source === source);
    if (found === undefined) throw new Error(`the build has no code that begins with ${source}`);
    return found[0];
  };
  const first = new Set([PAGE, ...counted(fetchedWith(graph, [entry(PAGE)]))]);
  const spanish = new Set([...first, ...counted(fetchedWith(graph, SPANISH.map(entry)))]);
  const jobs = [...graph.chunks].filter(([, { source }]) => source?.startsWith(JOB)).map(([file]) => file);
  const heaviest = jobs.sort((a, b) => graph.sizeOf(b) - graph.sizeOf(a)).slice(0, 1);
  const bench = new Set([...first, ...heaviest]);
  const waiting = [entry(PAGE), entry(BENCH), entry(EVIDENCE)];
  const walked = new Set<string>();
  while (waiting.length > 0) {
    for (const file of fetchedWith(graph, [waiting.pop() ?? ''])) {
      if (walked.has(file)) continue;
      walked.add(file);
      waiting.push(...(graph.chunks.get(file)?.dynamicImports ?? []).filter((each) => isSooner(graph, each)));
    }
  }
  for (const file of counted(walked)) bench.add(file);
  return { 'first screen': [...first], 'first screen in Spanish': [...spanish], bench: [...bench] };
}

function counted(files: ReadonlySet<string>): readonly string[] {
  return [...files].filter((file) => !LATER.files.some((part) => file.includes(part)));
}

function isSooner(graph: BuiltGraph, file: string): boolean {
  const source = graph.chunks.get(file)?.source ?? '';
  return !source.startsWith(JOB) && !LATER.code.some((later) => later === source);
}

/** One line a budget, and whether all are kept. */
export function weigh(graph: BuiltGraph): { readonly lines: readonly string[]; readonly kept: boolean } {
  const files = countedFiles(graph);
  let kept = true;
  const lines: string[] = [];
  for (const name of Object.keys(BUDGETS) as (keyof typeof BUDGETS)[]) {
    const sum = sumOf(graph, files[name]);
    const within = sum <= BUDGETS[name];
    kept &&= within;
    lines.push(
      `${name}: ${kib(sum)} of ${kib(BUDGETS[name])} KiB gzip${within ? '' : ', OVER ITS BUDGET'} (${files[name].length} files)`,
    );
    const heavy = [...files[name]].sort((a, b) => graph.sizeOf(b) - graph.sizeOf(a)).slice(0, 8);
    lines.push(
      `  most in ${heavy.map((file) => `${file.replace('assets/', '')} ${kib(graph.sizeOf(file))}`).join(', ')}`,
    );
  }
  return { lines, kept };
}

function kib(bytes: number): string {
  return (bytes / 1024).toFixed(1);
}
