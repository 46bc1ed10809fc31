// npm test: sets up what is missing, then types, lint, build, unit and law and published and golden tests, browser tests.
// The browser tests wait a good deal; the unit tests use what they leave of the machine, and the rest when they are through.
// Every stage is run even after one has failed. The last line is the sum: "N passed, N failed".
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  closingLine,
  countBrowserReport,
  countCheck,
  countUnitReport,
  sumCounts,
} from '../tests/support/count/counts.mjs';
import { findOrInstallBrowser, NO_BROWSER } from './browser.mjs';
import { build } from './build.mjs';
import { endGroupsOnSignals, run, runBehind } from './processes.mjs';
import { ensurePackages, giveUp, nodeComplaint, ROOT } from './setup.mjs';
import { Stages } from './stages.mjs';

const complaint = nodeComplaint();
if (complaint !== null) giveUp(complaint, 2);
endGroupsOnSignals();
await ensurePackages();
const browser = browserOrGiveUp();
const reports = mkdtempSync(join(tmpdir(), 'known-good-'));

const stages = new Stages((chunk) => process.stdout.write(chunk));
await stages.inTurn('types', types);
await stages.inTurn('lint', async () => countCheck(await tool('@biomejs/biome/bin/biome', ['check', '.'])));
const built = await stages.inTurn('build', async () => countCheck(await build()));
const unitTests = stages.beside('unit, laws, published, golden', unit);
await stages.inTurn('browser, by the clock', () => browserTests(built.failed === 0, 'by-the-clock', 1));
await stages.inTurn('browser', () => browserTests(built.failed === 0, 'side-by-side', 2));
await unitTests();

rmSync(reports, { recursive: true, force: true });
const sum = sumCounts(stages.counts);
process.exitCode = sum.failed > 0 || sum.passed === 0 ? 1 : 0;
process.stdout.write(`\n${closingLine(sum)}\n`);

/** Whole tree with the browser's library, then the headless folders without it. One check. */
async function types() {
  const whole = await tool('typescript/bin/tsc', ['-p', 'tsconfig.json', '--noEmit']);
  const headless = await tool('typescript/bin/tsc', ['-p', 'tsconfig.headless.json', '--noEmit']);
  return countCheck(whole === 0 && headless === 0 ? 0 : 1);
}

/** Behind everything else that runs; what it writes goes to `take`. */
async function unit(take) {
  const file = join(reports, 'unit.json');
  const args = [
    'run',
    '--exclude=**/node_modules/**',
    '--exclude=tests/e2e/**',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ];
  const vitest = join(ROOT, 'node_modules', 'vitest', 'vitest.mjs');
  const code = await runBehind(process.execPath, [vitest, ...args], take, { cwd: ROOT });
  const folders = ['tests/laws', 'tests/published', 'tests/golden'].filter((folder) =>
    existsSync(join(ROOT, folder)),
  );
  return countUnitReport(readReport(file), code, folders);
}

/** One project of the browser tests, so many of its files at a time. */
async function browserTests(isBuilt, project, workers) {
  if (!isBuilt) return { passed: 0, failed: 1, remarks: ['not run, because there is no build to test'] };
  const file = join(reports, `${project}.json`);
  const env = { ...process.env, KNOWN_GOOD_BROWSER: browser, PLAYWRIGHT_JSON_OUTPUT_FILE: file };
  const code = await tool(
    '@playwright/test/cli.js',
    [
      ...['test', '-c', 'tests/e2e/playwright.config.ts', '--reporter=list,json'],
      ...[`--project=${project}`, `--workers=${workers}`],
    ],
    env,
  );
  return countBrowserReport(readReport(file), code);
}

function tool(script, args, env = process.env) {
  return run(process.execPath, [join(ROOT, 'node_modules', script), ...args], { cwd: ROOT, env });
}

function readReport(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : null;
}

function browserOrGiveUp() {
  try {
    return findOrInstallBrowser() ?? giveUp(NO_BROWSER, 2);
  } catch (error) {
    return giveUp(error.message, 2);
  }
}
