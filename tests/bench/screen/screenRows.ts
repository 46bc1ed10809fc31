import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, preview } from 'vite';
import { gzipped } from '../../../src/platform/node/build/sizes.ts';
import type { BenchRow } from '../BenchTable.ts';
import { BenchPage } from './BenchPage.ts';
import { busyMinute, carry, stroke, turnMeter } from './busyMinute.ts';
import { quantile, scriptPerFrame } from './scriptTime.ts';

const JOB = 'ready-by-friday';
const GOAL = {
  frameMedianMs: 4,
  frameP99Ms: 8,
  taskMs: 50,
  paintMs: 100,
  heapShare: 0.05,
  firstKiB: 150,
  benchKiB: 450,
} as const;
const HOUR_WAITS = 330;
const HOURS = 3;
const WARM_WAITS = 450;
const TIMES_OPENED = 20;
const WARM_OPENED = 30;

/** The bench as a learner meets it: the built program in a browser, which is found as the browser tests find it. */
export async function screenRows(): Promise<readonly BenchRow[]> {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const outDir = join(root, 'node_modules', '.known-good-bench', 'page');
  await build({ root, logLevel: 'warn', build: { outDir, emptyOutDir: true, reportCompressedSize: false } });
  const server = await preview({
    root,
    logLevel: 'warn',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0 },
  });
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error('the page is not served');
  try {
    const rows: BenchRow[] = [];
    const spanish = (bench: BenchPage) => spanishRow(bench, address, outDir);
    const parts = [
      (bench: BenchPage) => fetchedRows(bench, address, outDir),
      spanish,
      frameRows,
      quickRows,
      hourRow,
      openedRow,
    ];
    for (const part of parts) {
      const found = await onPage(address, part, part === spanish ? 'es-US' : 'en-US');
      // Some take minutes: who waits sees how far it is.
      for (const { what, measured } of found) process.stderr.write(`${what}: ${measured}\n`);
      rows.push(...found);
    }
    return rows;
  } finally {
    await server.close();
  }
}

async function onPage(
  address: string,
  measure: (bench: BenchPage) => Promise<readonly BenchRow[]>,
  locale: string,
): Promise<readonly BenchRow[]> {
  const bench = await BenchPage.open(address, locale);
  try {
    return await measure(bench);
  } finally {
    await bench.close();
  }
}

/** What the browser really fetched until a screen stood. What it fetches ahead from then on is not counted. */
async function fetchedRows(bench: BenchPage, address: string, outDir: string): Promise<readonly BenchRow[]> {
  await bench.page.goto(address);
  await bench.page.getByRole('heading', { name: 'Job board' }).waitFor();
  await bench.page.evaluate(() => document.fonts.ready);
  const first = await bench.fetchedBy('h1');
  await bench.job(JOB);
  const whole = await bench.fetchedBy('canvas');
  return [
    sizeRow('Fetched, gzipped, until the job board stands', kib(first, outDir), GOAL.firstKiB),
    sizeRow('… until the bench stands, with its job taken', kib(whole, outDir), GOAL.benchKiB),
    {
      what: '… and then ahead of its use: dialogs, tabs, sounds, what weighs the evidence',
      measured: `${(kib(await bench.fetchedByNow(), outDir) - kib(whole, outDir)).toFixed(0)} KiB`,
      goal: '',
      kept: null,
    },
  ];
}

async function spanishRow(bench: BenchPage, address: string, outDir: string): Promise<readonly BenchRow[]> {
  await bench.page.goto(address);
  await bench.page.getByRole('heading', { name: 'Tablero de trabajos' }).waitFor();
  await bench.job(JOB, { take: 'Tomar el trabajo', bench: 'Banco' });
  return [
    sizeRow(
      '… until the bench stands in Spanish, its words and its job’s with it',
      kib(await bench.fetchedBy('canvas'), outDir),
      GOAL.benchKiB,
    ),
  ];
}

function kib(files: readonly string[], outDir: string): number {
  return files.reduce((sum, file) => sum + gzipped(readFileSync(join(outDir, file))), 0) / 1024;
}

function sizeRow(what: string, weight: number, goal: number): BenchRow {
  return { what, measured: `${weight.toFixed(0)} KiB`, goal: `${goal} KiB`, kept: weight <= goal };
}

async function frameRows(bench: BenchPage): Promise<readonly BenchRow[]> {
  await bench.board();
  await bench.job(JOB);
  const spent = scriptPerFrame(await bench.trace(() => busyMinute(bench, 60)));
  const [median, late] = [quantile(spent, 0.5), quantile(spent, 0.99)];
  return [
    {
      what: `Script in a frame of the bench during a busy minute (${spent.length} frames: pumping, leads carried, evidence weighed)`,
      measured: `median ${median.toFixed(1)} ms, 99th percentile ${late.toFixed(1)} ms`,
      goal: `${GOAL.frameMedianMs} ms, ${GOAL.frameP99Ms} ms`,
      kept: median <= GOAL.frameMedianMs && late <= GOAL.frameP99Ms,
    },
  ];
}

/** Long tasks while a job opens, how soon a press is seen, and whether anything jumps. */
async function quickRows(bench: BenchPage): Promise<readonly BenchRow[]> {
  await bench.board();
  const board = await bench.noted();
  await bench.job(JOB);
  const opening = await bench.noted();
  await turnMeter(bench, 'DC volts');
  await carry(bench, 'Red lead', 'Battery positive');
  for (const tab of ['Suspects', 'Service data', 'Reader', 'Work order', 'Log']) {
    await bench.page.getByRole('tab', { name: tab }).click();
  }
  await bench.button('Log this reading').click();
  for (const dialog of ['Parts cupboard', 'Give a verdict', 'Road test']) {
    await bench.button(dialog).click();
    await bench.page.getByRole('dialog').waitFor();
    await bench.page.keyboard.press('Escape');
    await bench.page.getByRole('dialog').waitFor({ state: 'detached' });
  }
  await stroke(bench);
  await bench.page.waitForTimeout(1000);
  const acts = await bench.noted();
  const longest = Math.max(0, ...opening.longTasks.map(({ ms }) => ms));
  const slowest = Math.max(0, ...acts.interactions.map(({ ms }) => ms));
  const shift = [board, opening, acts].flatMap(({ shifts }) => shifts).reduce((sum, { by }) => sum + by, 0);
  return [
    {
      what: 'Opening a job, from the board to the drawn bench: longest task of the page',
      measured: longest === 0 ? 'none of 50 ms' : `${longest.toFixed(0)} ms`,
      goal: `under ${GOAL.taskMs} ms`,
      kept: longest < GOAL.taskMs,
    },
    {
      what: 'From a press to the next picture: the slowest of lead, meter, tabs, log, dialogs, pump',
      measured: slowest === 0 ? 'none of 16 ms' : `${slowest.toFixed(0)} ms`,
      goal: `${GOAL.paintMs} ms`,
      kept: slowest <= GOAL.paintMs,
    },
    {
      what: 'Layout shift on the board, while a job opens, and at all of these',
      measured: shift.toFixed(3),
      goal: '0',
      kept: shift < 0.0005,
    },
  ];
}

/**
 * Hours of sitting time, by waits between the work of a hand, with an entry of the log every five minutes. One hour alone says little:
 * what the browser happens to compile in it comes and goes by some percent of the heap, while what is kept by mistake adds up.
 */
async function hourRow(bench: BenchPage): Promise<readonly BenchRow[]> {
  await bench.board();
  await bench.job(JOB);
  const work = async (waits: number): Promise<Heap> => {
    for (let i = 0; i < waits; i++) {
      await bench.button('Wait 10 s').click();
      if (i % 10 === 0) await stroke(bench);
      if (i % 30 === 0) await bench.button('Log this reading').click();
    }
    await bench.quiet();
    // What the page noted for the other rows is none of the program's.
    await bench.noted();
    return bench.heap();
  };
  // Until every part of the program has run, and the browser has compiled most of what it finds worth compiling.
  const stood = [await work(WARM_WAITS)];
  for (let hour = 0; hour < HOURS; hour++) stood.push(await work(HOUR_WAITS));
  const each = stood.slice(1).map(({ bytes }, hour) => signed(bytes / (stood[hour]?.bytes ?? 0) - 1));
  const [before, now] = [stood[0], stood[HOURS]];
  if (before === undefined || now === undefined) throw new Error('no hour was worked');
  const row = grownRow('an hour of sitting time', before, now, HOURS);
  return [{ ...row, measured: `${row.measured}; one by one ${each.join(', ')}` }];
}

async function openedRow(bench: BenchPage): Promise<readonly BenchRow[]> {
  await bench.board();
  await bench.job(JOB);
  const leave = async (): Promise<void> => {
    await bench.page.evaluate(() => {
      location.hash = '#/';
    });
    await bench.page.getByRole('heading', { name: 'Job board' }).waitFor();
  };
  const openAndLeave = async (times: number): Promise<void> => {
    for (let i = 0; i < times; i++) {
      await bench.reopen(JOB);
      await leave();
    }
    await bench.quiet();
  };
  await leave();
  await openAndLeave(WARM_OPENED);
  const before = await bench.heap();
  await openAndLeave(TIMES_OPENED);
  return [grownRow(`a job was opened and left ${TIMES_OPENED} times`, before, await bench.heap())];
}

interface Heap {
  readonly bytes: number;
  readonly code: number;
}

/** How the heap grew; the mean of several `times` where that is more than one. */
function grownRow(after: string, before: Heap, now: Heap, times = 1): BenchRow {
  const grown = (now.bytes / before.bytes - 1) / times;
  const code = (now.code - before.code) / before.bytes / times;
  const mean = times === 1 ? '' : ` (mean of ${times})`;
  return {
    what: `Heap of the page after ${after}, against before${mean}, collected both times`,
    measured: `${(now.bytes / 1e6).toFixed(1)} MB: ${signed(grown)}, of which ${signed(code)} code that the browser compiled`,
    goal: `within ${100 * GOAL.heapShare} %`,
    kept: grown <= GOAL.heapShare,
  };
}

function signed(share: number): string {
  return `${share < 0 ? '−' : '+'}${Math.abs(100 * share).toFixed(1)} %`;
}
