import shopTables from '../../../assets/evidence/shop.json?raw';
import { debriefing } from '../../../src/app/evidence/debriefing.ts';
import { weighedBy } from '../../../src/app/evidence/weighing.ts';
import { parseActions } from '../../../src/cli/parseActions.ts';
import { runActions } from '../../../src/cli/runActions.ts';
import { openTables } from '../../../src/training/evidence/openTables.ts';
import { loadScenario } from '../../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../../src/training/scenario/Scenario.ts';
import { sealScenario } from '../../../src/training/scenario/seal.ts';
import type { DebriefFacts } from '../../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../../src/training/score/debrief.ts';
import { Sitting } from '../../../src/training/sitting/Sitting.ts';
import { FABRICATED_PAR, fabricatedEvidence } from './fabricatedFacts.ts';

const ACTIONS = import.meta.glob<string>('../../golden/actions/*.txt', {
  query: '?raw',
  import: 'default',
  eager: true,
});
const SCENARIOS = import.meta.glob<string>('../../../scenarios/*.yaml', {
  query: '?raw',
  import: 'default',
  eager: true,
});

export interface GalleryJob {
  readonly scenario: Scenario;
  readonly sitting: Sitting;
}

/** A whole job, sat from its file of actions, such as `tight-as-a-drum.full`. */
export function galleryJob(name: string): GalleryJob {
  const id = name.split('.')[0] ?? '';
  const scenario = loadScenario(SCENARIOS[`../../../scenarios/${id}.yaml`] ?? '', `${id}.yaml`);
  const lines = parseActions(ACTIONS[`../../golden/actions/${name}.txt`] ?? '');
  if (!scenario.ok || !lines.ok) throw new Error(JSON.stringify([scenario, lines]));
  const sitting = Sitting.begin(scenario.value);
  const run = runActions(sitting, lines.value);
  if (!run.ok) throw new Error(`line ${run.error.line} was refused: ${run.error.refusal}`);
  return { scenario: scenario.value, sitting };
}

/** Its debrief, with evidence and par as the program weighs them, which takes some seconds. */
export function weighedFacts({ scenario, sitting }: GalleryJob): DebriefFacts {
  const tables = openTables(shopTables);
  if (!tables.ok) throw new Error(tables.error.code);
  const record = sitting.record();
  const weighed = weighedBy(
    tables.value,
    { here: () => debriefing, fetch: async () => debriefing },
    sealScenario(scenario),
    record,
  );
  while (!weighed.settled) weighed.work(10_000);
  return madeOf(weighed.debrief(record));
}

/** Its debrief with invented evidence and par: much of everything, at once. */
export function inventedFacts({ scenario, sitting }: GalleryJob): DebriefFacts {
  const { verdict, log } = sitting.view();
  const evidence = fabricatedEvidence(log, verdict?.tick ?? 0);
  return madeOf(debrief(scenario, sitting.record(), evidence, FABRICATED_PAR));
}

function madeOf(made: ReturnType<typeof debrief>): DebriefFacts {
  if (!made.ok) throw new Error(made.error.code);
  return made.value;
}
