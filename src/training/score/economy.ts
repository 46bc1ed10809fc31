import { clamp } from '../../base/maths.ts';
import type { JobCost, ScoreReason } from './DebriefFacts.ts';
import type { JudgedJob } from './JudgedJob.ts';
import type { VerdictWorth } from './VerdictWorth.ts';

const HALF = 5;
/** Full up to this many times par, nothing from there on. */
const FULL_UP_TO = 1.5;
const NOTHING_AT = 3;

/**
 * Minutes and parts against par, each half. Being cheap is no merit where it was luck: it counts for a right verdict only, and as
 * far as the evidence carries that. What goes over a limit of the job earns nothing, however it stands to par.
 */
export function economyReasons(
  { par, scenario }: JudgedJob,
  { right, weight }: VerdictWorth,
  spent: JobCost,
  ticks: { readonly minutes: readonly number[]; readonly money: readonly number[] },
): readonly ScoreReason[] {
  const { minutes, dollars } = scenario.limits ?? {};
  const line = (kind: 'minutes' | 'money', much: number, of: number, limit?: number): ScoreReason => ({
    kind,
    points: right && much <= (limit ?? much) ? HALF * weight * shareOfPar(much, of) : 0,
    of: HALF,
    spent: much,
    par: of,
    right,
    weight,
    ticks: ticks[kind],
    ...(limit === undefined ? {} : { limit }),
  });
  return [
    line('minutes', spent.bookMinutes, par.minutes, minutes),
    line('money', spent.money, par.money, dollars),
  ];
}

/** 1 up to 1.5 times par, 0 from three times par on, even between. Where par is nothing, anything spent is too much. */
function shareOfPar(spent: number, par: number): number {
  if (spent <= FULL_UP_TO * par) return 1;
  if (par <= 0) return 0;
  return clamp((NOTHING_AT * par - spent) / ((NOTHING_AT - FULL_UP_TO) * par), 0, 1);
}
