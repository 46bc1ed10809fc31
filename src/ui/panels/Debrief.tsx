import { TICKS_PER_SECOND, type Tick } from '../../base/ticks.ts';
import { describeFault } from '../../text/describeCode.ts';
import { clock, fixed, money } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { DebriefFacts, RuleOutcome } from '../../training/score/DebriefFacts.ts';
import type { Desk } from './Desk.ts';
import { DriveReportView } from './DriveReportView.tsx';
import { LogTable } from './LogTable.tsx';
import type { Shop } from './Shop.ts';
import { TraceChart } from './TraceChart.tsx';

/** The end of a job: right or not, what the evidence was worth, and why. */
export function Debrief({
  desk,
  shop,
  facts,
}: {
  readonly desk: Desk;
  readonly shop: Shop;
  readonly facts: DebriefFacts;
}) {
  const { verdict, score } = facts;
  const { lastDrive, miles } = desk.observation.value;
  return (
    <main class="debrief">
      <h1>{say('debrief.title')}</h1>
      <div class="debrief-actions">
        <button type="button" class="act" onClick={() => shop.toBoard()}>
          {say('app.back')}
        </button>
        <button type="button" onClick={() => desk.exportRecord()}>
          {say('debrief.export')}
        </button>
      </div>
      <section class={verdict.right ? 'sheet outcome outcome-right' : 'sheet outcome outcome-wrong'}>
        <h2>
          <span aria-hidden="true">{verdict.right ? '✓ ' : '✗ '}</span>
          {say(verdict.right ? 'debrief.right' : 'debrief.wrong')}
        </h2>
        <p>{say('debrief.named', { item: say(`theItems.${verdict.named}`) })}</p>
        <h3>{say('debrief.truth')}</h3>
        {verdict.truth.map(({ item, fault }) => (
          <p key={`${item}${fault}`}>
            {fault === null
              ? describeFault(null)
              : say('debrief.truthItem', { fault: describeFault(fault), item: say(`items.${item}`) })}
          </p>
        ))}
        {facts.remark !== '' && (
          <>
            <h3>{say('debrief.remark')}</h3>
            <p class="remark">{facts.remark}</p>
          </>
        )}
      </section>
      <section class="sheet">
        <h2>{say('debrief.score')}</h2>
        <p class="total">{say('debrief.total', { total: fixed(score.total, 0) })}</p>
        <table class="ruled">
          <tbody>
            {score.parts.map((part) => (
              <tr key={part.part}>
                <th scope="row">{say(`debrief.parts.${part.part}`)}</th>
                <td class="quiet">
                  {say(`debrief.partReasons.${part.part}`)}
                  {part.part === 'repair' && <Lacks gaps={facts.repairGaps} />}
                </td>
                <td class="number">{say('debrief.of', { points: fixed(part.points, 0), of: part.of })}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {score.safetyDeduction > 0 && (
          <p class="warn">{say('debrief.deduction', { points: fixed(score.safetyDeduction, 0) })}</p>
        )}
        {score.cappedAt !== null && <p class="warn">{say('debrief.capped', { points: score.cappedAt })}</p>}
      </section>
      <section class="sheet debrief-trace">
        <h2>{say('debrief.trace')}</h2>
        <p class="quiet">{say('debrief.traceLead')}</p>
        <TraceChart facts={facts} />
      </section>
      <section class="sheet debrief-method">
        <h2>{say('debrief.method')}</h2>
        <ul class="rules">
          {facts.rules
            .filter((rule) => rule.outcome !== 'no-occasion')
            .map((rule) => (
              <RuleLine key={rule.rule} outcome={rule} />
            ))}
        </ul>
      </section>
      <section class="sheet">
        <h2>{say('debrief.safety')}</h2>
        {facts.safety.length === 0 && <p>✓ {say('debrief.noBreach')}</p>}
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
      </section>
      <section class="sheet">
        <h2>{say('debrief.cost')}</h2>
        {facts.renewed.length === 0 && <p>{say('debrief.noParts')}</p>}
        <ul>
          {facts.renewed.map((part) => (
            <li key={`${part.item}${part.tick}`}>
              {say(`items.${part.item}`)} · {money(part.money)} ·{' '}
              {say(part.needed ? 'debrief.needed' : 'debrief.notNeeded')}
            </li>
          ))}
        </ul>
        <p>
          {say('debrief.sum', { money: money(facts.cost.money), minutes: fixed(facts.cost.bookMinutes, 0) })}
        </p>
      </section>
      {lastDrive !== null && (
        <section class="sheet debrief-drive">
          <DriveReportView report={lastDrive} totalMiles={miles} level="h2" />
        </section>
      )}
      <section class="sheet debrief-log">
        <h2>{say('debrief.log')}</h2>
        <LogTable desk={desk} cites={verdict.cites} />
      </section>
    </main>
  );
}

/** What the repair lacked to count as proven. */
function Lacks({ gaps }: { readonly gaps: DebriefFacts['repairGaps'] }) {
  return gaps.map((gap) => (
    <span key={gap} class="repair-gap">
      {say('debrief.repairLacks')} {say(`repairGaps.${gap}`)}
    </span>
  ));
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

function proofOf({ outcome, entries, ticks, tooFew }: RuleOutcome): string {
  if (tooFew !== undefined)
    return say('debrief.tooFew', {
      count: tooFew.ticks.length,
      of: tooFew.of,
      times: times(tooFew.ticks),
    });
  if (outcome === 'kept' && entries.length > 0) return say('debrief.keptBy', { entries: entries.join(', ') });
  if (ticks.length === 0) return outcome === 'kept' ? '' : say('debrief.gap');
  return say(outcome === 'kept' ? 'debrief.keptAt' : 'debrief.missedAt', { times: times(ticks) });
}

const MOST_TIMES = 4;

function times(ticks: readonly Tick[]): string {
  const seconds = [...new Set(ticks.map((tick) => Math.floor(tick / TICKS_PER_SECOND) * TICKS_PER_SECOND))];
  const shown = seconds.slice(0, MOST_TIMES).map(clock).join(', ');
  return seconds.length > MOST_TIMES ? `${shown} …` : shown;
}
