import { chance } from '../../../text/chance.ts';
import { describeKnown } from '../../../text/describeKnown.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';

/** What the evidence left of the named item when the verdict was given, and what would have settled it. */
export function KnewSheet({ facts }: { readonly facts: DebriefFacts }) {
  const { verdict } = facts.evidence;
  return (
    <section class="sheet">
      <h2>{say('knew.title')}</h2>
      <p>{say('knew.lead', { item: say(`theItems.${verdict.named}`) })}</p>
      <dl class="three-chances">
        {(['prior', 'cited', 'shown'] as const).map((kind) => (
          <div key={kind}>
            <dt>{say(`knew.${kind}`)}</dt>
            <dd>
              <span class="part-bar" aria-hidden="true">
                <i style={{ width: `${verdict[kind] * 100}%` }} />
              </span>
              {chance(verdict[kind])}
            </dd>
          </div>
        ))}
      </dl>
      {describeKnown(facts.evidence).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
    </section>
  );
}
