import { type BuiltGraph, fetchedWith, sumOf } from './sizes.ts';

/** Most gzipped bytes that a learner's device fetches before a screen stands, all that came before it counted. */
export const BUDGETS = {
  'first screen': 150 * 1024,
  'first screen in Spanish': 150 * 1024,
  bench: 450 * 1024,
  'bench in Spanish': 450 * 1024,
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
    // What was shown is weighed from the first thing that somebody does at the bench.
    'src/app/evidence/weighing.ts',
    // Sentences of these and of the closed job.
    'src/text/en/catalogue.ts',
    'src/text/es/catalogue.ts',
    // Job files, when one is opened or there are any, and a truth that is drawn when its job is taken.
    'src/app/handout/HandoutDialogs.tsx',
    'src/app/handout/removeFileJob.ts',
    'src/app/handout/seated.ts',
    'src/ui/panels/FileJobs.tsx',
    // The closed job.
    'src/app/ClosedJob.tsx',
    'src/app/DebriefScreen.tsx',
    'src/app/replay/replayWorker.ts',
    'src/app/evidence/debriefing.ts',
    // Instead of, not beside, WebGL.
    'src/ui/scene/renderer/canvas.ts',
    // Keeps the program for use without the network, once the page is idle.
    'src/app/offline/followProgram.ts',
    // What rigs beside the first have of their own, with the first of their jobs.
    'src/app/otherRigs.ts',
    // Where instructors write, with its own sentences.
    'src/app/backroom/BackRoomScreen.tsx',
    'src/text/en/backRoomScreen.ts',
    'src/text/es/backRoomScreen.ts',
  ],
  // Letters that no sentence of the program has; the tables that what was shown is weighed by.
  files: ['-latin-ext-', '.json'],
} as const;

/** The board's program, the bench's, and what opening a job fetches of that one job. */
const PAGE = 'index.html';
const BENCH = 'src/app/JobScreen.tsx';
const EVIDENCE = 'src/app/evidence/evidenceWorker.ts';
const JOB = 'virtual:scenario/';
/** Jobs, and what is said in one language: of each the one that is spoken of counts. */
const ONE_OF_SEVERAL = /^virtual:(?:scenario\/|spanish-)|^src\/text\/e[ns]\/(?:firstScreen|benchScreen)\.ts$/;

/** What comes besides in a language: with the board, with the bench, and with each job, by the name it has in the shop. */
interface Spoken {
  readonly board: readonly string[];
  readonly bench: readonly string[];
  readonly job: string | null;
}
const ENGLISH: Spoken = { board: [], bench: ['src/text/en/benchScreen.ts'], job: null };
const SPANISH: Spoken = {
  board: ['src/text/es/firstScreen.ts', 'virtual:spanish-board'],
  bench: ['src/text/es/benchScreen.ts', 'virtual:spanish-jobs'],
  job: 'virtual:spanish-job/',
};

/** The files that count for each budget. */
export function countedFiles(graph: BuiltGraph): Readonly<Record<keyof typeof BUDGETS, readonly string[]>> {
  return {
    'first screen': [...firstScreen(graph, ENGLISH)],
    'first screen in Spanish': [...firstScreen(graph, SPANISH)],
    bench: [...bench(graph, ENGLISH)],
    'bench in Spanish': [...bench(graph, SPANISH)],
  };
}

function firstScreen(graph: BuiltGraph, { board }: Spoken): ReadonlySet<string> {
  const entries = [PAGE, ...board].map((source) => entry(graph, source));
  return new Set([PAGE, ...counted(fetchedWith(graph, entries))]);
}

function bench(graph: BuiltGraph, spoken: Spoken): ReadonlySet<string> {
  const waiting = [PAGE, BENCH, EVIDENCE, ...spoken.bench].map((source) => entry(graph, source));
  const walked = new Set<string>();
  while (waiting.length > 0) {
    for (const file of fetchedWith(graph, [waiting.pop() ?? ''])) {
      if (walked.has(file)) continue;
      walked.add(file);
      waiting.push(...(graph.chunks.get(file)?.dynamicImports ?? []).filter((each) => isSooner(graph, each)));
    }
  }
  return new Set([...firstScreen(graph, spoken), ...heaviestJob(graph, spoken), ...counted(walked)]);
}

/** What opening the heaviest of the jobs fetches of it. */
function heaviestJob(graph: BuiltGraph, { job }: Spoken): readonly string[] {
  const jobs = [...graph.chunks]
    .filter(([, { source }]) => source?.startsWith(JOB))
    .map(([file, { source }]) => {
      const words = job === null ? [] : [entry(graph, `${job}${source?.slice(JOB.length)}`)];
      return [file, ...words];
    });
  return jobs.sort((a, b) => sumOf(graph, b) - sumOf(graph, a))[0] ?? [];
}

function entry(graph: BuiltGraph, source: string): string {
  const found = [...graph.chunks].find(([, chunk]) => chunk.source === source);
  if (found === undefined) throw new Error(`the build has no code that begins with ${source}`);
  return found[0];
}

function counted(files: ReadonlySet<string>): readonly string[] {
  return [...files].filter((file) => !LATER.files.some((part) => file.includes(part)));
}

function isSooner(graph: BuiltGraph, file: string): boolean {
  const source = graph.chunks.get(file)?.source ?? '';
  return !ONE_OF_SEVERAL.test(source) && !LATER.code.some((later) => later === source);
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
