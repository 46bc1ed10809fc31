import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { environmentOf } from '../evidence/environment.ts';
import { scenarioFaults, type ValidityFault } from '../learners/validity.ts';
import { isLed } from '../scenario/modes.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { answersInText } from './answerInText.ts';
import { sameCodes } from './heldCodes.ts';
import type { ProofFinding, ScenarioProof } from './ScenarioProof.ts';

/** An estimate one level off is as good as none. */
const LEVELS_APART = 2;

/** What a proof's figures say for and against giving the scenario out, the forbidding ones first. */
export function findingsOf(
  scenario: Scenario,
  proof: Omit<ScenarioProof, 'findings' | 'fit'>,
  tables: EvidenceTables,
): readonly ProofFinding[] {
  const { codes, group, difficulty } = proof;
  const faults = scenarioFaults(proof, proof.learners);
  const all: ProofFinding[] = [
    ...(proof.proven ? [] : [{ kind: 'not-solvable', forbids: true, tests: proof.tests.length } as const]),
    ...(sameCodes(codes.stated, codes.held)
      ? []
      : [{ kind: 'codes-differ', forbids: true, ...codes } as const]),
    ...faults.map(
      (fault) => ({ kind: isOfPrior(fault) ? 'prior' : 'learners', forbids: true, fault }) as const,
    ),
    ...answersInText(scenario).map(
      (answer) => ({ kind: 'answer-in-text', forbids: true, ...answer }) as const,
    ),
    ...(group.length > 1 ? [{ kind: 'not-told-apart', forbids: false, items: group } as const] : []),
    ...levelFindings(scenario, difficulty.level),
    ...shopFindings(scenario, tables),
  ];
  return all;
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
