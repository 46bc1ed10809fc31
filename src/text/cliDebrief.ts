import type { DebriefFacts, RuleOutcome } from '../training/score/DebriefFacts.ts';
import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { describeEntry } from './describeEntry.ts';
import { clock, money } from './format.ts';
import { has, say } from './translate.ts';

/** The debrief as lines of plain text. */
export function debriefLines(facts: DebriefFacts, log: readonly LogEntry[]): readonly string[] {
  const { verdict, score } = facts;
  return [
    say('debrief.title'),
    `  ${say(verdict.right ? 'debrief.right' : 'debrief.wrong')} ${say('debrief.named', { item: say(`theItems.${verdict.named}`) })}`,
    `  ${say('debrief.truth')}: ${verdict.truth.map(truthWords).join(' ')}`,
    ...log
      .filter(({ id }) => verdict.cites.includes(id))
      .map((entry) => `  ${say('debrief.cited')} ${entryWords(entry)}`),
    '',
    say('debrief.method'),
    ...facts.rules.map(ruleLine),
    '',
    say('debrief.safety'),
    ...(facts.safety.length === 0
      ? [`  ${say('debrief.noBreach')}`]
      : facts.safety.map(
          ({ breach, grade, tick }) =>
            `  ${clock(tick)}  ${say(`grades.${grade}`)}: ${say(`safety.${breach}`)}`,
        )),
    '',
    say('debrief.cost'),
    `  ${say('debrief.sum', { money: money(facts.cost.money), minutes: facts.cost.bookMinutes })}`,
    '',
    `${say('debrief.score')}: ${say('debrief.total', { total: score.total })}`,
    ...score.parts.map(
      ({ part, points, of }) =>
        `  ${say(`debrief.parts.${part}`).padEnd(16)}${say('debrief.of', { points, of })}`,
    ),
    ...facts.repairGaps.map((gap) => `  ${say('debrief.repairLacks')} ${say(`repairGaps.${gap}`)}`),
    ...(score.safetyDeduction > 0
      ? [`  ${say('debrief.deduction', { points: score.safetyDeduction })}`]
      : []),
    ...(score.cappedAt === null ? [] : [`  ${say('debrief.capped', { points: score.cappedAt })}`]),
    '',
    say('debrief.remark'),
    `  ${facts.remark.trim()}`,
  ];
}

/** One log entry in a line: its number, what was measured, the reading, what was heard, the note. */
export function entryWords(entry: LogEntry): string {
  const { what, conditions, value, heard } = describeEntry(entry, true);
  const note = entry.note === '' ? '' : ` "${entry.note}"`;
  return `[${entry.id}] ${what}: ${value}${heard === null ? '' : ` · ${heard}`} (${conditions})${note}`;
}

function truthWords({ item, fault }: DebriefFacts['verdict']['truth'][number]): string {
  if (fault === null) return say('noFault');
  const key = `faults.${fault}`;
  return say('debrief.truthItem', {
    fault: has(key) ? say(key) : say('unnamedFault', { fault }),
    item: say(`items.${item}`),
  });
}

const MARKS: Readonly<
  Record<RuleOutcome['outcome'], 'debrief.kept' | 'debrief.missed' | 'debrief.noOccasion'>
> = {
  kept: 'debrief.kept',
  missed: 'debrief.missed',
  'no-occasion': 'debrief.noOccasion',
};

function firstTimes(ticks: RuleOutcome['ticks']): string {
  return [...new Set(ticks.map(clock))].slice(0, 3).join(', ');
}

function ruleLine({ rule, outcome, entries, ticks, tooFew }: RuleOutcome): string {
  const times = firstTimes(ticks);
  const proof =
    outcome === 'kept'
      ? entries.length > 0
        ? say('debrief.keptBy', { entries: entries.join(', ') })
        : times === ''
          ? ''
          : say('debrief.keptAt', { times })
      : outcome === 'missed'
        ? tooFew !== undefined
          ? say('debrief.tooFew', {
              count: tooFew.ticks.length,
              of: tooFew.of,
              times: firstTimes(tooFew.ticks),
            })
          : times === ''
            ? say('debrief.gap')
            : say('debrief.missedAt', { times })
        : '';
  return `  ${say(MARKS[outcome]).padEnd(12)}${say(`rules.${rule}.title`)}${proof === '' ? '' : `: ${proof}`}`;
}
