import { describeCode } from '../../text/describeCode.ts';
import { say } from '../../text/translate.ts';
import type { ScenarioCard } from '../../training/sitting/SittingView.ts';
import type { Desk } from './Desk.ts';
import { JobWords } from './JobWords.tsx';
import { OpeningHeading } from './OpeningHeading.tsx';

/** The work order as a page of its own, before the job is taken. */
export function WorkOrderScreen({ desk }: { readonly desk: Desk }) {
  return (
    <main class="order-page">
      <div class="sheet">
        <OpeningHeading>
          <JobWords of={desk.card.title} />
        </OpeningHeading>
        <WorkOrder card={desk.card} level="h2" />
        <p class="quiet">{say('order.defer')}</p>
        <button type="button" class="act big" onClick={() => desk.act({ kind: 'accept-job' })}>
          {say('order.accept')}
        </button>
      </div>
    </main>
  );
}

/** Complaint, history, codes and cautions. */
export function WorkOrder({ card, level }: { readonly card: ScenarioCard; readonly level: 'h2' | 'h3' }) {
  const H = level;
  const { number, vehicle, complaint, history, codes, cautions } = card.workOrder;
  return (
    <article class="order">
      <p class="order-number">{say('order.number', { number })}</p>
      <H>{say('order.vehicle')}</H>
      <p>
        <JobWords of={vehicle} />
      </p>
      <H>{say('order.complaint')}</H>
      <p>
        <JobWords of={complaint} />
      </p>
      <H>{say('order.history')}</H>
      <ul>
        {history.map((line) => (
          <li key={line}>
            <JobWords of={line} />
          </li>
        ))}
      </ul>
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
      <H>{say('order.cautions')}</H>
      <ul class="cautions">
        {cautions.map((line) => (
          <li key={line}>
            <JobWords of={line} />
          </li>
        ))}
      </ul>
    </article>
  );
}
