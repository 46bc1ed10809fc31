// The stages of the check as they are written down: one after another, and beside them one that waits with its output.

/** What a stage in the background writes: held back until nobody else writes, then passed on as it comes. */
export class HeldOutput {
  #held = [];
  #write;
  #free = false;

  constructor(write) {
    this.#write = write;
  }

  take(chunk) {
    if (this.#free) this.#write(chunk);
    else this.#held.push(chunk);
  }

  release() {
    this.#free = true;
    for (const chunk of this.#held.splice(0)) this.#write(chunk);
  }
}

/** Runs stages and keeps their counts. A stage is a name and a piece of work that gives its count; work in the background gets a place to write to. */
export class Stages {
  /** What each stage counted, in the order in which they ended. */
  counts = [];
  #write;

  constructor(write) {
    this.#write = write;
  }

  /** Runs a stage to its end. */
  async inTurn(name, work) {
    this.#write(`\n── ${name} ──\n`);
    return this.#close(name, await work());
  }

  /**
   * Starts a stage beside those that come next, and gives what waits for it. Until then only a line says that it runs.
   * An error of its work is thrown to whoever waits.
   */
  beside(name, work) {
    const output = new HeldOutput(this.#write);
    this.#write(`\n── ${name}: begun, goes on beside the next ──\n`);
    const done = work((chunk) => output.take(chunk));
    // It may end badly before anybody waits for it.
    done.catch(() => {});
    return async () => {
      this.#write(`\n── ${name} ──\n`);
      output.release();
      return this.#close(name, await done);
    };
  }

  #close(name, count) {
    for (const remark of count.remarks) this.#write(`${name}: ${remark}\n`);
    const word = count.failed === 0 ? 'good' : 'NOT GOOD';
    this.#write(`── ${name}: ${word} (${count.passed} good, ${count.failed} bad)\n`);
    this.counts.push(count);
    return count;
  }
}
