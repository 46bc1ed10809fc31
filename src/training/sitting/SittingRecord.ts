import { z } from 'zod/mini';
import { TICKS_PER_SECOND } from '../../base/ticks.ts';
import { SITTING_MODES } from '../scenario/modes.ts';
import type { DrawnVariant } from '../scenario/Variant.ts';
import type { TimedAction } from './SittingAction.ts';
import type { SittingMode } from './SittingView.ts';

export const PROGRAM_VERSION = '0.1.0';

/** No job lasts longer than a day. */
export const MAX_TICK = 24 * 3600 * TICKS_PER_SECOND;
export const MAX_ACTIONS = 50_000;

/**
 * A sitting as its actions: the scenario's hash, the seed and what was done at which tick. Nothing in it states a
 * result but the claim, and the claim counts only as far as a replay bears it out. `endHash` is the hash of the world
 * at the end, so that a replay can show that it saw the same readings to the last digit.
 */
export interface SittingRecord {
  readonly program: 'known-good';
  readonly format: 1;
  readonly version: string;
  readonly scenario: { readonly id: string; readonly contentHash: string };
  /** Where the scenario has variants: which truth this sitting had, so that whoever has the scenario can draw it again. */
  readonly variant?: DrawnVariant;
  readonly seed: string;
  readonly mode: SittingMode;
  readonly actions: readonly TimedAction[];
  readonly endTick: number;
  readonly endHash: string;
  /** Total score as the program that wrote the record claims it; null while the job is open. */
  readonly claimedScore: number | null;
}

const text = (longest: number) => z.string().check(z.minLength(1), z.maxLength(longest));
const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const tick = z.int().check(z.gte(0), z.lte(MAX_TICK));

export const recordEnvelopeSchema = z.strictObject({
  program: z.literal('known-good'),
  format: z.literal(1),
  version: text(40),
  scenario: z.strictObject({ id: text(60), contentHash: hash }),
  variant: z.exactOptional(z.strictObject({ draw: text(60), contentHash: hash })),
  seed: text(60),
  mode: z.enum(SITTING_MODES),
  actions: z.array(z.strictObject({ tick, action: z.unknown() })).check(z.maxLength(MAX_ACTIONS)),
  endTick: tick,
  endHash: hash,
  claimedScore: z.nullable(z.number().check(z.gte(0), z.lte(100))),
});
