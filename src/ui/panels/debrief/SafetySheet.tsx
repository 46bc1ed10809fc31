import { clock } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';

/** Breaches of the safety rules, or that there was none. */
export function SafetySheet({ facts }: { readonly facts: DebriefFacts }) {
  return (
    <section class="sheet debrief-safety">
      <h2>{say('debrief.safety')}</h2>
      {facts.safety.length === 0 && <p>✓ {say('debrief.noBreach')}</p>}
      {facts.safety.length > 0 && (
        <ul class="rules">
          {facts.safety.map((breach) => (
            <li key={`${breach.breach}${breach.tick}`} class="rule-missed">
              <b>
                ✗{' '}
                {say('debrief.breachAt', { time: clock(breach.tick), grade: say(`grades.${breach.grade}`) })}
              </b>
              <span>{say(`safety.${breach.breach}`)}</span>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
