import { describeCode } from '../../text/describeCode.ts';
import { capital, money } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { toolsAway } from '../../training/scenario/benchTools.ts';
import type { JobLimits } from '../../training/scenario/JobLimits.ts';
import { SCORE_PARTS } from '../../training/scenario/weights.ts';
import type { ScenarioCard } from '../../training/sitting/SittingView.ts';
import type { Desk } from './Desk.ts';
import { JobWords } from './JobWords.tsx';
import { keepUnits } from './keepUnits.ts';
import { OpeningHeading } from './OpeningHeading.tsx';
import type { Shop } from './Shop.ts';

/** The work order as a page of its own, before the job is taken. */
export function WorkOrderScreen({ desk, shop }: { readonly desk: Desk; readonly shop: Shop }) {
  const { card } = desk;
  return (
    <main class="order-page">
      <div class="sheet order-sheet">
        <header class="order-head">
          <div>
            <p class="order-kind">{say('order.title')}</p>
            <OpeningHeading>
              <JobWords of={card.title} />
            </OpeningHeading>
            <Way card={card} />
          </div>
          <OrderNumber card={card} />
        </header>
        <OrderBody card={card} level="h2" />
        <footer class="order-foot">
          <p class="quiet">{say('order.defer')}</p>
          <div class="order-keys">
            <button type="button" class="act big" onClick={() => desk.act({ kind: 'accept-job' })}>
              {say('order.accept')}
            </button>
            <button type="button" class="plain" onClick={() => shop.toBoard()}>
              {say('order.notNow')}
            </button>
          </div>
        </footer>
      </div>
    </main>
  );
}

/** How the job is sat, and about how long it takes. */
function Way({ card: { mode, minutes } }: { readonly card: ScenarioCard }) {
  if (mode === 'introduction') return null;
  return (
    <p class="order-way">
      <b>{say(`modes.${mode}`)}</b> · {say('board.minutes', { minutes })}
      <br />
      {say(`order.ways.${mode}`)}
    </p>
  );
}

interface WorkOrderProps {
  readonly card: ScenarioCard;
  readonly level: 'h2' | 'h3';
}

/** Complaint, history, codes and cautions: the paper to look things up on while the job is worked. */
export function WorkOrder({ card, level }: WorkOrderProps) {
  return (
    <div class="order-beside">
      <OrderNumber card={card} />
      <OrderBody card={card} level={level} />
    </div>
  );
}

function OrderNumber({ card }: { readonly card: ScenarioCard }) {
  return <p class="order-number">{say('order.number', { number: card.workOrder.number })}</p>;
}

/** Cautions first: they are read before anything is touched. */
function OrderBody({ card, level }: WorkOrderProps) {
  const H = level;
  const { vehicle, complaint, history, codes, cautions } = card.workOrder;
  return (
    <article class="order">
      <section class="order-cautions">
        <H>
          <CautionSign />
          {say('order.cautions')}
        </H>
        <WordList of={cautions} class="cautions" />
      </section>
      <div class="order-fields">
        <section>
          <H>{say('order.vehicle')}</H>
          <p>
            <JobWords of={vehicle} />
          </p>
        </section>
        <section>
          <H>{say('order.complaint')}</H>
          <p class="order-complaint">
            <JobWords of={complaint} />
          </p>
        </section>
        <section>
          <H>{say('order.history')}</H>
          {history.length === 0 ? <p>{say('order.noHistory')}</p> : <WordList of={history} />}
        </section>
        <section>
          <H>{say('order.codes')}</H>
          {codes.length === 0 ? (
            <p>{say('order.noCodes')}</p>
          ) : (
            <ul class="codes">
              {codes.map(({ code, status }) => (
                <li key={code}>
                  <b>{code}</b> <span class="quiet">{say(`codeStatus.${status}`)}</span>
                  <br />
                  {describeCode(code)}
                </li>
              ))}
            </ul>
          )}
        </section>
        <Terms card={card} level={level} />
      </div>
    </article>
  );
}

/** What this job asks for beyond the usual. */
function Terms({ card, level: H }: WorkOrderProps) {
  const { limits, tools, weights } = card;
  const { renewed } = card.workOrder;
  return (
    <>
      {renewed !== undefined && renewed.length > 0 && (
        <section>
          <H>{say('terms.renewed')}</H>
          <p>{capital(renewed.map((item) => say(`items.${item}`)).join(', '))}</p>
        </section>
      )}
      {tools !== undefined && (
        <section>
          <H>{say('terms.away')}</H>
          <p>
            {keepUnits(
              capital(
                toolsAway(tools)
                  .map((tool) => say(`benchTools.${tool}`))
                  .join(', '),
              ),
            )}
          </p>
        </section>
      )}
      {limits !== undefined && (
        <section>
          <H>{say('terms.limits')}</H>
          <p>{limitWords(limits)}</p>
        </section>
      )}
      {weights !== undefined && (
        <section>
          <H>{say('terms.weights')}</H>
          <p>
            {capital(
              SCORE_PARTS.map((part) => say(`terms.parts.${part}`, { points: weights[part] })).join(' · '),
            )}
          </p>
        </section>
      )}
    </>
  );
}

function limitWords({ minutes, dollars }: JobLimits): string {
  return [
    ...(minutes === undefined ? [] : [say('terms.limitMinutes', { minutes })]),
    ...(dollars === undefined ? [] : [say('terms.limitMoney', { money: money(dollars) })]),
  ].join(' · ');
}

/** Lines of the order, one below the other. */
function WordList(props: { readonly of: readonly string[]; readonly class?: string }) {
  return (
    <ul class={props.class}>
      {props.of.map((line) => (
        <li key={line}>
          <JobWords of={line} />
        </li>
      ))}
    </ul>
  );
}

/** The general warning sign; the word stands beside it. */
function CautionSign() {
  return (
    <svg class="caution-sign" viewBox="0 0 24 22" aria-hidden="true">
      <path d="M12 2 22.5 20.5 H1.5 Z" />
      <path d="M12 8.5 V13.5 M12 16.5 V17.5" />
    </svg>
  );
}
