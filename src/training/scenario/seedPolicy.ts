import { isLed } from './modes.ts';
import type { Scenario } from './Scenario.ts';

/**
 * Which truck of its make a learner gets: the scenario's own, the same for all (`fixed`); or one of its own at every sitting, and at a
 * seat of a class the one of that seat (`by-seat`).
 */
export const SEED_POLICIES = ['fixed', 'by-seat'] as const;
export type SeedPolicy = (typeof SEED_POLICIES)[number];

/** What a job goes by, also where it does not say. Led learners have the numbers before them that the steps speak of. */
export function seedPolicyOf({ mode, seedPolicy }: Pick<Scenario, 'mode' | 'seedPolicy'>): SeedPolicy {
  return seedPolicy ?? (isLed(mode) ? 'fixed' : 'by-seat');
}

/** The seed of a new sitting. `own` is that of the seat, or one that nobody chose. */
export function seedOfSitting(scenario: Scenario, own: () => string): string {
  return seedPolicyOf(scenario) === 'fixed' ? scenario.seed : own();
}
