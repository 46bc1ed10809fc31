import { z } from 'zod/mini';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';

const tick = z.int().check(z.gte(0));
const points = z.number();
const chance = z.number().check(z.gte(-1e-9), z.lte(1 + 1e-9));
const cost = z.looseObject({ money: z.number(), bookMinutes: z.number() });
const chances = z.array(z.looseObject({ item: z.string(), chance }));

/**
 * The form of kept facts as far as the debrief leans on it. What is kept carries a sum and the name of the program that wrote
 * it, so this guards against a program that wrote something else under the same name, not against damage.
 */
const factsSchema = z.looseObject({
  score: z.looseObject({
    total: points.check(z.gte(0), z.lte(100)),
    parts: z.array(
      z.looseObject({
        part: z.string(),
        points,
        of: points,
        because: z.array(z.looseObject({ kind: z.string() })),
      }),
    ),
    safetyDeduction: points,
    cappedAt: z.nullable(points),
  }),
  verdict: z.looseObject({
    named: z.string(),
    mode: z.nullable(z.string()),
    truth: z.array(
      z.looseObject({ item: z.string(), mode: z.nullable(z.string()), fault: z.nullable(z.string()) }),
    ),
    right: z.boolean(),
    modeRight: z.boolean(),
    cites: z.array(z.int()),
  }),
  rules: z.array(
    z.looseObject({
      rule: z.string(),
      outcome: z.string(),
      entries: z.array(z.int()),
      ticks: z.array(tick),
      calledBy: z.array(z.string()),
    }),
  ),
  repairGaps: z.array(z.string()),
  safety: z.array(z.looseObject({ breach: z.string(), grade: z.enum(['minor', 'serious']), tick })),
  renewed: z.array(z.looseObject({ item: z.string(), needed: z.boolean(), money: z.number(), tick })),
  cost: z.looseObject({ money: z.number(), bookMinutes: z.number(), untilVerdict: cost }),
  trialFits: z.array(tick),
  par: z.looseObject({
    tests: z.array(z.string()),
    minutes: z.number(),
    money: z.number(),
    proven: z.boolean(),
  }),
  evidence: z.looseObject({
    steps: z.array(z.looseObject({ entry: z.int(), tick, items: chances, tools: chances })),
    verdict: z.looseObject({
      named: z.string(),
      group: z.array(z.string()),
      prior: chance,
      cited: chance,
      shown: chance,
      weight: z.number(),
    }),
    marks: z.array(z.looseObject({ item: z.string() })),
    settling: z.nullable(z.looseObject({ test: z.string(), bits: z.number(), minutes: z.number() })),
  }),
  boardMarks: z.array(z.looseObject({ item: z.string(), agrees: z.boolean(), points })),
  coachAsked: z.record(z.string(), z.int()),
  trace: z.array(z.looseObject({ tick, senseVolts: z.number(), canisterKPa: z.number() })),
  marks: z.array(z.looseObject({ tick, action: z.looseObject({ kind: z.string() }) })),
  remark: z.string(),
});

export function areFacts(value: unknown): value is DebriefFacts {
  return factsSchema.safeParse(value).success;
}
