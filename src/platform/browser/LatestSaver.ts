/**
 * Saves the newest state of one thing, one write at a time: while a write runs, later calls replace each other and the last of them is
 * written next. The write starts in the same task as `save` when none runs, so that it still starts while a page is being closed.
 */
export class LatestSaver<T> {
  private running: Promise<void> | null = null;
  private waiting: T | null = null;

  constructor(private readonly write: (state: T) => Promise<void>) {}

  save(state: T): void {
    if (this.running !== null) {
      this.waiting = state;
      return;
    }
    this.running = this.write(state)
      .catch(() => {})
      .then(() => {
        this.running = null;
        const next = this.waiting;
        this.waiting = null;
        if (next !== null) this.save(next);
      });
  }

  /** Settles when nothing is left to write. */
  async idle(): Promise<void> {
    while (this.running !== null) await this.running;
  }
}
