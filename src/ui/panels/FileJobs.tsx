import { say } from '../../text/translate.ts';
import { JobCard } from './JobCard.tsx';
import type { Shop } from './Shop.ts';

/** The jobs that came from files, in a row of their own. */
export function FileJobs({ shop }: { readonly shop: Shop }) {
  const jobs = (shop.fileJobs.value ?? []).filter(({ putAway }) => !putAway);
  if (jobs.length === 0) return null;
  return (
    <section class="board-row board-row-files" aria-labelledby="board-files">
      <div class="board-row-head">
        <h2 id="board-files">{say('board.fromFiles')}</h2>
        <p class="quiet">{say('board.fromFilesLine')}</p>
      </div>
      <ul class="cards">
        {jobs.map((job) => (
          <JobCard
            key={job.key}
            card={job.card}
            kept={shop.kept.value.filter(({ scenario }) => scenario === job.key)}
            next={false}
            shop={shop}
            foot={
              <div class="card-file">
                <span>
                  {job.seat !== null && <strong>{say('board.seat', { seat: job.seat })} · </strong>}
                  {say('board.hash')} <code>{job.contentHash.slice(0, 12)}</code>
                </span>
                <button type="button" class="plain" onClick={() => shop.askToRemove(job)}>
                  {say('board.removeJob')}
                  <span class="visually-hidden">: {job.card.title}</span>
                </button>
              </div>
            }
          />
        ))}
      </ul>
    </section>
  );
}
