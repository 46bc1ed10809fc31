import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { goldenNames, sitGolden } from '../support/goldenJobs.ts';
import type * as hashOfRunModule from '../support/hashOfRun.ts';
import { hashOfRun } from '../support/hashOfRun.ts';
import type * as replayedHashModule from '../support/replayedHash.ts';
import { expect, test } from './support/test.ts';

/** Bundles the world for a bare page: no program around it, the same sources. */
async function bundle(file: 'hashOfRun' | 'replayedHash'): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: false,
      lib: {
        entry: fileURLToPath(new URL(`../support/${file}.ts`, import.meta.url)),
        name: file,
        formats: ['iife'],
      },
    },
  });
  const [made] = Array.isArray(built) ? built : [built];
  if (made === undefined || !('output' in made)) throw new Error('vite gave no bundle');
  return made.output[0].code;
}

interface Bundled {
  readonly hashOfRun: typeof hashOfRunModule;
  readonly replayedHash: typeof replayedHashModule;
}

test('the same actions give the same hash in Node and in Chromium', async ({ page }) => {
  await page.goto('about:blank');
  await page.addScriptTag({ content: await bundle('hashOfRun') });
  const hashes = new Set<string>();
  for (const seed of ['first hands', 'second hands', 'third hands', 'fourth hands', 'fifth hands']) {
    const here = hashOfRun(seed, 300);
    const there = await page.evaluate(
      (name) => (globalThis as unknown as Bundled).hashOfRun.hashOfRun(name, 300),
      seed,
    );
    expect(there).toEqual(here);
    hashes.add(here.hash);
  }
  expect(hashes.size).toBe(5);
});

test('every golden record ends in the same world in Chromium as in Node', async ({ page }) => {
  await page.goto('about:blank');
  await page.addScriptTag({ content: await bundle('replayedHash') });
  for (const name of goldenNames) {
    const job = sitGolden(name);
    const there = await page.evaluate(
      ({ scenario, record }) =>
        (globalThis as unknown as Bundled).replayedHash.replayedHash(scenario, record),
      job,
    );
    expect(there, name).toBe(job.record.endHash);
  }
});
