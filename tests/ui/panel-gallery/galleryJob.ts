import scenarioText from '../../../scenarios/tight-as-a-drum.yaml?raw';
import { parseActions } from '../../../src/cli/parseActions.ts';
import { runActions } from '../../../src/cli/runActions.ts';
import { loadScenario } from '../../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../../src/training/scenario/Scenario.ts';
import { Sitting } from '../../../src/training/sitting/Sitting.ts';
import actions from '../../golden/actions/tight-as-a-drum.full.txt?raw';

/** A whole job, sat from its file of actions. */
export function galleryJob(): { readonly scenario: Scenario; readonly sitting: Sitting } {
  const scenario = loadScenario(scenarioText, 'tight-as-a-drum.yaml');
  const lines = parseActions(actions);
  if (!scenario.ok || !lines.ok) throw new Error(JSON.stringify([scenario, lines]));
  const sitting = Sitting.begin(scenario.value);
  const run = runActions(sitting, lines.value);
  if (!run.ok) throw new Error(`line ${run.error.line} was refused: ${run.error.refusal}`);
  return { scenario: scenario.value, sitting };
}
