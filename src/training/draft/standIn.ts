import { contentOf } from '../scenario/contentOf.ts';
import { hashOfContent } from '../scenario/hashOfContent.ts';
import { loadScenario } from '../scenario/loadScenario.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { type ScenarioFile, scenarioSchema } from '../scenario/scenarioSchema.ts';
import { writeScenario } from '../scenario/writeScenario.ts';
import { type Draft, unreadProblem } from './Draft.ts';
import type { DraftText } from './DraftText.ts';

/** What stands where an author has not written yet, so that there is a truck to work on meanwhile. */
const STAND_IN: ScenarioFile = {
  format: 1,
  id: 'draft',
  title: '…',
  summary: '…',
  mode: 'practice',
  level: 1,
  minutes: 30,
  aims: ['…'],
  'work-order': { number: '…', vehicle: '…', complaint: '…', history: [], codes: [], cautions: ['…'] },
  bench: { 'ambient-celsius': 20, 'altitude-metres': 200, 'fuel-percent': 50 },
  seed: 'draft',
  drives: { cycles: 0, refuelled: false },
  faults: [],
  remark: '…',
};

/** Parts without which the bench would not be the author's. */
const NEEDED: readonly string[] = ['faults', 'bench', 'rig', 'tools', 'renewed'];

/**
 * The scenario of a draft as far as its truck goes: the one it is, or one with its faults, its place and its drives, and words that
 * stand in for those that are still to be written. Null where the text or the truck itself cannot be read.
 */
export function truckOf(draft: Draft): Scenario | null {
  if (draft.scenario !== null) return draft.scenario;
  if (draft.form.shut || unreadProblem(draft) !== null) return null;
  const content = truckContent(draft.form);
  const parsed = scenarioSchema.safeParse(content);
  const broken = new Set((parsed.error?.issues ?? []).map(({ path }) => String(path[0])));
  if (NEEDED.some((key) => broken.has(key) && key in content)) return null;
  for (const key of broken) delete content[key];
  const whole = scenarioSchema.safeParse({ ...STAND_IN, ...content });
  if (!whole.success) return null;
  // What one part says against another is known to the loader alone.
  if (!loadScenario(writeScenario(whole.data), '').ok) return null;
  const made = contentOf(whole.data);
  return { ...made, contentHash: hashOfContent(made) };
}

/** The parts of the text that can be read and are of the truck; a job that leads by the hand is a practice job on it. */
function truckContent(form: DraftText): Record<string, unknown> {
  const known = Object.keys(scenarioSchema.shape).filter((key) => !OF_THE_LESSON.includes(key));
  const content: Record<string, unknown> = {};
  for (const key of known) {
    const value = form.plainAt([key]);
    if (value !== undefined) content[key] = value;
    else if (form.at([key]).kind === 'unreadable') content[key] = null;
  }
  return content;
}

const OF_THE_LESSON: readonly string[] = ['mode', 'walkthrough', 'rules', 'weights', 'limits', 'variants'];
