import { err, ok, type Result } from '../../base/Result.ts';
import { drawnVariant, parseDraw } from '../scenario/drawVariant.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { DrawnVariant } from '../scenario/Variant.ts';
import { seedOf } from './seats.ts';

/** What a record says of the truth it had. */
interface RecordOfTruth {
  readonly scenario: { readonly id: string; readonly contentHash: string };
  readonly variant?: DrawnVariant;
  readonly seed: string;
}

/** The truth that a record was sat on, and the seat it was sat at where a class code stood behind it. */
export interface RecordedTruth {
  readonly scenario: Scenario;
  readonly seat: number | null;
}

/**
 * Why a record cannot be held against a scenario with variants. `variant-missing`: it says none. `variant-unknown`: no draw
 * is written like this. `variant-differs`: this draw gives another truth. `seat-seed-differs`: the truck of that seat has
 * other tolerances. `other-class`: not sat under the class code asked for.
 */
export type TruthProblem =
  | 'variant-missing'
  | 'variant-unknown'
  | 'variant-differs'
  | 'seat-seed-differs'
  | 'other-class';

/**
 * Draws again the truth that a record had. `mark` is that of the class code which the records must have been sat under, null
 * where any will do. A scenario without variants is its own truth; that the record is of it at all is for its replay to say.
 */
export function truthOfRecord(
  scenario: Scenario,
  record: RecordOfTruth,
  mark: string | null,
): Result<RecordedTruth, TruthProblem> {
  if (scenario.variants === undefined) return ok({ scenario, seat: null });
  if (record.variant === undefined) return err('variant-missing');
  const draw = parseDraw(record.variant.draw);
  if (draw === null) return err('variant-unknown');
  if (mark !== null && (draw.kind !== 'seat' || draw.mark !== mark)) return err('other-class');
  const drawn = drawnVariant(scenario, draw);
  if (drawn.variant?.contentHash !== record.variant.contentHash) return err('variant-differs');
  if (draw.kind !== 'seat') return ok({ scenario: drawn, seat: null });
  if (record.seed !== seedOf(drawn)) return err('seat-seed-differs');
  return ok({ scenario: drawn, seat: draw.seat });
}
