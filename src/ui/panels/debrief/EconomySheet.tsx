import { money, tenths } from '../../../text/format.ts';
import { say } from '../../../text/translate.ts';
import type { DebriefFacts } from '../../../training/score/DebriefFacts.ts';
import { ParBar } from './ParBar.tsx';
import { Sheet } from './Sheet.tsx';

/** Minutes and money against par, and the plan that par is made of. */
export function EconomySheet({ facts }: { readonly facts: DebriefFacts }) {
  const { cost, par, renewed } = facts;
  const limitOf = (kind: 'minutes' | 'money'): number | undefined =>
    facts.score.parts
      .flatMap(({ because }) => because)
      .flatMap((line) => (line.kind === kind && line.limit !== undefined ? [line.limit] : []))[0];
  return (
    <Sheet part="economy" class="debrief-wide">
      <h2>{say('economy.title')}</h2>
      <p class="quiet">{say('economy.lead')}</p>
      <div class="economy-bars">
        <ParBar
          name={say('economy.minutes')}
          yours={cost.bookMinutes}
          par={par.minutes}
          limit={limitOf('minutes')}
          words={tenths}
        />
        <ParBar
          name={say('economy.money')}
          yours={cost.money}
          par={par.money}
          limit={limitOf('money')}
          words={money}
        />
      </div>
      <p>
        {say('economy.untilVerdict', {
          minutes: tenths(cost.untilVerdict.bookMinutes),
          money: money(cost.untilVerdict.money),
        })}
      </p>
      {renewed.length === 0 && <p>{say('debrief.noParts')}</p>}
      <ul>
        {renewed.map((part) => (
          <li key={`${part.item}${part.tick}`}>
            {say(`items.${part.item}`)} · {money(part.money)} ·{' '}
            {say(part.needed ? 'debrief.needed' : 'debrief.notNeeded')}
          </li>
        ))}
      </ul>
      <details>
        <summary>{say('economy.planCount', { count: par.tests.length })}</summary>
        <ol>
          {par.tests.map((test, index) => (
            <li key={index}>{say(`standardTests.list.${test}.name`)}</li>
          ))}
        </ol>
        {!par.proven && <p>{say('economy.notProven')}</p>}
      </details>
    </Sheet>
  );
}
