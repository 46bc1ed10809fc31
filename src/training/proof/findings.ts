import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { environmentOf } from '../evidence/environment.ts';
import { scenarioFaults, type ValidityFault } from '../learners/validity.ts';
import { isLed } from '../scenario/modes.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { answersInText } from './answerInText.ts';
import { limitFindings } from './limitFindings.ts';
import type { ProofFinding, ProofPlan, ProofSoFar } from './ScenarioProof.ts';
import { sameCodes } from './sameCodes.ts';
import { variantFindings } from './variantEnds.ts';

/** An estimate one level off is as good as none. */
const LEVELS_APART = 2;

/** What a proof's figures say for and against giving the scenario out, as far as they are known; the forbidding ones first. */
export function findingsOf(
  scenario: Scenario,
  { codes, plan, learners, variants = [] }: Pick<ProofSoFar, 'codes' | 'plan' | 'learners' | 'variants'>,
  tables: EvidenceTables,
): readonly ProofFinding[] {
  const all: ProofFinding[] = [
    ...(plan === null || plan.proven ? [] : [unsolved(plan)]),
    ...(codes === null || sameCodes(codes.stated, codes.held)
      ? []
      : [{ kind: 'codes-differ', forbids: true, ...codes } as const]),
    ...(plan === null ? [] : scenarioFaults(plan, learners)).map(
      (fault) => ({ kind: isOfPrior(fault) ? 'prior' : 'learners', forbids: true, fault }) as const,
    ),
    ...answersInText(scenario).map(
      (answer) => ({ kind: 'answer-in-text', forbids: true, ...answer }) as const,
    ),
    ...variantFindings(scenario, variants),
    ...(plan === null ? [] : limitFindings(scenario, plan, ...variants)),
    ...(plan === null ? [] : planFindings(scenario, plan)),
    ...shopFindings(scenario, tables),
  ];
  return all;
}

/** Nothing that can be done proves what is wrong: for want of tools, or at all. */
function unsolved({ tests, lacking }: ProofPlan): ProofFinding {
  if (lacking !== undefined) return { kind: 'tools-lacking', forbids: true, ...lacking };
  return { kind: 'not-solvable', forbids: true, tests: tests.length };
}

function planFindings(scenario: Scenario, { group, difficulty }: ProofPlan): readonly ProofFinding[] {
  return [
    ...(group.length > 1 ? [{ kind: 'not-told-apart', forbids: false, items: group } as const] : []),
    ...levelFindings(scenario, difficulty.level),
  ];
}

function isOfPrior({ kind }: ValidityFault): boolean {
  return kind === 'prior-below' || kind === 'prior-above';
}

function levelFindings({ level, mode }: Scenario, estimate: number): readonly ProofFinding[] {
  // A walkthrough leads by the hand, whatever its truck has.
  if (isLed(mode) || Math.abs(level - estimate) < LEVELS_APART) return [];
  return [{ kind: 'level-differs', forbids: false, level, estimate }];
}

function shopFindings(scenario: Scenario, { environment }: EvidenceTables): readonly ProofFinding[] {
  const own = environmentOf(scenario);
  const same =
    own.ambientC === environment.ambientC &&
    own.altitudeM === environment.altitudeM &&
    own.fuelLevel === environment.fuelLevel;
  return same ? [] : [{ kind: 'other-shop', forbids: false, shop: environment }];
}
