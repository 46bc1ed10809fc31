import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { oddsOf } from '../learners/oddsOf.ts';
import { type LearnerScores, scenarioFaults } from '../learners/validity.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { type ProofLearners, sittings } from './sittings.ts';
import type { VariantEnd, VariantFinding, VariantName } from './VariantEnd.ts';
import { truthsAtEnds } from './variantEnds.ts';

/** How learners fare at one truth of a scenario with variants, and what stands against it. */
export interface VariantScores extends VariantName {
  readonly learners: readonly LearnerScores[];
  readonly findings: readonly VariantFinding[];
}

/**
 * Learners sit every truth but the first, which they sat as the scenario's own; one with a range at its mildest, where it is hardest to show.
 * What is known after each sitting, the truth that is sat just now being the last: half a second apiece.
 */
export function* variantSittings(
  scenario: Scenario,
  tables: EvidenceTables,
  ends: readonly VariantEnd[],
  asked: ProofLearners,
): Generator<readonly VariantScores[], void, void> {
  let done: readonly VariantScores[] = [];
  for (const { truth, variant, end } of truthsAtEnds(scenario)) {
    const cost = ends.find((each) => each.variant === variant && each.end === end);
    if (variant === 1 || end === 'worst' || cost === undefined) continue;
    const judged = { ...cost, ...oddsOf(truth, tables) };
    const of = { variant, end };
    let now: VariantScores | null = null;
    for (const learners of sittings(truth, tables, judged, asked)) {
      now = { ...of, learners, findings: [] };
      yield [...done, now];
    }
    if (now === null) return;
    const findings = scenarioFaults(judged, now.learners).flatMap((fault) =>
      // What the complaint leaves a truth is asked of the scenario as it stands.
      fault.kind === 'prior-below' || fault.kind === 'prior-above'
        ? []
        : [{ kind: 'variant-learners', forbids: true, of, fault } as const],
    );
    done = [...done, { ...now, findings }];
    yield done;
  }
}
