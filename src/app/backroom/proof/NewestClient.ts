import type { BackRoomFailure } from '../../../ui/backroom/proof/ProofState.ts';
import type { LineEnd, WorkerLine } from '../../workers/livingWorker.ts';
import type { NewestAsked, NewestSaid } from './newest.ts';

export type NewestLine<Task> = WorkerLine<NewestAsked<Task>>;
export type OpenNewestLine<Task, News> = (
  hear: (message: NewestSaid<News> | LineEnd) => void,
) => NewestLine<Task>;

export interface NewestClientParts<Task, News> {
  readonly openLine: OpenNewestLine<Task, News>;
  /** A task is given to the worker when no newer one has come for so long. */
  readonly restMs: number;
  /**
   * A worker that has not laid down an older task for so long is ended, and another one is opened. Null: it is waited for, since it
   * keeps what is dear.
   */
  readonly patienceMs: number | null;
  news(news: News): void;
  done(): void;
  failed(failure: BackRoomFailure): void;
  /** Detail of a failure for which there was no word. */
  readonly gone: () => string;
}

/**
 * The page's end of a worker that works on the newest task only. A worker that dies without a word is replaced at once, once; after
 * that the failure is told, and `again` begins anew.
 */
export class NewestClient<Task, News> {
  private line: NewestLine<Task> | null = null;
  private newest: NewestAsked<Task> | null = null;
  private lastId = 0;
  /** Task that the worker is at, as far as is known: the last given, until it is done. */
  private atWork: number | null = null;
  private replaced = false;
  private resting: ReturnType<typeof setTimeout> | undefined;
  private patience: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly parts: NewestClientParts<Task, News>) {}

  /** Works on this from now on; what was asked before is of no interest any more. */
  ask(task: Task): void {
    this.newest = { kind: 'work', id: ++this.lastId, task };
    clearTimeout(this.resting);
    this.resting = setTimeout(() => this.give(), this.parts.restMs);
  }

  /** After a failure: asks once more what was asked last. */
  again(): void {
    this.replaced = false;
    this.give();
  }

  /** Nothing is of interest any more. */
  forget(): void {
    this.newest = null;
    this.lastId += 1;
    clearTimeout(this.resting);
  }

  end(): void {
    this.forget();
    this.hangUp();
  }

  private give(): void {
    const { newest } = this;
    if (newest === null) return;
    const busy = this.atWork !== null && this.line !== null;
    this.connect().post(newest);
    this.atWork = newest.id;
    clearTimeout(this.patience);
    if (!busy || this.parts.patienceMs === null) return;
    this.patience = setTimeout(() => {
      this.hangUp();
      this.give();
    }, this.parts.patienceMs);
  }

  private connect(): NewestLine<Task> {
    if (this.line !== null) return this.line;
    const line = this.parts.openLine((message) => {
      if (this.line === line) this.hear(message);
    });
    this.line = line;
    return line;
  }

  private hear(message: NewestSaid<News> | LineEnd): void {
    switch (message.kind) {
      case 'gone':
        return this.replace();
      case 'failed':
        return this.fail(message);
      case 'taken':
        if (message.id === this.atWork) clearTimeout(this.patience);
        return;
      case 'news':
        if (message.id === this.newest?.id) this.parts.news(message.news);
        return;
      case 'done':
        if (message.id === this.atWork) this.atWork = null;
        if (message.id === this.newest?.id) this.parts.done();
        return;
      case 'stopped':
        if (message.id === this.newest?.id) this.fail(message.failure);
        return;
    }
  }

  private replace(): void {
    this.hangUp();
    if (this.replaced) return this.fail({ code: 'broke', detail: this.parts.gone() });
    this.replaced = true;
    this.give();
  }

  private fail({ code, detail }: BackRoomFailure): void {
    this.hangUp();
    if (this.newest !== null) this.parts.failed({ code, detail });
  }

  private hangUp(): void {
    clearTimeout(this.patience);
    this.line?.hangUp();
    this.line = null;
    this.atWork = null;
  }
}
