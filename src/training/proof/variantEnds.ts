import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { parOf } from '../evidence/parOf.ts';
import { ofVariant } from '../scenario/drawVariant.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { answersInText } from './answerInText.ts';
import { heldCodes, statedCodes } from './heldCodes.ts';
import { sameCodes } from './sameCodes.ts';
import type { VariantEnd, VariantFinding, VariantName } from './VariantEnd.ts';

/** So much dearer than the cheapest, in minutes or in money, no seat's job may be. */
export const MOST_APART = 0.2;

/** The truths of a scenario with variants, those with ranges at both ends. None where there are no variants. */
export function truthsAtEnds(scenario: Scenario): readonly (VariantName & { readonly truth: Scenario })[] {
  return (scenario.variants ?? []).flatMap((variant, index) => {
    const ranged = variant.faults.some(({ severityTo }) => severityTo !== undefined);
    const at = (end: VariantEnd['end'], share: number) => ({
      variant: index + 1,
      end,
      truth: ofVariant(scenario, variant, 'first', () => share),
    });
    return ranged ? [at('mild', 0), at('worst', 1)] : [at('only', 0)];
  });
}

/** What is known of a truth that was worked out. */
type WorkedOut = Pick<VariantEnd, 'tests' | 'minutes' | 'money' | 'proven' | 'codes'>;

/**
 * What each truth costs a careful learner, after each that is worked out: a second or two apiece. `first` is the first one's,
 * for whoever has proved the scenario as it stands.
 */
export function* variantEnds(
  scenario: Scenario,
  tables: EvidenceTables,
  first?: WorkedOut,
): Generator<readonly VariantEnd[], void, void> {
  let ends: readonly VariantEnd[] = [];
  for (const { truth, variant, end } of truthsAtEnds(scenario)) {
    const known = ends.length === 0 && first !== undefined ? first : workedOut(truth, tables);
    const { tests, minutes, money, proven, codes } = known;
    ends = [...ends, { variant, end, faults: truth.faults, tests, minutes, money, proven, codes }];
    yield ends;
  }
}

function workedOut(truth: Scenario, tables: EvidenceTables): WorkedOut {
  return {
    ...parOf(truth, tables),
    codes: { stated: statedCodes(truth), held: heldCodes(truth) },
  };
}

/** What stands against the variants, by those ends that are worked out. */
export function variantFindings(scenario: Scenario, ends: readonly VariantEnd[]): readonly VariantFinding[] {
  const name = ({ variant, end }: VariantName): VariantName => ({ variant, end });
  return [
    ...ends
      .filter(({ proven }) => !proven)
      .map((end) => ({ kind: 'variant-not-solvable', forbids: true, of: name(end) }) as const),
    ...ends
      .filter(({ codes }) => !sameCodes(codes.stated, codes.held))
      // The first as it stands is the scenario itself, of which its own finding says it.
      .filter(({ variant, end }) => variant > 1 || end !== 'only')
      .map((end) => ({ kind: 'variant-codes-differ', forbids: true, of: name(end), ...end.codes }) as const),
    ...truthsAtEnds(scenario)
      // The scenario's own texts are judged with the scenario; of a range one end says what the other does.
      .filter(({ variant, end }) => variant > 1 && end !== 'worst')
      .flatMap(({ truth, ...of }) => {
        const [fault] = [...new Set(answersInText(truth).map((answer) => answer.fault))];
        return fault === undefined
          ? []
          : [{ kind: 'variant-answer-in-text', forbids: true, of: name(of), fault } as const];
      }),
    ...apart(ends, 'minutes'),
    ...apart(ends, 'money'),
  ];
}

function apart(ends: readonly VariantEnd[], by: 'minutes' | 'money'): readonly VariantFinding[] {
  const [first, ...others] = ends;
  if (first === undefined) return [];
  const least = others.reduce((one, other) => (other[by] < one[by] ? other : one), first);
  const most = others.reduce((one, other) => (other[by] > one[by] ? other : one), first);
  if (most[by] <= least[by] * (1 + MOST_APART)) return [];
  return [
    {
      kind: 'variants-apart',
      forbids: true,
      by,
      least: { variant: least.variant, end: least.end },
      most: { variant: most.variant, end: most.end },
      from: least[by],
      to: most[by],
    },
  ];
}
