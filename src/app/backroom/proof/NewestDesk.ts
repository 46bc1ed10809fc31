import type { NewestAsked, NewestSaid, Stop } from './newest.ts';

/** Thrown by a task that cannot go on, with the reason. */
export class Stopped extends Error {
  constructor(readonly failure: Stop) {
    super(failure.code);
  }
}

export interface NewestDeskParts<Task, News> {
  /** Works a task step by step; what is given at each step is told at once. */
  steps(task: Task): AsyncIterable<News>;
  post(message: NewestSaid<News>): void;
  /** Settles after what has been told meanwhile. */
  rest(): Promise<void>;
}

/** The worker's own logic: works on the newest task, and after each step hears whether there is a newer one. */
export class NewestDesk<Task, News> {
  private newest = -1;

  constructor(private readonly parts: NewestDeskParts<Task, News>) {}

  async hear({ id, task }: NewestAsked<Task>): Promise<void> {
    const { post, rest } = this.parts;
    this.newest = id;
    post({ kind: 'taken', id });
    try {
      for await (const news of this.parts.steps(task)) {
        if (this.newest !== id) return;
        post({ kind: 'news', id, news });
        await rest();
        if (this.newest !== id) return;
      }
      post({ kind: 'done', id });
    } catch (error) {
      if (this.newest === id) post({ kind: 'stopped', id, failure: failureOf(error) });
    }
  }
}

function failureOf(error: unknown): Stop {
  if (error instanceof Stopped) return error.failure;
  return { code: 'broke', detail: error instanceof Error ? error.message : String(error) };
}
