import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import preact from '@preact/preset-vite';
import type { Plugin } from 'vite';
import { configDefaults, defineConfig } from 'vitest/config';
import { scenarioProblemLine } from './src/text/cli.ts';
import { say } from './src/text/translate.ts';
import { buildScenarioBundle, type SameIdProblem } from './src/training/scenario/buildScenarioBundle.ts';
import type { ScenarioProblem } from './src/training/scenario/ScenarioProblem.ts';

const SCENARIOS = 'virtual:scenarios';

/** The scenario files as one module of public cards and sealed contents. A broken file fails the build with its sentences. */
function sealedScenarios(): Plugin {
  const folder = join(import.meta.dirname, 'scenarios');
  return {
    name: 'sealed-scenarios',
    resolveId: (id) => (id === SCENARIOS ? `\0${SCENARIOS}` : undefined),
    load(id) {
      if (id !== `\0${SCENARIOS}`) return;
      const names = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
      for (const name of names) this.addWatchFile(join(folder, name));
      const bundle = buildScenarioBundle(
        names.map((name) => ({ name, text: readFileSync(join(folder, name), 'utf8') })),
      );
      if (!bundle.ok) this.error(bundle.error.map(problemLine).join('\n'));
      return `export const scenarios = ${JSON.stringify(bundle.value)};`;
    },
  };
}

function problemLine(problem: ScenarioProblem | SameIdProblem): string {
  if (problem.code !== 'same-id') return scenarioProblemLine(problem);
  return say('troubles.same-id', { file: problem.file, other: problem.other, id: problem.id });
}

export default defineConfig({
  base: './',
  plugins: [preact(), sealedScenarios()],
  worker: { format: 'es' },
  build: {
    target: 'es2022',
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 700,
  },
  test: {
    // No test is about how fast the machine is: a busy one gets its time.
    testTimeout: 120_000,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    exclude: [...configDefaults.exclude, 'tests/e2e/**'],
  },
});
