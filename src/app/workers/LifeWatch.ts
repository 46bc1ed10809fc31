import type { LifeSign } from './life.ts';

export interface LifeWatchParts {
  /** Of the worker, and of the lock that it holds. */
  readonly name: string;
  /** A browser gives locks to secure addresses only. */
  readonly locks: Pick<LockManager, 'request'> | undefined;
  /** Asks the worker whether it lives. */
  ask(): void;
  died(): void;
}

/** How often a worker that cannot be waited for is asked. */
export const ASK_MS = 10_000;
/**
 * It is dead when it was silent at so many looks one after the other: it may be at a long piece of work. Looks are counted and not
 * time, of which a device that was asleep has any amount.
 */
export const MOST_SILENT = 6;
/** Before its first word its program is still being fetched. */
export const MOST_SILENT_AT_FIRST = 18;

/**
 * Notices that a worker died without a word, as one does that the system has taken the memory from: the page waits for the lock
 * that the worker holds, or else asks it now and then.
 */
export class LifeWatch {
  private readonly waiting = new AbortController();
  private readonly asking: ReturnType<typeof setInterval>;
  private silent = 0;
  private mostSilent = MOST_SILENT_AT_FIRST;

  constructor(private readonly parts: LifeWatchParts) {
    this.asking = setInterval(() => this.look(), ASK_MS);
  }

  /** The worker said something, of its life or of its work. */
  heard(sign: LifeSign | null): void {
    this.silent = 0;
    this.mostSilent = MOST_SILENT;
    if (sign?.holdsLock && this.parts.locks !== undefined) this.waitFor(this.parts.locks);
  }

  end(): void {
    clearInterval(this.asking);
    this.waiting.abort();
  }

  private waitFor(locks: Pick<LockManager, 'request'>): void {
    clearInterval(this.asking);
    locks
      .request(this.parts.name, { signal: this.waiting.signal }, () => this.noteDeath())
      // The watch ended first.
      .catch(() => {});
  }

  private look(): void {
    if (this.silent >= this.mostSilent) return this.noteDeath();
    this.silent += 1;
    this.parts.ask();
  }

  private noteDeath(): void {
    if (this.waiting.signal.aborted) return;
    this.end();
    this.parts.died();
  }
}
