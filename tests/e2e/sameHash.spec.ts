import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { type HashedRun, hashOfRun } from '../support/hashOfRun.ts';
import { expect, test } from './support/test.ts';

/** Bundles the world for a bare page: no program around it, the same sources. */
async function worldBundle(): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: false,
      lib: {
        entry: fileURLToPath(new URL('../support/hashOfRun.ts', import.meta.url)),
        name: 'knownGoodRun',
        formats: ['iife'],
      },
    },
  });
  const [bundle] = Array.isArray(built) ? built : [built];
  if (bundle === undefined || !('output' in bundle)) throw new Error('vite gave no bundle');
  return bundle.output[0].code;
}

test('the same actions give the same hash in Node and in Chromium', async ({ page }) => {
  const code = await worldBundle();
  await page.goto('about:blank');
  await page.addScriptTag({ content: code });
  for (const seed of ['first hands', 'second hands', 'third hands']) {
    const here = hashOfRun(seed, 300);
    const there = await page.evaluate(
      (name) =>
        (
          globalThis as unknown as { knownGoodRun: { hashOfRun(seed: string, count: number): HashedRun } }
        ).knownGoodRun.hashOfRun(name, 300),
      seed,
    );
    expect(there).toEqual(here);
  }
  expect(hashOfRun('first hands', 300).hash).not.toBe(hashOfRun('second hands', 300).hash);
});
