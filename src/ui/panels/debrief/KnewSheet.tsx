import { chance, entriesWords } from '../../../text/chance.ts';
import { describeKnown } from '../../../text/describeKnown.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import { Sheet } from './Sheet.tsx';

/** A weight from here on is a proof as far as whole per cents can tell. */
const ALL_THE_WAY = 0.995;
/** Less than this is no support worth the word. */
const NO_SUPPORT = 0.05;

/** The first thing a debrief says: whether the evidence supported the verdict, and by how much. */
export function KnewSheet({ facts }: { readonly facts: DebriefFacts }) {
  const { verdict } = facts.evidence;
  const { cites } = facts.verdict;
  return (
    <Sheet part="knew" class="debrief-wide knew">
      <div class="knew-answer">
        <h2>{say('knew.question')}</h2>
        <p class="total">{say(`knew.answers.${answerOf(verdict.weight)}`)}</p>
        <p>
          {cites.length === 0
            ? say('knew.byNothing')
            : say('knew.by', {
                entries: entriesWords(cites),
                item: say(`theItems.${verdict.named}`),
                prior: chance(verdict.prior),
                cited: chance(verdict.cited),
              })}
        </p>
      </div>
      <div class="knew-chances">
        <h3>{say('knew.title')}</h3>
        <p class="quiet">{say('knew.lead', { item: say(`theItems.${verdict.named}`) })}</p>
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
      </div>
      <div class="knew-words">
        {describeKnown(facts.evidence).map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
    </Sheet>
  );
}

function answerOf(weight: number): 'yes' | 'part' | 'no' {
  if (weight >= ALL_THE_WAY) return 'yes';
  return weight < NO_SUPPORT ? 'no' : 'part';
}
