import { clock, date } from '../../text/format.ts';
import { jobSentence } from '../../text/jobWords.ts';
import { say } from '../../text/translate.ts';
import type { BoardCard } from '../../training/scenario/BoardCard.ts';
import { JobWords } from './JobWords.tsx';
import type { KeptSitting, Shop } from './Shop.ts';

/** The list of jobs. */
export function Board({ shop }: { readonly shop: Shop }) {
  const kept = shop.kept.value;
  return (
    <main class="board">
      <h1>{say('board.title')}</h1>
      <p class="lead">{say('board.lead')}</p>
      {shop.cards.length === 0 && <p>{say('board.empty')}</p>}
      <ul class="cards">
        {shop.cards.map((card) => (
          <JobCard key={card.id} card={card} kept={kept.filter((k) => k.scenario === card.id)} shop={shop} />
        ))}
      </ul>
      <Finished shop={shop} />
    </main>
  );
}

interface JobCardProps {
  readonly card: BoardCard;
  readonly kept: readonly KeptSitting[];
  readonly shop: Shop;
}

function JobCard({ card, kept, shop }: JobCardProps) {
  const open = kept.find((sitting) => sitting.state === 'open');
  const best = Math.max(-1, ...kept.map((sitting) => sitting.score ?? -1));
  return (
    <li class="card">
      <div class="card-head">
        <span class={`mode mode-${card.mode}`}>{say(`modes.${card.mode}`)}</span>
        <span>{say('board.level', { level: card.level })}</span>
        <span>{say('board.minutes', { minutes: card.minutes })}</span>
      </div>
      <h2>
        <JobWords of={card.title} />
      </h2>
      <p>
        <JobWords of={card.summary} />
      </p>
      <h3>{say('board.aims')}</h3>
      <ul class="aims">
        {card.aims.map((aim) => (
          <li key={aim}>
            <JobWords of={aim} />
          </li>
        ))}
      </ul>
      <div class="card-foot">
        <button type="button" class="act" onClick={() => shop.toJob(card.id)}>
          {say(open ? 'board.resume' : 'board.take')}
          <span class="visually-hidden">: {jobSentence(card.title).words}</span>
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
        {!open && best >= 0 && <span class="quiet">{say('board.done', { score: best })}</span>}
      </div>
    </li>
  );
}

function Finished({ shop }: { readonly shop: Shop }) {
  const finished = shop.kept.value.filter((sitting) => sitting.state !== 'open');
  if (finished.length === 0) return null;
  const titles = new Map(shop.cards.map((card) => [card.id, jobSentence(card.title).words]));
  return (
    <section class="records" aria-labelledby="records-title">
      <h2 id="records-title">{say('board.records')}</h2>
      <ul>
        {[...finished]
          .sort((a, b) => b.savedAtMs - a.savedAtMs)
          .map((sitting) => (
            <li key={sitting.key}>
              <span>
                {sitting.state === 'finished'
                  ? say('board.recordOn', {
                      title: titles.get(sitting.scenario) ?? sitting.scenario,
                      score: sitting.score ?? '–',
                      date: date(sitting.savedAtMs),
                    })
                  : `${titles.get(sitting.scenario) ?? sitting.scenario} · ${say('board.unfinished')} · ${date(sitting.savedAtMs)}`}
              </span>
              {sitting.state === 'finished' && titles.has(sitting.scenario) && (
                <button type="button" class="plain" onClick={() => shop.toDebrief(sitting)}>
                  {say('board.readDebrief')}
                </button>
              )}
              <button type="button" class="plain" onClick={() => shop.exportKept(sitting.key)}>
                {say('board.exportRecord')}
              </button>
            </li>
          ))}
      </ul>
    </section>
  );
}
