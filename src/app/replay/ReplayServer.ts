import { openSealed } from '../../training/scenario/seal.ts';
import type { FromReplay, ToReplay } from './messages.ts';
import { WorldReplay } from './WorldReplay.ts';

/** The replay's side of the line: opens one record and answers for its moments. */
export class ReplayServer {
  private replay: WorldReplay | null = null;

  constructor(private readonly post: (message: FromReplay) => void) {}

  hear(message: ToReplay): void {
    try {
      this.answer(message);
    } catch (error) {
      this.replay = null;
      this.post({ kind: 'failed', detail: error instanceof Error ? error.message : String(error) });
    }
  }

  private answer(message: ToReplay): void {
    switch (message.kind) {
      case 'open': {
        const scenario = openSealed(message.sealed);
        if (!scenario.ok) return this.post({ kind: 'failed', detail: scenario.error });
        this.replay = new WorldReplay(scenario.value, message.record);
        return;
      }
      case 'at':
        if (this.replay === null) return;
        this.post({ kind: 'moment', id: message.id, moment: this.replay.at(message.tick) });
    }
  }
}
