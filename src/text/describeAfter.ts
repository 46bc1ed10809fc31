import type { DebriefFacts } from '../training/score/DebriefFacts.ts';
import { listed } from './chance.ts';
import { clock, money, tenths } from './format.ts';
import { say } from './translate.ts';

/** How the job went on after the verdict, sentence by sentence. */
export function describeAfter(facts: DebriefFacts): readonly string[] {
  const { verdict, marks, renewed, cost, trialFits } = facts;
  const given = marks.find(({ action }) => action.kind === 'give-verdict')?.tick ?? 0;
  const trials = trialFits.length > 0 ? [say('after.trialFits', { count: trialFits.length })] : [];
  const events = marks.flatMap(({ tick, action }): readonly string[] => {
    if (tick < given) return [];
    const time = clock(tick);
    if (action.kind === 'road-test') return [say('after.drive', { time, cycles: action.cycles })];
    if (action.kind !== 'renew') return [];
    const part = renewed.find((each) => each.item === action.item && each.tick === tick);
    return [
      say('after.renewed', {
        time,
        item: say(`theItems.${action.item}`),
        money: money(part?.money ?? 0),
        needed: say(part?.needed === true ? 'after.needed' : 'after.notNeeded'),
      }),
    ];
  });
  const sound = verdict.truth.every(({ fault }) => fault === null);
  if (events.length === 0 && (verdict.right || sound)) return [...trials, say('after.nothing')];
  const cured = verdict.truth.every(({ item }) => renewed.some((part) => part.item === item && part.needed));
  const minutes = cost.bookMinutes - cost.untilVerdict.bookMinutes;
  return [
    ...trials,
    say(verdict.right ? 'after.right' : 'after.wrong'),
    ...events,
    ...(sound ? [] : [say(cured ? 'after.trueRepair' : 'after.noTrueRepair')]),
    say('after.spent', {
      minutes: tenths(minutes),
      money: money(cost.money - cost.untilVerdict.money),
    }),
  ];
}

/** How often the coach was asked, by depth. */
export function describeCoaching(asked: DebriefFacts['coachAsked']): string {
  const depths = (['question', 'test', 'procedure'] as const).filter((depth) => asked[depth] > 0);
  if (depths.length === 0) return say('after.coachNever');
  return say('after.coachAsked', {
    list: listed(
      depths.map((depth) =>
        say('after.coachTimes', { depth: say(`coachDepths.${depth}`), count: asked[depth] }),
      ),
    ),
  });
}
