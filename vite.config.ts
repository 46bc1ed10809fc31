import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import preact from '@preact/preset-vite';
import type { Plugin } from 'vite';
import { configDefaults, defineConfig } from 'vitest/config';
import { chartsNumbers } from './src/platform/node/build/chartsNumbers.ts';
import { leanPixi } from './src/platform/node/build/leanPixi.ts';
import { sharedWorkers } from './src/platform/node/build/sharedWorkers.ts';
import { sizeBudgets } from './src/platform/node/build/sizeBudgets.ts';
import { stylesLast } from './src/platform/node/build/stylesLast.ts';
import { offlineProgram } from './src/platform/node/offline/offlineProgram.ts';
import { type JobsInSpanish, veiledRemarks } from './src/platform/node/veiledRemarks.ts';
import './src/text/backRoomEnglish.ts';
import { scenarioProblemLine } from './src/text/cli.ts';
import { jobSentences } from './src/text/es/jobs.ts';
import { keyed } from './src/text/sentenceKey.ts';
import { say } from './src/text/translate.ts';
import { veil } from './src/text/veil.ts';
import './src/text/wholeEnglish.ts';
import { itemsInQuestion } from './src/training/evidence/itemsInQuestion.ts';
import { openTables } from './src/training/evidence/openTables.ts';
import { type BoardCard, boardCardOf } from './src/training/scenario/BoardCard.ts';
import {
  buildScenarioBundle,
  type SameIdProblem,
  type ScenarioText,
} from './src/training/scenario/buildScenarioBundle.ts';
import { cardOf } from './src/training/scenario/cardOf.ts';
import { loadScenario } from './src/training/scenario/loadScenario.ts';
import { isJob } from './src/training/scenario/modes.ts';
import type { ScenarioProblem } from './src/training/scenario/ScenarioProblem.ts';
import { tokensOf } from './src/ui/theme/tokens.ts';
import { HeaviestFirst } from './tests/support/heaviestFirst.ts';
import { SHARING } from './tests/support/sharing.ts';

const SCENARIO_FOLDER = join(import.meta.dirname, 'scenarios');
const EVIDENCE_TABLES = join(import.meta.dirname, 'assets/evidence');
const SCENARIOS = 'virtual:scenarios';
const SCENARIO = 'virtual:scenario/';

/**
 * The scenario files: what the board shows of each in one module, and each sealed in a module of its own, fetched when its
 * job is opened. A broken file fails the build with its sentences.
 */
function sealedScenarios(): Plugin {
  return {
    name: 'sealed-scenarios',
    resolveId: (id) => (id === SCENARIOS || id.startsWith(SCENARIO) ? `\0${id}` : undefined),
    load(id) {
      if (id !== `\0${SCENARIOS}` && !id.startsWith(`\0${SCENARIO}`)) return;
      const texts = scenarioTexts();
      for (const { name } of texts) this.addWatchFile(join(SCENARIO_FOLDER, name));
      const bundle = buildScenarioBundle(texts);
      if (!bundle.ok) this.error(bundle.error.map(problemLine).join('\n'));
      const one = bundle.value.find(({ card }) => id === `\0${SCENARIO}${card.id}`);
      if (one !== undefined) return `export const scenario = ${JSON.stringify(one)};`;
      if (id !== `\0${SCENARIOS}`) this.error(`no scenario has the id of ${id}`);
      const fetchers = bundle.value.map(
        ({ card }) => `${JSON.stringify(card.id)}: () => import(${JSON.stringify(SCENARIO + card.id)})`,
      );
      return [
        `export const cards = ${JSON.stringify(boardCards(texts))};`,
        `export const scenarioFetchers = { ${fetchers.join(', ')} };`,
      ].join('\n');
    },
  };
}

/** What the board shows of each file. Tables of an older rig leave out what is in question: they are being made again. */
function boardCards(texts: readonly ScenarioText[]): readonly BoardCard[] {
  const tables = readdirSync(EVIDENCE_TABLES).flatMap((name) => {
    const opened = openTables(readFileSync(join(EVIDENCE_TABLES, name), 'utf8'));
    return opened.ok ? [opened.value] : [];
  });
  return texts.flatMap(({ name, text }) => {
    const loaded = loadScenario(text, name);
    if (!loaded.ok) return [];
    const card = boardCardOf(cardOf(loaded.value));
    // Only the tables of its own rig have an answer.
    const inQuestion = isJob(card.mode)
      ? tables.flatMap((of) => itemsInQuestion(loaded.value, of) ?? [])
      : [];
    return [inQuestion.length === 0 ? card : { ...card, inQuestion }];
  });
}

function scenarioTexts(): readonly ScenarioText[] {
  const names = readdirSync(SCENARIO_FOLDER).filter((name) => name.endsWith('.yaml'));
  return names.map((name) => ({ name, text: readFileSync(join(SCENARIO_FOLDER, name), 'utf8') }));
}

function jobsInSpanish(): JobsInSpanish {
  const inSpanish = (said: ReadonlySet<string>): readonly (readonly [string, string])[] =>
    Object.entries(jobSentences).filter(([written]) => said.has(written));
  const scenarios = scenarioTexts().flatMap(({ name, text }) => {
    const loaded = loadScenario(text, name);
    return loaded.ok ? [loaded.value] : [];
  });
  const onTheBoard = new Set(scenarios.flatMap((scenario) => sentencesIn(boardCardOf(scenario))));
  const jobs = scenarios.map((scenario) => {
    const { remark, ...shown } = scenario;
    const said = new Set(sentencesIn(shown).filter((each) => each !== remark && !onTheBoard.has(each)));
    return [
      scenario.id,
      { said: keyed(Object.fromEntries(inSpanish(said))), veiled: veil(inSpanish(new Set([remark]))) },
    ] as const;
  });
  return { onTheBoard: keyed(Object.fromEntries(inSpanish(onTheBoard))), jobs: new Map(jobs) };
}

/** Every text in a value, however deep. */
function sentencesIn(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(sentencesIn) : [];
}

function problemLine(problem: ScenarioProblem | SameIdProblem): string {
  if (problem.code !== 'same-id') return scenarioProblemLine(problem);
  return say('troubles.same-id', { file: problem.file, other: problem.other, id: problem.id });
}

/** A test may say any sentence. */
const ANY_SENTENCE = ['src/text/wholeEnglish.ts', 'src/text/backRoomEnglish.ts'];

export default defineConfig({
  base: './',
  // Without the part for sounds in space.
  resolve: { alias: [{ find: /^howler$/, replacement: 'howler/dist/howler.core.min.js' }] },
  plugins: [
    preact(),
    sealedScenarios(),
    veiledRemarks(jobsInSpanish),
    leanPixi(),
    chartsNumbers(),
    stylesLast(),
    sharedWorkers(import.meta.dirname),
    offlineProgram({
      name: say('app.name'),
      description: say('app.tagline'),
      language: 'en',
      colour: tokensOf('paper').paper,
    }),
    sizeBudgets(import.meta.dirname),
  ],
  build: {
    target: 'es2022',
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 700,
  },
  test: {
    // No test is about how fast the machine is: a busy one gets its time.
    testTimeout: 900_000,
    hookTimeout: 900_000,
    // Nobody works beside it: every core has its share.
    maxWorkers: '100%',
    sequence: { sequencer: HeaviestFirst },
    projects: [
      {
        extends: true,
        test: {
          name: 'sharing',
          isolate: false,
          setupFiles: [...ANY_SENTENCE, 'tests/support/asIfAlone.ts'],
          include: [...SHARING],
          exclude: configDefaults.exclude,
        },
      },
      {
        extends: true,
        test: {
          name: 'alone',
          setupFiles: [...ANY_SENTENCE],
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: [...configDefaults.exclude, 'tests/e2e/**', ...SHARING],
        },
      },
    ],
  },
});
