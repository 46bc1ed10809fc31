import { useEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import { isJob } from '../../training/scenario/modes.ts';
import { BenchStill } from './BenchStill.tsx';
import { JobWords } from './JobWords.tsx';
import type { Shop } from './Shop.ts';

/** On the first visit, until the learner says not now. */
export function isOffered(shop: Shop): boolean {
  const there = shop.cards.some(({ mode }) => !isJob(mode));
  return there && shop.settings.value.firstMinutes === 'offered' && shop.kept.value.length === 0;
}

/** Offers the introduction: as a card above the jobs on the first visit, later in a small line. Never more than an offer. */
export function FirstMinutes({ shop }: { readonly shop: Shop }) {
  const card = shop.cards.find(({ mode }) => !isJob(mode));
  const kept = shop.kept.value;
  const later = useRef<HTMLButtonElement>(null);
  const putOff = useRef(false);
  const first = isOffered(shop);
  // The button that was pressed is gone: the focus goes on to what stands in its place.
  useEffect(() => {
    if (putOff.current && !first) later.current?.focus();
    putOff.current = false;
  }, [first]);
  if (card === undefined) return null;
  if (!first) {
    const open = kept.some(({ key, state }) => key === card.id && state === 'open');
    return (
      <p class="first-minutes-line">
        {say('introduction.later')}{' '}
        <button ref={later} type="button" class="plain" onClick={() => shop.toJob(card.id)}>
          {say(open ? 'introduction.resume' : 'introduction.open')}
        </button>
      </p>
    );
  }
  return (
    <section class="first-minutes" aria-labelledby="first-minutes-title">
      <div class="first-minutes-card">
        <div class="first-minutes-words">
          <h2 id="first-minutes-title">{say('introduction.offer')}</h2>
          <p>
            <JobWords of={card.summary} />
          </p>
          <div class="first-minutes-foot">
            <button type="button" class="act big" onClick={() => shop.toJob(card.id)}>
              {say('introduction.begin')}
            </button>
            <button
              type="button"
              class="plain"
              onClick={() => {
                putOff.current = true;
                shop.settings.value = { ...shop.settings.peek(), firstMinutes: 'put-off' };
              }}
            >
              {say('introduction.notNow')}
            </button>
          </div>
        </div>
        <BenchStill />
      </div>
    </section>
  );
}
