import type { ComponentChildren } from 'preact';
import { capital, clock } from '../../text/format.ts';
import { jobSentence } from '../../text/jobWords.ts';
import { say } from '../../text/translate.ts';
import type { BoardCard } from '../../training/scenario/BoardCard.ts';
import { standingOf } from './boardOrder.ts';
import { afterFirstSentence, firstSentence } from './firstSentence.ts';
import { JobWords } from './JobWords.tsx';
import type { KeptSitting, Shop } from './Shop.ts';

interface JobCardProps {
  readonly card: BoardCard;
  readonly kept: readonly KeptSitting[];
  /** Its place in its level in the suggested order, counting from 1; left out of a job that has none. */
  readonly place?: number;
  /** Its button is the one that asks to be pressed. */
  readonly next: boolean;
  readonly shop: Shop;
  /** What else is to be said or done, below all. */
  readonly foot?: ComponentChildren;
}

/** A job as a ticket on the board: what it is, how long it takes, how it stands; what it teaches behind a fold. */
export function JobCard({ card, kept, place, next, shop, foot }: JobCardProps) {
  const open = kept.find((sitting) => sitting.state === 'open');
  const { attempts, best } = standingOf(card, kept);
  const done = attempts > 0;
  const { words: title } = jobSentence(card.title);
  return (
    <li class={open ? 'card card-open' : done ? 'card card-done' : 'card'}>
      <div class="card-head">
        <span class="card-number">{card.number}</span>
        <span class={`mode mode-${card.mode}`}>{say(`modes.${card.mode}`)}</span>
        <span class="card-minutes">{say('board.minutes', { minutes: card.minutes })}</span>
      </div>
      <h3>
        {place !== undefined && (
          <>
            <span class="visually-hidden">{say('board.place', { level: card.level, place })} </span>
            <span class="card-place" aria-hidden="true">
              {place}
            </span>
          </>
        )}
        <JobWords of={card.title} />
        {!open && next && <span class="tag">{say('board.isNext')}</span>}
        {open && <span class="tag">{say('board.isOpen')}</span>}
        {!open && done && <span class="tag">✓ {say('board.isDone')}</span>}
      </h3>
      {card.drawn && <p class="quiet card-drawn">{say('board.drawn')}</p>}
      <Summary card={card} title={title} />
      <div class="card-foot">
        <button type="button" class={next ? 'act' : ''} onClick={() => shop.toJob(card.id)}>
          {say(open ? 'board.resume' : 'board.take')}
          <span class="visually-hidden">: {title}</span>
        </button>
        {open && (
          <>
            <span class="quiet">{say('board.openSince', { elapsed: clock(open.tick) })}</span>
            <button
              type="button"
              class="plain"
              onClick={() => {
                if (window.confirm(say('board.startAnewAsk'))) void shop.startAnew(card.id);
              }}
            >
              {say('board.startAnew')}
            </button>
          </>
        )}
        {attempts > 0 && (
          <span class="quiet">
            {best !== null && `${capital(say('board.best', { score: best }))} · `}
            {say('board.attempts', { count: attempts })}
          </span>
        )}
      </div>
      {foot}
    </li>
  );
}

/** The first sentence of the summary; the others and the aims are there for who asks. */
function Summary({ card, title }: { readonly card: BoardCard; readonly title: string }) {
  const { words, lang } = jobSentence(card.summary);
  const rest = afterFirstSentence(words);
  return (
    <>
      <p class="card-summary" lang={lang}>
        {firstSentence(words)}
      </p>
      <details class="card-more">
        <summary>
          {say('board.more')}
          <span class="visually-hidden">: {title}</span>
        </summary>
        {rest !== '' && <p lang={lang}>{rest}</p>}
        <h4>{say('board.aims')}</h4>
        <ul>
          {card.aims.map((aim) => (
            <li key={aim}>
              <JobWords of={aim} />
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}
