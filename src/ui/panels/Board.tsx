import type { ComponentChildren } from 'preact';
import { say } from '../../text/translate.ts';
import type { BoardCard } from '../../training/scenario/BoardCard.ts';
import { isJob } from '../../training/scenario/modes.ts';
import { BoardFilters } from './BoardFilters.tsx';
import { BoardRecords } from './BoardRecords.tsx';
import { boardFilter, fits } from './boardFilter.ts';
import { nextJob, placeInLevel, standingOf } from './boardOrder.ts';
import { FirstMinutes, isOffered } from './FirstMinutes.tsx';
import { JobCard } from './JobCard.tsx';
import { LevelSign } from './LevelSign.tsx';
import { FileJobs } from './laterBoard.ts';
import { OpenJobFiles } from './OpenJobFiles.tsx';
import type { KeptSitting, Shop } from './Shop.ts';

const LEVELS = [1, 2, 3, 4] as const;

/** The job board: what lies open first, then the jobs by level. */
export function Board({ shop }: { readonly shop: Shop }) {
  const kept = shop.kept.value;
  const jobs = shop.cards.filter(({ mode }) => isJob(mode));
  const filter = boardFilter.value;
  const open = jobs.filter((card) => standingOf(card, kept).state === 'open');
  const listed = jobs.filter((card) => fits(card, filter));
  const next = isOffered(shop) ? undefined : nextJob(jobs, kept);
  const shown = (cards: readonly BoardCard[]) =>
    cards.map((card) => (
      <JobCard
        key={card.id}
        card={card}
        kept={kept.filter(({ scenario }) => scenario === card.id)}
        place={placeInLevel(card, jobs)}
        next={card === next}
        shop={shop}
      />
    ));
  return (
    <main class="board">
      <header class="board-head">
        <div>
          <h1>{say('board.title')}</h1>
          <p class="lead">{say('board.lead')}</p>
        </div>
        <div class="board-head-side">
          {jobs.length > 0 && <Progress jobs={jobs} kept={kept} />}
          <a class="board-head-room" href="#/back-room">
            {say('board.forInstructors')}
          </a>
        </div>
      </header>
      <FirstMinutes shop={shop} />
      <FileJobs shop={shop} />
      {jobs.length === 0 && <p>{say('board.empty')}</p>}
      {open.length > 0 && (
        <Row id="open" title={say('board.onBench')} line={say('board.onBenchLine')}>
          {shown(open)}
        </Row>
      )}
      <div class="board-find">
        {jobs.length > 1 && <BoardFilters cards={jobs} shown={listed.length} />}
        <OpenJobFiles shop={shop} />
      </div>
      {LEVELS.map((level) => {
        const cards = listed.filter((card) => card.level === level && !open.includes(card));
        if (cards.length === 0) return null;
        return (
          <Row
            key={level}
            id={`level-${level}`}
            sign={<LevelSign level={level} />}
            title={say('board.level', { level })}
            line={say(`board.levels.${level}`)}
          >
            {shown(cards)}
          </Row>
        );
      })}
      <BoardRecords shop={shop} />
      <p class="back-room-way">
        <a href="#/back-room">{say('board.backRoom')}</a>
      </p>
    </main>
  );
}

interface RowProps {
  readonly id: string;
  readonly sign?: ComponentChildren;
  readonly title: string;
  readonly line: string;
  readonly children: ComponentChildren;
}

function Row({ id, sign, title, line, children }: RowProps) {
  return (
    <section class={`board-row board-row-${id}`} aria-labelledby={`board-${id}`}>
      <div class="board-row-head">
        <h2 id={`board-${id}`}>
          {sign}
          {title}
        </h2>
        <p class="quiet">{line}</p>
      </div>
      <ul class="cards">{children}</ul>
    </section>
  );
}

/** A mark for each job, level by level, filled for the ones that are done; the words say the same. */
function Progress({
  jobs,
  kept,
}: {
  readonly jobs: readonly BoardCard[];
  readonly kept: readonly KeptSitting[];
}) {
  const isDone = (card: BoardCard): boolean => standingOf(card, kept).attempts > 0;
  return (
    <div class="board-progress">
      <span class="tally" aria-hidden="true">
        {LEVELS.map((level) => (
          <span key={level}>
            {jobs
              .filter((card) => card.level === level)
              .map((card) => (
                <i key={card.id} class={isDone(card) ? 'tally-done' : ''} />
              ))}
          </span>
        ))}
      </span>
      <span>{say('board.progress', { done: jobs.filter(isDone).length, all: jobs.length })}</span>
    </div>
  );
}
