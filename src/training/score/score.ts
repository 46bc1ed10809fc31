import { clamp } from '../../base/maths.ts';
import { ALLOWANCES, bookMinutes } from '../sitting/book.ts';
import type { DebriefFacts, RuleOutcome, SafetyBreach, ScorePart } from './DebriefFacts.ts';
import { decisiveRetest } from './decisiveRetest.ts';
import { isRestored } from './rules/benchRestored.ts';
import type { Timeline } from './Timeline.ts';

const VERDICT = 25;
const METHOD = 45;
const ECONOMY = 10;
const REPAIR = 20;
/** What a right verdict is worth that no cited entry supports. */
const UNSUPPORTED = 0.2;
const MINOR_POINTS = 5;
const SERIOUS_CAP = 40;

export interface ScoreFacts {
  readonly timeline: Timeline;
  readonly right: boolean;
  /** A cited entry bears on the named item. */
  readonly supported: boolean;
  readonly rules: readonly RuleOutcome[];
  readonly safety: readonly SafetyBreach[];
  readonly renewed: DebriefFacts['renewed'];
}

/** The score out of 100, in whole points. */
export function scoreOf(facts: ScoreFacts): DebriefFacts['score'] {
  const weight = facts.supported ? 1 : UNSUPPORTED;
  const parts: ScorePart[] = [
    part('verdict', VERDICT, facts.right ? weight : 0),
    part('method', METHOD, methodShare(facts.rules)),
    // Being cheap is no merit where it was luck: economy counts as far as the verdict does.
    part('economy', ECONOMY, facts.right ? weight * economyShare(facts) : 0),
    part('repair', REPAIR, facts.right ? repairShare(facts, weight) : 0),
  ];
  const minor = facts.safety.filter(({ grade }) => grade === 'minor').length;
  const serious = facts.safety.some(({ grade }) => grade === 'serious');
  const safetyDeduction = minor * MINOR_POINTS;
  const sum = parts.reduce((total, { points }) => total + points, 0) - safetyDeduction;
  const total = clamp(sum, 0, serious ? SERIOUS_CAP : 100);
  return { total, parts, safetyDeduction, cappedAt: serious ? SERIOUS_CAP : null };
}

function part(name: ScorePart['part'], of: number, share: number): ScorePart {
  return { part: name, points: Math.floor(of * share + 0.5), of };
}

/** Rules kept of those that had an occasion. */
function methodShare(rules: readonly RuleOutcome[]): number {
  const kept = rules.filter(({ outcome }) => outcome === 'kept').length;
  const missed = rules.filter(({ outcome }) => outcome === 'missed').length;
  return kept + missed === 0 ? 0 : kept / (kept + missed);
}

/** Half for minutes, full up to the level's allowance and nothing at three times it; half for money not wasted. */
function economyShare({ timeline, renewed }: ScoreFacts): number {
  const allowed = ALLOWANCES[timeline.scenario.level];
  const minutes = minutesOf(timeline);
  const wasted = renewed.reduce((sum, { needed, money }) => sum + (needed ? 0 : money), 0);
  const minutesShare = clamp(1 - (minutes - allowed.minutes) / (2 * allowed.minutes), 0, 1);
  const moneyShare = clamp(1 - (wasted - allowed.wastedMoney) / (2 * allowed.wastedMoney), 0, 1);
  return 0.5 * minutesShare + 0.5 * moneyShare;
}

export function minutesOf({ moments }: Timeline): number {
  const minutes = moments.reduce((sum, { action }) => sum + (action === null ? 0 : bookMinutes(action)), 0);
  return Math.floor(minutes * 10 + 0.5) / 10;
}

/**
 * A repair counts when it is proven: nothing without the decisive test passed on the renewed part; four fifths with it;
 * the last fifth for the bench put back. Where nothing is wrong, the repair is to leave every part in and close up; that
 * is worth as much as the verdict is supported, for whoever does nothing has done that too.
 */
function repairShare({ timeline, renewed }: ScoreFacts, weight: number): number {
  const { verdict } = timeline;
  const restored = isRestored(timeline) ? 0.2 : 0;
  if (verdict.item === 'nothing-wrong') {
    const boughtNothing = renewed.every(({ money }) => money === 0);
    return boughtNothing ? weight * (0.8 + restored) : 0;
  }
  return decisiveRetest(timeline, verdict.item) === null ? 0 : 0.8 + restored;
}
