import type { Signal } from '@preact/signals';
import type { Tick } from '../../../base/ticks.ts';
import { chance } from '../../../text/chance.ts';
import { describeKnown } from '../../../text/describeKnown.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import type { LogEntry } from '../../../training/sitting/LogEntry.ts';
import { ChancesChart } from './ChancesChart.tsx';

interface KnewSheetProps {
  readonly facts: DebriefFacts;
  readonly log: readonly LogEntry[];
  readonly moment: Signal<Tick>;
}

/** How the suspects stood over the log, and what that left when the verdict was given. */
export function KnewSheet({ facts, log, moment }: KnewSheetProps) {
  const { verdict } = facts.evidence;
  const known = describeKnown(facts.evidence);
  return (
    <section class="sheet debrief-knew">
      <div>
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
        {known.map((sentence) => (
          <p key={sentence}>{sentence}</p>
        ))}
      </div>
      <div>
        <h2>{say('stacked.title')}</h2>
        <p class="quiet">{say('stacked.lead')}</p>
        <ChancesChart facts={facts} log={log} moment={moment} />
      </div>
    </section>
  );
}
