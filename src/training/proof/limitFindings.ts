import { LIMIT_MARGIN } from '../scenario/JobLimits.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { ProofFinding, ProofPlan } from './ScenarioProof.ts';

/** Limits that careful work cannot keep, on the dearest of its truths: minutes with room to spare, dollars to the dollar, since parts cost what they cost. */
export function limitFindings(
  { limits }: Scenario,
  ...pars: readonly Pick<ProofPlan, 'minutes' | 'money'>[]
): readonly ProofFinding[] {
  const minutes = Math.max(...pars.map((par) => par.minutes));
  const money = Math.max(...pars.map((par) => par.money));
  const wanted = { minutes: Math.ceil(minutes * (1 + LIMIT_MARGIN)), dollars: Math.ceil(money) };
  const par = { minutes, dollars: money };
  return (['minutes', 'dollars'] as const).flatMap((of) => {
    const limit = limits?.[of];
    if (limit === undefined || limit >= wanted[of]) return [];
    return [{ kind: 'limit-too-tight', forbids: true, of, limit, par: par[of], wanted: wanted[of] } as const];
  });
}
