import { describeReason } from '../../../text/describeReason.ts';
import { fixed, tenths } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts, ScorePart } from '../../../training/score/DebriefFacts.ts';
import { goToPart } from './debriefParts.ts';
import { Sheet } from './Sheet.tsx';

/** The five parts of the score, each with the lines that its points come from. */
export function ScoreSheet({ facts }: { readonly facts: DebriefFacts }) {
  const { score } = facts;
  return (
    <Sheet part="score" class="debrief-score">
      <div class="score-head">
        <h2>{say('debrief.score')}</h2>
        <p class="total">{say('debrief.total', { total: fixed(score.total, 0) })}</p>
      </div>
      {score.cappedAt !== null && <p class="warn">{say('debrief.capped', { points: score.cappedAt })}</p>}
      {score.safetyDeduction > 0 && (
        <p class="warn">{say('debrief.deduction', { points: fixed(score.safetyDeduction, 0) })}</p>
      )}
      <ul class="score-parts">
        {score.parts.map((part) => (
          <PartLine key={part.part} part={part} facts={facts} />
        ))}
      </ul>
    </Sheet>
  );
}

function PartLine({ part, facts }: { readonly part: ScorePart; readonly facts: DebriefFacts }) {
  const share = part.of === 0 ? 0 : Math.max(0, Math.min(1, part.points / part.of));
  return (
    <li>
      <h3>
        {say(`debrief.parts.${part.part}`)}
        <span class="number">{say('debrief.of', { points: fixed(part.points, 0), of: part.of })}</span>
      </h3>
      <div class="part-bar" aria-hidden="true">
        <i style={{ width: `${share * 100}%` }} />
      </div>
      {part.part === 'method' ? <RulesInShort part={part} /> : <Reasons part={part} facts={facts} />}
    </li>
  );
}

function Reasons({ part, facts }: { readonly part: ScorePart; readonly facts: DebriefFacts }) {
  return (
    <ul class="reasons">
      {part.because.map((reason) => (
        <li key={reason.kind}>
          <span>{describeReason(reason, facts.verdict)}</span>
          <span class="reason-points">
            {say('reasons.points', { points: tenths(reason.points), of: tenths(reason.of) })}
          </span>
        </li>
      ))}
    </ul>
  );
}

/** Rules are told one by one in their own sheet; here stands how many. */
function RulesInShort({ part }: { readonly part: ScorePart }) {
  const rules = part.because.filter((reason) => reason.kind === 'rule');
  const kept = rules.filter((reason) => reason.kind === 'rule' && reason.kept).length;
  const each = rules[0]?.of ?? 0;
  return (
    <p class="reasons">
      {say('rulesSummary', { kept, count: rules.length, each: tenths(each) })}{' '}
      <button type="button" class="plain" onClick={() => goToPart('method')}>
        {say('debrief.eachRule')}
      </button>
    </p>
  );
}
