import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin, Rolldown } from 'vite';
import { weigh } from './budgets.ts';
import { type BuiltChunk, type BuiltGraph, gzipped } from './sizes.ts';

/** Prints what the first screen and the bench weigh, and fails the build when that is over budget. */
export function sizeBudgets(root: string): Plugin {
  let info = (_line: string): void => {};
  return {
    name: 'size-budgets',
    apply: 'build',
    configResolved: ({ logger }) => {
      info = (line) => logger.info(line);
    },
    writeBundle: {
      order: 'post',
      handler({ dir }, bundle) {
        if (dir === undefined) return;
        const { lines, kept } = weigh(graphOf(root, dir, bundle));
        for (const line of lines) info(line);
        if (!kept) this.error('a size budget is exceeded; see src/platform/node/build/budgets.ts');
      },
    },
  };
}

export function graphOf(root: string, dir: string, bundle: Rolldown.OutputBundle): BuiltGraph {
  const sizes = new Map<string, number>();
  const chunks = new Map<string, BuiltChunk>();
  for (const output of Object.values(bundle)) {
    if (output.type === 'chunk') chunks.set(output.fileName, chunkOf(root, dir, output, bundle));
  }
  return {
    chunks,
    sizeOf(file) {
      const known = sizes.get(file);
      if (known !== undefined) return known;
      const size = gzipped(readFileSync(join(dir, file)));
      sizes.set(file, size);
      return size;
    },
  };
}

function chunkOf(
  root: string,
  dir: string,
  chunk: Rolldown.OutputChunk,
  bundle: Rolldown.OutputBundle,
): BuiltChunk {
  const { importedCss, importedAssets } = chunk.viteMetadata ?? {};
  const css = [...(importedCss ?? [])];
  // Of a worker only the name that it had before its hash was known is noted here; it is an entry of its own.
  const assets = [...(importedAssets ?? [])].filter((file) => bundle[file] !== undefined);
  const source = chunk.facadeModuleId?.replace('\0', '').replace(`${root}/`, '') ?? null;
  return {
    source,
    imports: chunk.imports,
    dynamicImports: chunk.dynamicImports,
    files: [...css, ...assets, ...css.flatMap((file) => fontsIn(join(dir, file)))],
  };
}

/** The fonts that a style sheet names. A browser fetches those whose letters it needs; all are counted. */
function fontsIn(sheet: string): readonly string[] {
  return [...readFileSync(sheet, 'utf8').matchAll(/url\(["']?(?:\.\/)?([^"')]+\.woff2)/g)].map(
    ([, file]) => `assets/${file}`,
  );
}
