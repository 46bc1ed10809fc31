// npm run bench: builds the benchmark the way the program is built (a runner that translates as it goes adds a call to
// every function it names, which would be measured too), then runs it. Arguments: --write FILE puts the table there.
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('../..', import.meta.url));
// Below node_modules, so that the packages it measures against are found from there.
const outDir = `${root}node_modules/.known-good-bench`;
await build({
  root,
  configFile: false,
  logLevel: 'warn',
  build: { ssr: 'tests/bench/main.ts', outDir, emptyOutDir: true, minify: false, target: 'node20' },
});
const { status } = spawnSync(
  process.execPath,
  ['--expose-gc', `${outDir}/main.js`, ...process.argv.slice(2)],
  {
    cwd: root,
    stdio: 'inherit',
  },
);
rmSync(outDir, { recursive: true, force: true });
process.exitCode = status ?? 1;
