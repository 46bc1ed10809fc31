import { z } from 'zod/mini';
import { SITTING_MODES } from '../scenario/modes.ts';
import { MAX_TICK } from './SittingRecord.ts';

const MAX_ACTIONS = 50_000;

const text = (longest: number) => z.string().check(z.minLength(1), z.maxLength(longest));
const hash = z.string().check(z.regex(/^[0-9a-f]{64}$/));
const tick = z.int().check(z.gte(0), z.lte(MAX_TICK));

/** The form of a record but for its actions, each of which has a form of its own. */
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
