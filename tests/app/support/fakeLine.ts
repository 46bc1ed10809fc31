import type { EvidenceLine, OpenLine, Said } from '../../../src/app/evidence/EvidenceLine.ts';
import type { ToWorker } from '../../../src/app/evidence/messages.ts';

/** Lines that go to the test: what was told on each, and a way to answer on it. */
export class FakeLines {
  readonly opened: { readonly told: ToWorker[]; hung: boolean; say(message: Said): void }[] = [];

  readonly open: OpenLine = (hear): EvidenceLine => {
    const line = { told: [] as ToWorker[], hung: false, say: hear };
    this.opened.push(line);
    return {
      post: (message) => line.told.push(message),
      hangUp: () => {
        line.hung = true;
      },
    };
  };

  /** What was told on the newest line, kind by kind. */
  get kinds(): readonly string[] {
    return this.newest.told.map(({ kind }) => kind);
  }

  get newest() {
    const line = this.opened.at(-1);
    if (line === undefined) throw new Error('no line was opened');
    return line;
  }

  /** The number of the newest question. */
  get asked(): number {
    const told = [...this.newest.told].reverse();
    for (const message of told)
      if (message.kind === 'advise' || message.kind === 'debrief') return message.id;
    throw new Error('nothing was asked');
  }
}
