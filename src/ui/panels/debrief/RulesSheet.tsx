import { entriesWords, listed } from '../../../text/chance.ts';
import { timesWords } from '../../../text/describeReason.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts, RuleOutcome } from '../../../training/score/DebriefFacts.ts';
import { Sheet } from './Sheet.tsx';

/** The method rules that had their occasion, missed ones first. */
export function RulesSheet({ facts }: { readonly facts: DebriefFacts }) {
  const due = facts.rules.filter((rule) => rule.outcome !== 'no-occasion');
  const ordered = [
    ...due.filter((rule) => rule.outcome === 'missed'),
    ...due.filter((rule) => rule.outcome === 'kept'),
  ];
  return (
    <Sheet part="method" class="debrief-wide debrief-method">
      <h2>{say('debrief.method')}</h2>
      <ul class="rules">
        {ordered.map((rule) => (
          <RuleLine key={rule.rule} outcome={rule} />
        ))}
      </ul>
    </Sheet>
  );
}

function RuleLine({ outcome }: { readonly outcome: RuleOutcome }) {
  const kept = outcome.outcome === 'kept';
  return (
    <li class={kept ? 'rule-kept' : 'rule-missed'}>
      <b>
        <span aria-hidden="true">{kept ? '✓' : '✗'}</span> {say(`rules.${outcome.rule}.title`)}{' '}
        <span class="tag">{say(kept ? 'debrief.kept' : 'debrief.missed')}</span>
      </b>
      <span>{proofOf(outcome)}</span>
      {outcome.asked && <span>{say('debrief.askedByJob')}</span>}
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
  if (outcome === 'kept' && entries.length > 0)
    return say('debrief.keptBy', { entries: entriesWords(entries) });
  if (ticks.length === 0) return outcome === 'kept' ? '' : say('debrief.gap');
  return say(outcome === 'kept' ? 'debrief.keptAt' : 'debrief.missedAt', { times: timesWords(ticks) });
}
