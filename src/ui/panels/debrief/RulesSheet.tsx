import { listed } from '../../../text/chance.ts';
import { timesWords } from '../../../text/describeReason.ts';
import { clock } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts, RuleOutcome } from '../../../training/score/DebriefFacts.ts';

/** The method rules that had their occasion, missed ones first, and the breaches of safety. */
export function RulesSheet({ facts }: { readonly facts: DebriefFacts }) {
  const due = facts.rules.filter((rule) => rule.outcome !== 'no-occasion');
  const ordered = [
    ...due.filter((rule) => rule.outcome === 'missed'),
    ...due.filter((rule) => rule.outcome === 'kept'),
  ];
  return (
    <section class="sheet debrief-method" id="debrief-method">
      <h2>{say('debrief.method')}</h2>
      <ul class="rules">
        {ordered.map((rule) => (
          <RuleLine key={rule.rule} outcome={rule} />
        ))}
      </ul>
      <h2>{say('debrief.safety')}</h2>
      {facts.safety.length === 0 && <p>✓ {say('debrief.noBreach')}</p>}
      <ul class="rules">
        {facts.safety.map((breach) => (
          <li key={`${breach.breach}${breach.tick}`} class="rule-missed">
            <b>
              ✗ {say('debrief.breachAt', { time: clock(breach.tick), grade: say(`grades.${breach.grade}`) })}
            </b>
            <span>{say(`safety.${breach.breach}`)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function RuleLine({ outcome }: { readonly outcome: RuleOutcome }) {
  const kept = outcome.outcome === 'kept';
  return (
    <li class={kept ? 'rule-kept' : 'rule-missed'}>
      <b>
        <span aria-hidden="true">{kept ? '✓' : '✗'}</span> {say(`rules.${outcome.rule}.title`)}
        <span class="tag">{say(kept ? 'debrief.kept' : 'debrief.missed')}</span>
      </b>
      <span>{proofOf(outcome)}</span>
      <span class="quiet">{say(`rules.${outcome.rule}.why`)}</span>
    </li>
  );
}

function proofOf({ outcome, entries, ticks, tooFew, items }: RuleOutcome): string {
  if (tooFew !== undefined)
    return say('debrief.tooFew', {
      count: tooFew.ticks.length,
      of: tooFew.of,
      times: timesWords(tooFew.ticks),
    });
  if (items !== undefined && outcome === 'missed')
    return say('debrief.ruleItems', { items: listed(items.map((item) => say(`items.${item}`))) });
  if (outcome === 'kept' && entries.length > 0) return say('debrief.keptBy', { entries: entries.join(', ') });
  if (ticks.length === 0) return outcome === 'kept' ? '' : say('debrief.gap');
  return say(outcome === 'kept' ? 'debrief.keptAt' : 'debrief.missedAt', { times: timesWords(ticks) });
}
