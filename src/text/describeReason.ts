import { unreachable } from '../base/assert.ts';
import { TICKS_PER_SECOND, type Tick } from '../base/ticks.ts';
import type {
  DebriefFacts,
  RepairGap,
  ScoreReason,
  VacuumPart,
  WeighedMark,
} from '../training/score/DebriefFacts.ts';
import { chance, entriesWords, listed } from './chance.ts';
import { clock, money, tenths } from './format.ts';
import { say } from './translate.ts';

type Of<Kind extends ScoreReason['kind']> = Extract<ScoreReason, { readonly kind: Kind }>;

/** Why a line of the score is worth what it is, in plain sentences. `verdict` says what was named. */
export function describeReason(reason: ScoreReason, verdict: DebriefFacts['verdict']): string {
  switch (reason.kind) {
    case 'right-item':
      return together(
        say(reason.right ? 'reasons.rightItem' : 'reasons.wrongItem'),
        reason.right && carriedWords(reason.weight),
      );
    case 'right-mode':
      if (reason.right) return say('reasons.rightMode');
      return say(verdict.mode === null ? 'reasons.noMode' : 'reasons.wrongMode');
    case 'proof':
      return proofWords(
        reason,
        verdict.named === 'nothing-wrong' ? say('reasons.thatNothing') : say(`theItems.${verdict.named}`),
      );
    case 'board':
      return boardWords(reason);
    case 'rule':
      return ruleWords(reason);
    case 'minutes':
    case 'money':
      return economyWords(reason);
    case 'retest':
      return repairWords(say('reasons.retest'), reason);
    case 'refitted':
      return together(
        repairWords(say('reasons.refitted'), reason),
        reason.gaps.length === 0 &&
          reason.points < reason.of &&
          say(verdict.named === 'nothing-wrong' ? 'reasons.economyWeight' : 'reasons.withTheRepair'),
      );
    case 'monitor-pass':
      return repairWords(say('reasons.monitorPass'), reason);
    case 'left-alone':
      return together(
        repairWords(say('reasons.leftAlone'), { ...reason, entries: [], ticks: [] }),
        reason.gaps.length === 0 && reason.weight < 1 && carriedWords(reason.weight),
      );
    default:
      return unreachable(reason);
  }
}

/** Times of the first few moments, whole seconds, each once. */
export function timesWords(ticks: readonly Tick[]): string {
  const seconds = [...new Set(ticks.map((tick) => Math.floor(tick / TICKS_PER_SECOND) * TICKS_PER_SECOND))];
  const shown = seconds.slice(0, MOST_TIMES).map(clock).join(', ');
  return seconds.length > MOST_TIMES ? `${shown} …` : shown;
}
const MOST_TIMES = 4;

function proofWords({ entries, prior, cited, shown, leads, weight }: Of<'proof'>, item: string): string {
  const before = chance(prior);
  const after = chance(cited);
  const gaps = { entries: entriesWords(entries), item, prior: before, cited: after };
  const turn = before === after ? 'Leave' : cited > prior ? 'Raise' : 'Lower';
  const onCited =
    entries.length === 0
      ? say('reasons.nothingCited', gaps)
      : say(`reasons.cited${turn}${entries.length === 1 ? 'One' : ''}`, gaps);
  const same = chance(shown) === after;
  return together(
    onCited,
    same ? say('reasons.shownBoth') : say('reasons.shownLeaves', { shown: chance(shown) }),
    !same && say('reasons.lowerCounts'),
    leads ? wayWords(weight) : say('reasons.notLeading'),
  );
}

function wayWords(weight: number): string {
  if (weight >= 1) return say('reasons.wayAll');
  return weight <= 0 ? say('reasons.wayNone') : say('reasons.wayPart', { weight: chance(weight) });
}

function carriedWords(weight: number): string {
  if (weight >= 1) return say('reasons.carriedAll');
  return weight <= 0 ? say('reasons.carriedNone') : say('reasons.carriedPart', { weight: chance(weight) });
}

function boardWords({ carried, uncarried, share, fullAt }: Of<'board'>): string {
  const items = (marks: readonly WeighedMark[]): string =>
    listed(marks.map(({ item }) => say(`theItems.${item}`)));
  return together(
    carried.length > 0 ? say('reasons.boardCarried', { items: items(carried) }) : say('reasons.boardNone'),
    uncarried.length > 0 && say('reasons.boardUncarried', { items: items(uncarried) }),
    carried.length > 0 &&
      say('reasons.boardShare', { share: chance(Math.max(0, share)), fullAt: chance(fullAt) }),
  );
}

function ruleWords({ rule, kept, entries, ticks }: Of<'rule'>): string {
  const title = say(`rules.${rule}.title`);
  if (kept && entries.length > 0) return say('reasons.ruleKeptBy', { title, entries: entriesWords(entries) });
  if (kept) return say('reasons.ruleKept', { title });
  if (ticks.length === 0) return say('reasons.ruleMissed', { title });
  return say('reasons.ruleMissedAt', { title, times: timesWords(ticks) });
}

function economyWords(reason: Of<'minutes' | 'money'>): string {
  const amount = (value: number): string => (reason.kind === 'money' ? money(value) : tenths(value));
  const { spent, par, right, weight, ticks, limit } = reason;
  const times = par > 0 ? spent / par : spent > 0 ? Number.POSITIVE_INFINITY : 0;
  return together(
    say(`reasons.${reason.kind}`, { spent: amount(spent), par: amount(par) }),
    limit !== undefined &&
      (spent > limit
        ? say('reasons.overLimit', { limit: amount(limit), over: amount(spent - limit) })
        : say('reasons.withinLimit', { limit: amount(limit) })),
    right &&
      spent <= (limit ?? spent) &&
      say(times <= 1.5 ? 'reasons.economyFull' : times < 3 ? 'reasons.economyPart' : 'reasons.economyNone'),
    ticks.length > 0 && say('reasons.economyTicks', { times: timesWords(ticks) }),
    !right ? say('reasons.economyWrong') : weight < 1 && say('reasons.economyWeight'),
  );
}

function repairWords(
  what: string,
  shown: {
    readonly entries: readonly number[];
    readonly ticks: readonly Tick[];
    readonly gaps: readonly RepairGap[];
    readonly vacuum?: readonly VacuumPart[];
  },
): string {
  if (shown.gaps.includes('verdict-wrong')) return say('reasons.afterRight', { what });
  if (shown.gaps.length > 0)
    return together(
      ...shown.gaps.map((gap) =>
        gap === 'vacuum-retest' && shown.vacuum !== undefined
          ? vacuumWords(what, shown.vacuum)
          : say('reasons.lacking', { what, gap: say(`repairGaps.${gap}`) }),
      ),
    );
  if (shown.entries.length > 0)
    return say('reasons.doneBy', { what, entries: entriesWords([...new Set(shown.entries)]) });
  if (shown.ticks.length > 0) return say('reasons.doneAt', { what, times: timesWords(shown.ticks) });
  return say('reasons.done', { what });
}

/** Each part of the vacuum test by itself, so that what was done is not called missing with what was not. */
function vacuumWords(what: string, parts: readonly VacuumPart[]): string {
  return together(
    say('reasons.vacuumParts', { what }),
    ...parts.map(({ part, tick, entries }) => {
      const name = say(`vacuumParts.${part}`);
      if (tick === null) return say('reasons.partMissing', { part: name });
      if (entries.length === 0) return say('reasons.partAt', { part: name, times: timesWords([tick]) });
      return say('reasons.partBy', { part: name, entries: entriesWords(entries) });
    }),
    say('reasons.vacuumOneTest'),
  );
}

function together(...sentences: readonly (string | false)[]): string {
  return sentences.filter((sentence) => sentence !== false).join(' ');
}
