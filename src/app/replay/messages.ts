import type { Tick } from '../../base/ticks.ts';
import type { SealedScenario } from '../../training/scenario/seal.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import type { ReplayMoment } from '../../ui/panels/ReplayDesk.ts';

/** What the page tells the replay's worker. */
export type ToReplay =
  | { readonly kind: 'open'; readonly sealed: SealedScenario; readonly record: SittingRecord }
  | { readonly kind: 'at'; readonly id: number; readonly tick: Tick };

/** What the worker tells the page. After `failed` it says nothing more. */
export type FromReplay =
  | { readonly kind: 'moment'; readonly id: number; readonly moment: ReplayMoment }
  | { readonly kind: 'failed'; readonly detail: string };
