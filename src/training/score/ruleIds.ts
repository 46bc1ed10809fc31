import { RULE_IDS as IDS_OF_RULES } from '../scenario/ruleIds.ts';

export type { RuleId } from '../scenario/ruleIds.ts';

/** The method rules, which a scenario may name to turn off. */
export const RULE_IDS = IDS_OF_RULES;

/** Safety breaches of this version; each has a sentence in `text`. */
export const SAFETY_IDS = [
  'unfused-source',
  'supply-on-sense-mated',
  'lamp-on-sense-mated',
  'slipped-probe',
  'too-much-vacuum-on-canister',
  'too-much-pressure-on-canister',
  'over-rated-vacuum',
  'smoke-with-shop-air',
  'spark-at-open-vapour',
  'spark-at-unaired-unit',
] as const;
export type SafetyId = (typeof SAFETY_IDS)[number];
