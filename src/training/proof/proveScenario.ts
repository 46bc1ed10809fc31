import { TEST_TOOLS, type TestTool } from '../../sim/rigs/standardTests/StandardTest.ts';
import { STANDARD_TESTS } from '../../sim/rigs/standardTests/standardTests.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { TRUCK_ITEMS } from '../evidence/chanceOf.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { tellingTests } from '../evidence/equivalence.ts';
import type { JobPar } from '../evidence/JobPar.ts';
import { Posterior } from '../evidence/Posterior.ts';
import { parOf } from '../evidence/parOf.ts';
import { priorOfJob } from '../evidence/priorOfJob.ts';
import type { LearnerName } from '../learners/Learner.ts';
import { oddsOf } from '../learners/oddsOf.ts';
import { sitScenario } from '../learners/sitScenario.ts';
import { scenarioFaults } from '../learners/validity.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { rightVerdicts } from '../score/truth.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { difficultyOf } from './difficulty.ts';
import { findingsOf } from './findings.ts';
import { heldCodes, statedCodes } from './heldCodes.ts';
import type { RivalItem, ScenarioProof } from './ScenarioProof.ts';

/** Which simulated learners are asked to sit, and under how many seeds. None where `seeds` is 0. */
export interface ProofLearners {
  readonly learners: readonly LearnerName[];
  readonly seeds: number;
}

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
  { learners, seeds }: ProofLearners,
): ScenarioProof {
  const par = parOf(scenario, tables);
  const odds = oddsOf(scenario, tables);
  const right = rightVerdicts(scenario);
  const tools = toolsOfTests(par.tests);
  const sat = sitForProof(scenario, tables, par, { learners, seeds });
  const proof = {
    scenario: scenario.id,
    ...par,
    tools,
    rivals: rivalsOf(scenario, tables, right),
    group: tables.groupOf(right[0] ?? 'nothing-wrong') as readonly VerdictItem[],
    codes: { stated: statedCodes(scenario), held: heldCodes(scenario) },
    prior: odds.prior,
    favouriteIsTrue: odds.favouriteIsTrue,
    learners: sat,
    difficulty: difficultyOf(scenario, {
      tests: par.tests,
      tools,
      favouriteIsTrue: odds.favouriteIsTrue,
      telling: tellingOf(scenario, tables),
    }),
  };
  const findings = findingsOf(scenario, proof, tables);
  return { ...proof, findings, fit: findings.every(({ forbids }) => !forbids) };
}

/** So many sittings make a median that can be held against somebody. */
const SURE_SEEDS = 5;

/** The learners' scores. Who misses a limit under few seeds sits again under more: one odd truck condemns no scenario. */
function sitForProof(
  scenario: Scenario,
  tables: EvidenceTables,
  par: JobPar,
  { learners, seeds }: ProofLearners,
): ScenarioProof['learners'] {
  if (seeds === 0 || learners.length === 0) return [];
  const sit = (who: readonly LearnerName[], under: number): ScenarioProof['learners'] =>
    sitScenario(scenario, tables, under, () => undefined, who, par).learners;
  const first = sit(learners, seeds);
  const missed = scenarioFaults(oddsOf(scenario, tables), first).flatMap((fault) =>
    'learner' in fault ? [fault.learner, ...(fault.kind === 'not-below-by-the-book' ? [BOOK] : [])] : [],
  );
  if (missed.length === 0 || seeds >= SURE_SEEDS) return first;
  const again = sit([...new Set(missed)], SURE_SEEDS);
  return first.map((one) => again.find(({ learner }) => learner === one.learner) ?? one);
}
const BOOK: LearnerName = 'by-the-book';

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

function toolsOfTests(ids: readonly StandardTestId[]): readonly TestTool[] {
  const taken = new Set(STANDARD_TESTS.filter(({ id }) => ids.includes(id)).flatMap(({ needs }) => needs));
  return TEST_TOOLS.filter((tool) => taken.has(tool));
}

/** What else the complaint speaks for. */
function rivalsOf(
  scenario: Scenario,
  tables: EvidenceTables,
  right: readonly VerdictItem[],
): readonly RivalItem[] {
  const posterior = new Posterior(tables.suspects, [], priorOfJob(scenario, tables), []);
  return TRUCK_ITEMS.filter((item) => !right.includes(item))
    .map((item) => ({ item, chance: posterior.ofItem(item) }))
    .filter(({ chance }) => chance >= LEAST_RIVAL)
    .sort((one, other) => other.chance - one.chance)
    .slice(0, MOST_RIVALS);
}
