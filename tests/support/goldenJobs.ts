import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { SittingRecord } from '../../src/training/sitting/SittingRecord.ts';
import type { SittingView } from '../../src/training/sitting/SittingView.ts';

const actionsFolder = new URL('../golden/actions/', import.meta.url);

/** Files of whole jobs by actions, named after their scenario. */
export const goldenNames: readonly string[] = readdirSync(actionsFolder)
  .filter((name) => name.endsWith('.txt'))
  .sort();

/** A golden job, sat. */
export interface SatGolden {
  readonly scenario: Scenario;
  readonly record: SittingRecord;
  readonly view: SittingView;
}

/** Sits a golden job from its file of actions. Errors: throws with the line that was refused. */
export function sitGolden(name: string): SatGolden {
  const scenario = scenarioOf(name);
  const lines = parseActions(readFileSync(new URL(name, actionsFolder), 'utf8'));
  if (!lines.ok) throw new Error(JSON.stringify(lines));
  const sitting = Sitting.begin(scenario);
  const run = runActions(sitting, lines.value);
  if (!run.ok)
    throw new Error(`${name}:${run.error.line}: "${run.error.text}" was refused: ${run.error.refusal}`);
  return { scenario, record: sitting.record(), view: sitting.view() };
}

export function goldenLevel(name: string): Scenario['level'] {
  return scenarioOf(name).level;
}

/** Jobs whose trap shows only when every suspect's bench is asked: they are weighed once, where their traps are tested. */
export const TRAPPED = [
  'tight-as-a-drum',
  'nine-volts-and-still-a-code',
  'everyone-looked',
  'the-quarry-road',
].map((id) => `${id}.full.txt`);

/** A golden job is named after its scenario. */
function scenarioOf(name: string): Scenario {
  const id = name.split('.')[0] ?? '';
  const file = new URL(`../../scenarios/${id}.yaml`, import.meta.url);
  const scenario = loadScenario(readFileSync(file, 'utf8'), `${id}.yaml`);
  if (!scenario.ok) throw new Error(JSON.stringify(scenario));
  return scenario.value;
}

/** What a golden job must give, as kept. */
export interface Golden {
  readonly score: number;
  readonly parts: Readonly<Record<string, number>>;
  readonly right: boolean;
  readonly missed: readonly string[];
  readonly endHash: string;
}

const goldenFile = new URL('../golden/golden.json', import.meta.url);

/** All that is kept, by the names of the jobs. */
export function keptGolden(): Readonly<Record<string, Golden>> {
  return JSON.parse(readFileSync(goldenFile, 'utf8')) as Record<string, Golden>;
}

/** What a full job has to score at least. Bound of the assessment design: careful at least 90. */
export const LEAST_OF_FULL = 90;

export function goldenScore(name: string): Golden {
  const golden = keptGolden()[name];
  if (golden === undefined) throw new Error(`no golden job ${name}`);
  return golden;
}

/** Keeps what these jobs gave, beside what is kept of the others. */
export function keepGolden(found: ReadonlyMap<string, Golden>): void {
  const kept = keptGolden();
  const all = goldenNames.flatMap((name) => {
    const golden = found.get(name) ?? kept[name];
    return golden === undefined ? [] : [[name, golden] as const];
  });
  writeFileSync(goldenFile, `${JSON.stringify(Object.fromEntries(all), null, 2)}\n`);
}
