import type { BenchTool } from '../../sim/devices/items.ts';
import type { RuleId } from './ruleIds.ts';

/** What must be at hand for a rule to be kept. Where it is not, nobody is held to the rule. */
export const RULE_NEEDS: Readonly<Partial<Record<RuleId, readonly BenchTool[]>>> = {
  'meter-proven': ['meter'],
  'meter-proven-again': ['meter'],
  'leads-noted': ['meter'],
  'pump-proven': ['hand-pump', 'caps-and-plugs'],
  'codes-recorded-first': ['reader'],
  'own-codes-cleared': ['reader'],
  // The solenoid carries its current on the reader's command; both sides are read at the back of the mated plug.
  'supply-and-ground-loaded': ['meter', 'back-probe-pins', 'reader'],
  'air-port-capped': ['hand-pump', 'caps-and-plugs'],
  'canister-hose-plugged': ['caps-and-plugs'],
  'vacuum-three-times': ['hand-pump', 'caps-and-plugs'],
  'return-observed': ['hand-pump', 'caps-and-plugs'],
  'hold-watched': ['hand-pump', 'caps-and-plugs'],
  'new-unit-tested': ['known-good-unit'],
  'pending-codes-read': ['reader'],
};

/**
 * Rules that a job may turn on: duties that every careful hand can do of its own accord, whatever the sitting brings. The
 * others speak of what somebody did, or of what came about, and cannot be asked for where it did not.
 */
export const DUTY_RULES = [
  'meter-proven',
  'pump-proven',
  'codes-recorded-first',
  'supply-and-ground-loaded',
  'click-three-times',
  'vacuum-three-times',
  'return-observed',
  'hold-watched',
] as const satisfies readonly RuleId[];
export type DutyRule = (typeof DUTY_RULES)[number];
