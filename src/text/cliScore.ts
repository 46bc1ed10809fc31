import { unreachable } from '../base/assert.ts';
import type { DebriefFacts, RuleOutcome, ScorePart, ScoreReason } from '../training/score/DebriefFacts.ts';
import { clock, fixed, money } from './format.ts';
import { say } from './translate.ts';

/** The score on the command line: each part, and under it a line for each reason. */

export function partLines(part: ScorePart): readonly string[] {
  const head = `  ${say(`debrief.parts.${part.part}`).padEnd(16)}${say('debrief.of', { points: part.points, of: part.of })}`;
  // The rules have a list of their own.
  if (part.part === 'method') return [head];
  return [head, ...part.because.map((reason) => `    ${points(reason)}  ${reasonWords(reason)}`)];
}

const points = ({ points: got, of }: ScoreReason): string => `${fixed(got, 1)} of ${fixed(of, 0)}`.padEnd(11);

const percent = (share: number): string => `${fixed(share * 100, share > 0 && share < 0.01 ? 2 : 0)} %`;
const list = (numbers: readonly number[]): string => (numbers.length === 0 ? 'none' : numbers.join(', '));

function reasonWords(reason: ScoreReason): string {
  switch (reason.kind) {
    case 'right-item':
      return `${reason.right ? 'the right item' : 'not the right item'}; the evidence carries it to ${percent(reason.weight)}`;
    case 'right-mode':
      return reason.right
        ? 'what is wrong with it is right too'
        : 'what is wrong with it was not said, or is not it';
    case 'proof':
      return `${percent(reason.prior)} after the complaint, ${percent(reason.cited)} by the entries cited (${list(reason.entries)}), ${percent(reason.shown)} by everything shown${reason.leads ? '' : '; another item is likelier'}`;
    case 'board':
      return `marks carried: ${marked(reason.carried)}; not carried: ${marked(reason.uncarried)}; ${percent(reason.share)} of what was likely, full at ${percent(reason.fullAt)}`;
    case 'rule':
      return say(`rules.${reason.rule}.title`);
    case 'minutes':
      return `${fixed(reason.spent, 0)} book minutes, par ${fixed(reason.par, 0)}${limitWords(reason, (value) => fixed(value, 0))}`;
    case 'money':
      return `parts for ${money(reason.spent)}, par ${money(reason.par)}${limitWords(reason, money)}`;
    case 'retest':
    case 'refitted':
    case 'monitor-pass':
      return `${REPAIR_LINES[reason.kind]}${reason.entries.length > 0 ? `: entry ${list(reason.entries)}` : ''}`;
    case 'left-alone':
      return 'nothing was wrong, and no part was bought';
    default:
      return unreachable(reason);
  }
}

function limitWords(
  { spent, limit }: { readonly spent: number; readonly limit?: number },
  words: (value: number) => string,
): string {
  if (limit === undefined) return '';
  return spent > limit
    ? `, ${words(spent - limit)} over the limit of ${words(limit)}`
    : `, within the limit of ${words(limit)}`;
}

const REPAIR_LINES = {
  retest: 'the test that decides, passed on the fitted part',
  refitted: 'everything put back',
  'monitor-pass': 'the monitor run to a pass on the road',
} as const;

function marked(marks: readonly { readonly item: DebriefFacts['verdict']['named'] }[]): string {
  return marks.length === 0 ? 'none' : marks.map(({ item }) => say(`items.${item}`)).join(', ');
}

const OUTCOMES: Readonly<
  Record<RuleOutcome['outcome'], 'debrief.kept' | 'debrief.missed' | 'debrief.noOccasion'>
> = {
  kept: 'debrief.kept',
  missed: 'debrief.missed',
  'no-occasion': 'debrief.noOccasion',
};

export function ruleLine(outcome: RuleOutcome): string {
  const proof = proofOf(outcome);
  const title = say(`rules.${outcome.rule}.title`);
  const asked = outcome.asked ? ` ${say('debrief.askedByJob')}` : '';
  return `  ${say(OUTCOMES[outcome.outcome]).padEnd(12)}${title}${proof === '' ? '' : `: ${proof}`}${asked}`;
}

function proofOf({ outcome, entries, ticks, tooFew, items }: RuleOutcome): string {
  const times = firstTimes(ticks);
  if (outcome === 'no-occasion') return '';
  if (outcome === 'kept') {
    if (entries.length > 0) return say('debrief.keptBy', { entries: entries.join(', ') });
    return times === '' ? '' : say('debrief.keptAt', { times });
  }
  if (tooFew !== undefined)
    return say('debrief.tooFew', {
      count: tooFew.ticks.length,
      of: tooFew.of,
      times: firstTimes(tooFew.ticks),
    });
  if (items !== undefined) return items.map((item) => say(`items.${item}`)).join(', ');
  return times === '' ? say('debrief.gap') : say('debrief.missedAt', { times });
}

function firstTimes(ticks: RuleOutcome['ticks']): string {
  return [...new Set(ticks.map(clock))].slice(0, 3).join(', ');
}

/** Each mark of the board: whether what it cites carries it, and whether it agrees with what was wrong. */
export function boardLines({ boardMarks }: DebriefFacts): readonly string[] {
  if (boardMarks.length === 0) return ['  no marks'];
  return boardMarks.map(({ item, mark, cites, judgement, prior, cited, shown, agrees }) => {
    const chances = `${percent(prior)} before, ${percent(cited)} by entries ${list(cites)}, ${percent(shown)} by all`;
    return `  ${say(`items.${item}`)} ${mark}: ${JUDGEMENTS[judgement]} (${chances}); ${agrees ? 'so it was' : 'it was not so'}`;
  });
}

const JUDGEMENTS = {
  carried: 'carried by its entries',
  'too-early': 'too early, nothing shown had carried it yet',
  'wrong-test': 'by the wrong entries, others had shown it',
} as const;
