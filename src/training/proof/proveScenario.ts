import { TEST_TOOLS, type TestTool } from '../../sim/devices/items.ts';
import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { truckItemsOf } from '../evidence/chanceOf.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { tellingTests } from '../evidence/equivalence.ts';
import { Posterior } from '../evidence/Posterior.ts';
import { parInLines } from '../evidence/parOf.ts';
import { priorOfJob } from '../evidence/priorOfJob.ts';
import { oddsOf } from '../learners/oddsOf.ts';
import type { LearnerScores } from '../learners/validity.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { rightVerdicts } from '../score/truth.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { difficultyOf } from './difficulty.ts';
import { findingsOf } from './findings.ts';
import { heldCodes, statedCodes } from './heldCodes.ts';
import { lackingTools } from './lackingTools.ts';
import type { ItemChance, ProofPlan, ProofSoFar, ScenarioProof } from './ScenarioProof.ts';
import { type ProofLearners, sittings } from './sittings.ts';
import type { VariantEnd } from './VariantEnd.ts';
import { variantEnds } from './variantEnds.ts';
import { type VariantScores, variantSittings } from './variantSittings.ts';

/** Rivals that the complaint leaves less than this are not named. */
const LEAST_RIVAL = 0.03;
const MOST_RIVALS = 6;

/**
 * Proves a scenario before anybody sits it: works out its plan and par, drives its truck for the codes, and lets learners sit
 * it. For a scenario that asks for a verdict. Some seconds, and half a second more for each sitting.
 */
export function proveScenario(
  scenario: Scenario,
  tables: EvidenceTables,
  learners: ProofLearners,
): ScenarioProof {
  const steps = proofInSteps(scenario, tables, learners);
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

/**
 * The same bit by bit, for whoever watches: what is known after each step, each a part of a second or a sitting or two. Learners
 * are held against the limits only at the end, when who misses one has sat often enough.
 */
export function* proofInSteps(
  scenario: Scenario,
  tables: EvidenceTables,
  asked: ProofLearners,
): Generator<ProofSoFar, ScenarioProof, void> {
  const soFar = (known: Omit<ProofSoFar, 'scenario' | 'findings'>): ProofSoFar => {
    const findings = findingsOf(scenario, { ...known, learners: [] }, tables);
    return { scenario: scenario.id, ...known, findings };
  };
  yield soFar({ codes: null, plan: null, learners: [] });
  const codes = { stated: statedCodes(scenario), held: heldCodes(scenario) };
  yield soFar({ codes, plan: null, learners: [] });
  const plan = planFor(scenario, tables);
  yield soFar({ codes, plan, learners: [] });
  let variants: readonly VariantEnd[] | undefined;
  for (variants of variantEnds(scenario, tables, { ...plan, codes }))
    yield soFar({ codes, plan, learners: [], variants });
  const drawn = variants === undefined ? {} : { variants };
  let learners: readonly LearnerScores[] = [];
  for (learners of sittings(scenario, tables, plan, asked)) yield soFar({ codes, plan, learners, ...drawn });
  let satVariants: readonly VariantScores[] = [];
  for (satVariants of variantSittings(scenario, tables, variants ?? [], asked))
    yield soFar({ codes, plan, learners, ...drawn, sitting: satVariants.at(-1)?.variant ?? 1 });
  const findings = [
    ...findingsOf(scenario, { codes, plan, learners, ...drawn }, tables),
    ...satVariants.flatMap((one) => one.findings),
  ];
  const fit = findings.every(({ forbids }) => !forbids);
  return { scenario: scenario.id, ...plan, codes, learners, ...drawn, findings, fit };
}

function planFor(scenario: Scenario, tables: EvidenceTables): ProofPlan {
  const par = parInLines(scenario, tables);
  const { prior, favouriteIsTrue } = oddsOf(scenario, tables);
  const right = rightVerdicts(scenario);
  const tools = toolsOfTests(tables.rig, par.tests);
  const telling = tellingOf(scenario, tables);
  const lacking = par.proven ? null : lackingTools(scenario, tables);
  return {
    ...par,
    ...(lacking === null ? {} : { lacking }),
    tools,
    ...chancesAfter(scenario, tables, right),
    group: tables.groupOf(right[0] ?? 'nothing-wrong') as readonly VerdictItem[],
    prior,
    favouriteIsTrue,
    difficulty: difficultyOf(scenario, { tests: par.tests, tools, favouriteIsTrue, telling }),
  };
}

/** How many tests tell what is wrong from a sound truck; of several faults, the best hidden one's. */
function tellingOf({ faults }: Scenario, { suspects, evidence }: EvidenceTables): number {
  const sound = suspects.findIndex(({ items }) => items.length === 0);
  const counts = faults.flatMap(({ fault, severity }) => {
    const own = suspects.flatMap(({ faults: of }, s) => {
      const [only] = of;
      return of.length === 1 && only?.fault === fault
        ? [{ s, apart: Math.abs(only.severity - severity) }]
        : [];
    });
    const nearest = own.sort((one, other) => one.apart - other.apart)[0];
    return nearest === undefined ? [] : [tellingTests(evidence, nearest.s, sound).length];
  });
  return Math.min(...counts, evidence.table.tests.length);
}

function toolsOfTests({ tests }: RigDefinition, ids: readonly StandardTestId[]): readonly TestTool[] {
  const taken = new Set(tests.filter(({ id }) => ids.includes(id)).flatMap(({ needs }) => needs));
  return TEST_TOOLS.filter((tool) => taken.has(tool));
}

/** What the complaint speaks for: what is true, and what else it could be. */
function chancesAfter(
  scenario: Scenario,
  tables: EvidenceTables,
  right: readonly VerdictItem[],
): Pick<ProofPlan, 'truths' | 'rivals'> {
  const posterior = new Posterior(tables.suspects, [], priorOfJob(scenario, tables), []);
  const likeliestFirst = (items: readonly VerdictItem[]): readonly ItemChance[] =>
    items
      .map((item) => ({ item, chance: posterior.ofItem(item) }))
      .sort((one, other) => other.chance - one.chance);
  const others = truckItemsOf(tables.rig).filter((item) => !right.includes(item));
  return {
    truths: likeliestFirst([...new Set(right)]),
    rivals: likeliestFirst(others)
      .filter(({ chance }) => chance >= LEAST_RIVAL)
      .slice(0, MOST_RIVALS),
  };
}
