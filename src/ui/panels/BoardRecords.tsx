import { date } from '../../text/format.ts';
import { jobSentence } from '../../text/jobWords.ts';
import { say } from '../../text/translate.ts';
import { isJob } from '../../training/scenario/modes.ts';
import type { Shop } from './Shop.ts';

/** Finished and put-away jobs, the newest first: to be read again and to be handed in. */
export function BoardRecords({ shop }: { readonly shop: Shop }) {
  const cards = [...shop.cards, ...(shop.fileJobs.value ?? []).map(({ card }) => card)];
  // Of an introduction there is nothing to read again and nothing to hand in.
  const introductions = cards.filter(({ mode }) => !isJob(mode)).map(({ id }) => id);
  const finished = shop.kept.value.filter(
    ({ state, scenario }) => state !== 'open' && !introductions.includes(scenario),
  );
  if (finished.length === 0) return null;
  const titles = new Map(cards.map((card) => [card.id, jobSentence(card.title).words]));
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
