import { jobSentence } from '../../text/jobWords.ts';
import { say } from '../../text/translate.ts';
import type { ScenarioCard } from '../../training/sitting/SittingView.ts';
import type { Desk } from './Desk.ts';
import { JobWords } from './JobWords.tsx';
import { OpeningHeading } from './OpeningHeading.tsx';
import type { Shop } from './Shop.ts';

/** The page before an introduction: what it teaches, and the cautions that stand on every work order. */
export function IntroductionStart({ desk, shop }: { readonly desk: Desk; readonly shop: Shop }) {
  const { card } = desk;
  return (
    <main class="order-page">
      <div class="sheet introduction-start">
        <OpeningHeading>
          <JobWords of={card.title} />
        </OpeningHeading>
        <p class="lead">
          <JobWords of={card.summary} />
        </p>
        <h2>{say('introduction.learn')}</h2>
        <Aims card={card} />
        <h2>{say('introduction.before')}</h2>
        <Cautions card={card} />
        <div class="introduction-foot">
          <button type="button" class="act big" onClick={() => desk.act({ kind: 'accept-job' })}>
            {say('introduction.begin')}
          </button>
          <button type="button" class="plain" onClick={() => shop.toBoard()}>
            {say('introduction.notNow')}
          </button>
        </div>
        <p class="quiet">{say('order.defer')}</p>
      </div>
    </main>
  );
}

/** The cautions alone: what the work order's tab holds where nothing is ordered. */
export function Cautions({ card }: { readonly card: ScenarioCard }) {
  return (
    <ul class="cautions">
      {card.workOrder.cautions.map((line) => (
        <li key={line}>
          <JobWords of={line} />
        </li>
      ))}
    </ul>
  );
}

interface EndProps {
  readonly desk: Desk;
  readonly shop: Shop;
  readonly level: 'h1' | 'h3';
  /** Begins it anew, where it is closed. */
  readonly again?: () => void;
}

/** What a newcomer can do now, and the ways on. It closes the introduction as one of them is taken. */
export function IntroductionEnd({ desk, shop, level, again }: EndProps) {
  const { card, lastWords } = desk;
  const through = desk.step.value >= card.steps.length && desk.passedOver.value.length === 0;
  const first = shop.cards.find(({ mode }) => mode === 'walkthrough');
  const title = say(through ? 'introduction.canNow' : 'introduction.canNowSome');
  return (
    <section class="introduction-end">
      {level === 'h1' ? <OpeningHeading>{title}</OpeningHeading> : <h3>{title}</h3>}
      <Aims card={card} />
      {through && lastWords !== null && (
        <p>
          <JobWords of={lastWords} />
        </p>
      )}
      <div class="introduction-foot">
        {first !== undefined && (
          <button type="button" class="act" onClick={() => leave(desk, () => shop.toJob(first.id))}>
            {say('introduction.firstJob', { title: jobSentence(first.title).words })}
          </button>
        )}
        <button type="button" onClick={() => leave(desk, () => shop.toBoard())}>
          {say('introduction.board')}
        </button>
        {again !== undefined && (
          <button type="button" class="plain" onClick={again}>
            {say('introduction.again')}
          </button>
        )}
      </div>
    </section>
  );
}

interface ClosedProps {
  /** Of the job on the board. */
  readonly id: string;
  readonly desk: Desk;
  readonly shop: Shop;
}

/** An introduction that is closed, come upon again. */
export function IntroductionClosed({ id, desk, shop }: ClosedProps) {
  const again = (): void => {
    void shop.startAnew(id).then(() => location.reload());
  };
  return (
    <main class="order-page">
      <div class="sheet">
        <IntroductionEnd desk={desk} shop={shop} level="h1" again={again} />
      </div>
    </main>
  );
}

/** Closes the introduction where it is still open, and goes on. */
export function leave(desk: Desk, on: () => void): void {
  if (desk.phase.peek() !== 'closed') desk.act({ kind: 'close-job' });
  on();
}

function Aims({ card }: { readonly card: ScenarioCard }) {
  return (
    <ul class="aims">
      {card.aims.map((aim) => (
        <li key={aim}>
          <JobWords of={aim} />
        </li>
      ))}
    </ul>
  );
}
