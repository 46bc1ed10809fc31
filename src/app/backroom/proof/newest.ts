/** What a page asks of a worker that works on the newest task only: a later one takes the place of the one before. */
export interface NewestAsked<Task> {
  readonly kind: 'work';
  readonly id: number;
  readonly task: Task;
}

/** What such a worker says; `id` is the task's. taken: it is at work on it. */
export type NewestSaid<News> =
  | { readonly kind: 'taken'; readonly id: number }
  | { readonly kind: 'news'; readonly id: number; readonly news: News }
  | { readonly kind: 'done'; readonly id: number }
  | { readonly kind: 'stopped'; readonly id: number; readonly failure: Stop };

/** Why nothing more will come. no-tables, other-rig: of the kept tables. broke: something in the program did. */
export interface Stop {
  readonly code: 'no-tables' | 'other-rig' | 'broke';
  readonly detail: string;
}
