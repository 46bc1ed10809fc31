import type { DebriefFacts, JobCost } from '../training/score/DebriefFacts.ts';
import type { LogEntry } from '../training/sitting/LogEntry.ts';
import { boardLines, partLines, ruleLine } from './cliScore.ts';
import { describeEntry } from './describeEntry.ts';
import { clock, fixed, money } from './format.ts';
import { has, say } from './translate.ts';
import { inShownUnits } from './units.ts';

/** The debrief as lines of plain text. */
export function debriefLines(facts: DebriefFacts, log: readonly LogEntry[]): readonly string[] {
  const { verdict, score } = facts;
  return [
    say('debrief.title'),
    `  ${say(verdict.right ? 'debrief.right' : 'debrief.wrong')} ${say('debrief.named', { item: say(`theItems.${verdict.named}`) })}${modeWords(verdict)}`,
    `  ${say('debrief.truth')}: ${verdict.truth.map(truthWords).join(' ')}`,
    ...log
      .filter(({ id }) => verdict.cites.includes(id))
      .map((entry) => `  ${say('debrief.cited')} ${entryWords(entry)}`),
    '',
    'Suspect board',
    ...boardLines(facts),
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
    `  ${costWords(facts.cost)}`,
    `  until the verdict: ${costWords(facts.cost.untilVerdict)}`,
    `  par: ${costWords({ money: facts.par.money, bookMinutes: facts.par.minutes })} (${facts.par.tests.join(', ')})`,
    '',
    `${say('debrief.score')}: ${say('debrief.total', { total: score.total })}`,
    ...score.parts.flatMap(partLines),
    ...facts.repairGaps.map((gap) => `  ${say('debrief.repairLacks')} ${say(`repairGaps.${gap}`)}`),
    ...(score.safetyDeduction > 0
      ? [`  ${say('debrief.deduction', { points: score.safetyDeduction })}`]
      : []),
    ...(score.cappedAt === null ? [] : [`  ${say('debrief.capped', { points: score.cappedAt })}`]),
    '',
    say('debrief.remark'),
    `  ${inShownUnits(facts.remark.trim())}`,
  ];
}

const costWords = ({ money: dollars, bookMinutes }: JobCost): string =>
  say('debrief.sum', { money: money(dollars), minutes: fixed(bookMinutes, 0) });

/** One log entry in a line: its number, what was measured, the reading, what was heard, the note. */
export function entryWords(entry: LogEntry): string {
  const { what, conditions, value, heard } = describeEntry(entry, true);
  const note = entry.note === '' ? '' : ` "${entry.note}"`;
  return `[${entry.id}] ${what}: ${value}${heard === null ? '' : ` · ${heard}`} (${conditions})${note}`;
}

function modeWords({ named, mode }: DebriefFacts['verdict']): string {
  if (mode === null) return '';
  const key = `itemModes.${named}.${mode}`;
  return ` (${has(key) ? say(key) : mode})`;
}

function truthWords({ item, fault }: DebriefFacts['verdict']['truth'][number]): string {
  if (fault === null) return say('noFault');
  const key = `faults.${fault}`;
  return say('debrief.truthItem', {
    fault: has(key) ? say(key) : say('unnamedFault', { fault }),
    item: say(`items.${item}`),
  });
}
