import type { ProofSoFar } from '../../../training/proof/ScenarioProof.ts';
import type { ProofState } from './ProofState.ts';

/** A part of the proof, and whether it is of the draft before the last change. */
export interface ShownPart<T> {
  readonly is: T;
  readonly stale: boolean;
}

export interface ShownProof {
  readonly codes: ShownPart<NonNullable<ProofSoFar['codes']>> | null;
  readonly plan: ShownPart<NonNullable<ProofSoFar['plan']>> | null;
  readonly learners: ShownPart<ProofSoFar['learners']>;
  readonly findings: ProofSoFar['findings'];
  readonly variants: ProofSoFar['variants'];
}

const NOTHING: ProofSoFar = { scenario: '', codes: null, plan: null, learners: [], findings: [] };

/** What is to be shown of a proof: of the newest draft what is known, of the one before what is not known yet. Null: no proof. */
export function shownProof(state: ProofState): ShownProof | null {
  switch (state.kind) {
    case 'proved': {
      const { codes, learners, findings, variants, ...plan } = state.proof;
      return {
        codes: { is: codes, stale: false },
        plan: { is: plan, stale: false },
        learners: { is: learners, stale: false },
        findings,
        variants,
      };
    }
    case 'proving': {
      const now = state.soFar ?? NOTHING;
      const before = state.before ?? NOTHING;
      const keepLearners = now.learners.length === 0;
      return {
        codes: partOf(now.codes, before.codes),
        plan: partOf(now.plan, before.plan),
        learners: {
          is: keepLearners ? before.learners : now.learners,
          stale: keepLearners && before.learners.length > 0,
        },
        findings: now.findings,
        variants: now.variants ?? before.variants,
      };
    }
    default:
      return null;
  }
}

function partOf<T>(now: T | null, before: T | null): ShownPart<T> | null {
  if (now !== null) return { is: now, stale: false };
  return before === null ? null : { is: before, stale: true };
}

/** Whether anything that is shown is of the draft before. */
export function isStale({ codes, plan, learners }: ShownProof): boolean {
  return codes?.stale === true || plan?.stale === true || learners.stale;
}
