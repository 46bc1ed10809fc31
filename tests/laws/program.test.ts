import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { drawIcon } from '../../assets/icons/drawIcon.ts';
import { filesOfBuild, versionOf } from '../../src/platform/node/offline/filesOfBuild.ts';
import { ICONS } from '../../src/platform/node/offline/icons.ts';
import { webManifest } from '../../src/platform/node/offline/webManifest.ts';
import { OFFLINE_WORKER, writeOfflineWorker } from '../../src/platform/node/offline/writeOfflineWorker.ts';
import { tokensOf } from '../../src/ui/theme/tokens.ts';
import { ROOT } from './support/repoFiles.ts';

const icon = (file: string): Buffer => readFileSync(join(ROOT, 'assets', 'icons', file));

/** Width and height of a PNG: after its signature the first chunk is IHDR (W3C, PNG, 5.2 and 11.2.1). */
function pngSize(png: Buffer): readonly [number, number] {
  expect(png.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
  expect(png.toString('latin1', 12, 16)).toBe('IHDR');
  return [png.readUInt32BE(16), png.readUInt32BE(20)];
}

describe('the program as a device lists it', () => {
  const manifest = JSON.parse(
    webManifest({ name: 'Known Good', description: 'd', language: 'en', colour: tokensOf('paper').paper }),
  ) as {
    readonly [key: string]: unknown;
    readonly icons: readonly { src: string; sizes: string; purpose: string }[];
  };

  // What a browser asks before it offers to install: W3C, Web Application Manifest, and "installability" of its makers.
  it('has a name, a place to start and a window of its own, all relative', () => {
    expect(manifest).toMatchObject({
      name: 'Known Good',
      short_name: 'Known Good',
      start_url: './',
      scope: './',
      display: 'standalone',
      lang: 'en',
      theme_color: tokensOf('paper').paper,
      background_color: tokensOf('paper').paper,
    });
    for (const { src } of manifest.icons) expect(src).toMatch(/^\.\//);
    for (const size of ['192x192', '512x512'])
      for (const purpose of ['any', 'maskable'])
        expect(manifest.icons.filter((one) => one.sizes === size && one.purpose === purpose)).toHaveLength(1);
  });

  it('has pictures of the sizes it names', () => {
    for (const { file, pixels } of ICONS) {
      if (pixels !== null) expect(pngSize(icon(file)), file).toEqual([pixels, pixels]);
    }
  });

  it('has the picture that the colours of the theme make', () => {
    expect(icon('icon.svg').toString('utf8'), 'npx tsx assets/icons/make-icons.ts').toBe(drawIcon('any'));
  });
});

describe('the list of what is kept', () => {
  function madeUpBuild(files: Record<string, string>): string {
    const folder = mkdtempSync(join(tmpdir(), 'known-good-law-'));
    mkdirSync(join(folder, 'assets'));
    for (const [path, text] of Object.entries(files)) writeFileSync(join(folder, path), text);
    return folder;
  }
  const PAGE = '<script type="module" crossorigin src="./assets/index-aaaaaaaa.js"></script>';

  it('holds every file of the build and nothing else, and the worker is written from it', async () => {
    const folder = madeUpBuild({
      'index.html': PAGE,
      'assets/index-aaaaaaaa.js': 'x',
      'assets/b-bbbbbbbb.wav': '',
    });
    try {
      await writeOfflineWorker(folder);
      const files = filesOfBuild(folder, [OFFLINE_WORKER]);
      expect(files.map(([path]) => path)).toEqual([
        'assets/b-bbbbbbbb.wav',
        'assets/index-aaaaaaaa.js',
        'index.html',
      ]);
      // SHA-256 of nothing (FIPS 180-4 examples), in base 64.
      expect(files[0]?.[1]).toBe('sha256-47DEQpj8HBSa+/TImW+5JCeuQeRkm5NMpJWZG3hSuFU=');
      const worker = readFileSync(join(folder, OFFLINE_WORKER), 'utf8');
      for (const [path, integrity] of files) {
        expect(worker).toContain(path);
        expect(worker).toContain(integrity);
      }
      expect(worker).toContain(versionOf(files));
      expect(worker).not.toMatch(/\bimport\b|\bexport\b/);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  it('is another version when a file, a name or a content is another', () => {
    const versions = [
      [['a', 'sha256-1']],
      [['a', 'sha256-2']],
      [['b', 'sha256-1']],
      [
        ['a', 'sha256-1'],
        ['b', 'sha256-1'],
      ],
    ].map((files) => versionOf(files as unknown as ReturnType<typeof filesOfBuild>));
    expect(new Set(versions).size).toBe(4);
  });

  it('cannot be made of a build whose page starts nothing', async () => {
    const folder = madeUpBuild({ 'index.html': '<p>nothing</p>' });
    try {
      await expect(writeOfflineWorker(folder)).rejects.toThrow('names no script');
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });
});
