import { z } from 'zod';
import { RIG_IDS } from '../../sim/devices/BenchSurface.ts';
import { BENCH_TOOLS, ITEMS, TOOL_ITEMS } from '../../sim/devices/items.ts';
import { FAULTS, isRootCause } from '../../sim/faults/catalogue.ts';
import { doneConditionSchema } from './DoneCondition.ts';
import { PLAIN_TEXT } from './hiddenCharacters.ts';
import { SITTING_MODES } from './modes.ts';
import { RULE_IDS } from './ruleIds.ts';
import { DUTY_RULES } from './ruleNeeds.ts';
import { SEED_POLICIES } from './seedPolicy.ts';
import { MOST_VARIANTS } from './Variant.ts';
import { LEAST_EVIDENCE, MOST_WEIGHT } from './weights.ts';

/** Text in which every character shows. That one does not is told where the text is read, by its own place. */
const text = (limit: number) =>
  z.string().min(1).max(limit).regex(/\S/u, { error: 'blank' }).regex(PLAIN_TEXT, { error: 'plain' });
/** A text that may be written in several languages. */
const words = (limit: number) =>
  z.union([
    text(limit),
    z.strictObject({ en: text(limit).optional(), es: text(limit).optional() }).meta({ minProperties: 1 }),
  ]);
const slug = z
  .string()
  .max(60)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, { error: 'slug' });

const weight = (least: number) => z.number().int().min(least).max(MOST_WEIGHT);

const STARTING_FAULTS = FAULTS.filter(({ weight }) => weight > 0).map(({ id }) => id);
const ROOTS = STARTING_FAULTS.filter(isRootCause);

/** What may have been renewed on the truck. */
const TRUCK_PARTS = ITEMS.filter((item) => !TOOL_ITEMS.includes(item));

const codes = z
  .array(
    z.strictObject({
      code: z.string().regex(/^[PBCU][0-9A-F]{4}$/, { error: 'trouble-code' }),
      status: z.enum(['stored', 'pending']),
    }),
  )
  .max(12);
const complaint = words(1200);
const history = z.array(words(400)).max(16);
/** Drives with the faults in before the order was written: they fill the controller's memory. */
const drives = z.strictObject({ cycles: z.number().int().min(0).max(40), refuelled: z.boolean() });
const faults = z
  .array(
    z.strictObject({
      // What it may be is told with more words than a schema has; editors take it from the list.
      fault: z.string().min(1).max(60).meta({ enum: STARTING_FAULTS }),
      severity: z.number().min(0).max(1).optional(),
      /** Each seat has a severity of its own between the two. */
      'severity-to': z.number().min(0).max(1).optional(),
      'when-moved': z.literal(true).optional(),
      root: z.string().min(1).max(60).meta({ enum: ROOTS }).optional(),
    }),
  )
  .max(4);
const remark = words(3000);

/** Format version 1 of a scenario file, keys as written in the file; unknown keys are refused everywhere. */
export const scenarioSchema = z.strictObject({
  format: z.literal(1),
  id: slug,
  rig: z.enum(RIG_IDS).optional(),
  title: words(80),
  summary: words(400),
  mode: z.enum(SITTING_MODES),
  level: z.literal([1, 2, 3, 4]),
  minutes: z.number().int().min(5).max(240),
  aims: z.array(words(200)).min(1).max(8),
  'work-order': z.strictObject({
    number: text(20),
    vehicle: words(160),
    complaint,
    history,
    renewed: z.array(z.enum(TRUCK_PARTS)).max(8).optional(),
    codes,
    cautions: z.array(words(400)).min(1).max(12),
  }),
  bench: z.strictObject({
    'ambient-celsius': z.number().min(-30).max(50),
    'altitude-metres': z.number().min(-400).max(4500),
    'fuel-percent': z.number().min(0).max(100),
  }),
  tools: z.array(z.enum(BENCH_TOOLS)).min(1).max(BENCH_TOOLS.length).optional(),
  limits: z
    .strictObject({
      minutes: z.number().int().min(10).max(600).optional(),
      dollars: z.number().int().min(0).max(5000).optional(),
    })
    .optional(),
  seed: z.union([slug, z.strictObject({ word: slug, policy: z.enum(SEED_POLICIES) })]),
  drives,
  faults,
  /** Other truths of the same job; what a variant leaves out is as above. */
  variants: z
    .array(
      z.strictObject({
        faults,
        codes: codes.optional(),
        drives: drives.optional(),
        complaint: complaint.optional(),
        history: history.optional(),
        remark: remark.optional(),
      }),
    )
    .min(1)
    .max(MOST_VARIANTS)
    .optional(),
  rules: z
    .strictObject({
      off: z.array(z.enum(RULE_IDS)).max(RULE_IDS.length),
      on: z.array(z.enum(DUTY_RULES)).max(DUTY_RULES.length).optional(),
    })
    .optional(),
  weights: z
    .strictObject({
      verdict: weight(0),
      evidence: weight(LEAST_EVIDENCE),
      method: weight(0),
      economy: weight(0),
      repair: weight(0),
    })
    .optional(),
  walkthrough: z
    .array(z.strictObject({ id: slug, say: words(600), how: words(800), done: doneConditionSchema }))
    .min(1)
    .max(80)
    .optional(),
  remark,
});

export type ScenarioFile = z.infer<typeof scenarioSchema>;
