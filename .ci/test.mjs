// npm test: sets up what is missing, then types, lint, unit and law and published and golden tests, build, browser tests.
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
import { endGroupsOnSignals, run } from './processes.mjs';
import { ensurePackages, giveUp, nodeComplaint, ROOT } from './setup.mjs';

const complaint = nodeComplaint();
if (complaint !== null) giveUp(complaint, 2);
endGroupsOnSignals();
await ensurePackages();
const browser = browserOrGiveUp();
const reports = mkdtempSync(join(tmpdir(), 'known-good-'));

const counts = [];
await stage('types', types);
await stage('lint', async () => countCheck(await tool('@biomejs/biome/bin/biome', ['check', '.'])));
await stage('unit, laws, published, golden', unit);
const built = await stage('build', async () => countCheck(await build()));
await stage('browser', () => browserTests(built.failed === 0, 'side-by-side', 2));
await stage('browser, by the clock', () => browserTests(built.failed === 0, 'by-the-clock', 1));

rmSync(reports, { recursive: true, force: true });
const sum = sumCounts(counts);
process.exitCode = sum.failed > 0 || sum.passed === 0 ? 1 : 0;
process.stdout.write(`\n${closingLine(sum)}\n`);

async function stage(name, work) {
  process.stdout.write(`\n── ${name} ──\n`);
  const count = await work();
  for (const remark of count.remarks) process.stdout.write(`${name}: ${remark}\n`);
  process.stdout.write(
    `── ${name}: ${count.failed === 0 ? 'good' : 'NOT GOOD'} (${count.passed} good, ${count.failed} bad)\n`,
  );
  counts.push(count);
  return count;
}

/** Whole tree with the browser's library, then the headless folders without it. One check. */
async function types() {
  const whole = await tool('typescript/bin/tsc', ['-p', 'tsconfig.json', '--noEmit']);
  const headless = await tool('typescript/bin/tsc', ['-p', 'tsconfig.headless.json', '--noEmit']);
  return countCheck(whole === 0 && headless === 0 ? 0 : 1);
}

async function unit() {
  const file = join(reports, 'unit.json');
  const code = await tool('vitest/vitest.mjs', [
    'run',
    '--exclude=**/node_modules/**',
    '--exclude=tests/e2e/**',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
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
