import type { ReadonlySignal, Signal } from '@preact/signals';
import type { TextKey } from '../../text/translate.ts';
import type { BoardCard } from '../../training/scenario/BoardCard.ts';

/** A sitting that is kept on this device, as the job board lists it. */
export interface KeptSitting {
  readonly key: string;
  readonly scenario: string;
  readonly state: 'open' | 'finished' | 'put-away';
  readonly tick: number;
  readonly score: number | null;
  readonly savedAtMs: number;
}

/** A job that came from a file. */
export interface FileJob {
  /** Under which its sittings are kept; the id of its card as well. */
  readonly key: string;
  readonly card: BoardCard;
  readonly contentHash: string;
  readonly seat: number | null;
  /** Off the board, kept for the debriefs of its sittings. */
  readonly putAway: boolean;
}

/** What a user may set. */
export interface UserSettings {
  readonly theme: 'auto' | 'light' | 'dark' | 'contrast';
  readonly muted: boolean;
  readonly volume: number;
  readonly announce: 'off' | 'settled' | 'continuous';
  readonly letterShortcuts: boolean;
  readonly language: 'en' | 'es';
  /** The introduction: offered on the board until the learner says not now. */
  readonly firstMinutes: 'offered' | 'put-off';
  readonly units: 'us' | 'metric';
}

/** Something the user must be told, with what can be done about it. */
export interface Trouble {
  readonly key: TextKey;
  readonly detail?: string;
  readonly offers: readonly TroubleOffer[];
}

export interface TroubleOffer {
  readonly label: TextKey;
  run(): void;
}

/** What the screens around a sitting can see and do. */
export interface Shop {
  readonly cards: readonly BoardCard[];
  readonly kept: ReadonlySignal<readonly KeptSitting[]>;
  readonly settings: Signal<UserSettings>;
  readonly trouble: Signal<Trouble | null>;
  toBoard(): void;
  toJob(scenario: string): void;
  /** Puts the open sitting of a scenario away and begins a new one. */
  startAnew(scenario: string): Promise<void>;
  exportKept(key: string): void;
  /** Shows the debrief of a finished job that is kept. */
  toDebrief(kept: KeptSitting): void;
  /** Jobs that came from files; null until it is known which are kept on this device. */
  readonly fileJobs: ReadonlySignal<readonly FileJob[] | null>;
  /** Opens job files that were chosen or dropped. */
  openFiles(files: readonly File[]): void;
  /** Names of files that were given to the board while their reader is still fetched; no dialog tells of them yet. */
  readonly filesComing: ReadonlySignal<readonly string[]>;
  /** Asks what becomes of its sittings before a job of a file goes. */
  askToRemove(job: FileJob): void;
  /** Takes a job of a file off the board. Its finished sittings stay, or are exported and go with it. */
  removeFileJob(key: string, records: 'kept' | 'exported'): Promise<void>;
}
