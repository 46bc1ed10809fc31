import type { RigId } from '../sim/devices/BenchSurface.ts';
import type { RigDefinition } from '../sim/rigs/RigDefinition.ts';
import { FIRST_RIG, rigNamed } from '../sim/rigs/rigs.ts';
import type { DrivesBefore } from '../sim/world/WorldPort.ts';
import { type Complaint, complaintsOf } from '../training/evidence/complaint.ts';
import type { Environment } from '../training/evidence/environment.ts';
import {
  type OutcomeTable,
  OutcomeTableMaker,
  type TableShare,
  testsForTable,
} from '../training/evidence/OutcomeTable.ts';
import { suspects } from '../training/evidence/suspects.ts';
import { startedAs } from './startedAs.ts';

/** The shop that every shipped job stands in. */
export const SHOP: Environment = { ambientC: 20, altitudeM: 200, fuelLevel: 0.5 };

/** The same shop, with a rig on its bench. */
export function shopOf({ id }: RigDefinition): Environment {
  return id === FIRST_RIG ? SHOP : { ...SHOP, rig: id };
}

/** Drives before the work order that complaints are kept for. */
export const KEPT_DRIVES: readonly DrivesBefore[] = [
  { cycles: 4, refuelled: false },
  { cycles: 8, refuelled: false },
  { cycles: 12, refuelled: false },
  { cycles: 8, refuelled: true },
];

/** What a share's process tells the one that started it. */
export type ShareMessage =
  | { readonly kind: 'tests-left'; readonly left: number }
  | { readonly kind: 'drives-left'; readonly cycles: number; readonly left: number }
  | {
      readonly kind: 'done';
      readonly table: OutcomeTable;
      /** By kept drives; suspects of other shares are null. */
      readonly complaints: readonly (readonly (Complaint | null)[])[];
    };

/** A share of the work for the tables of one rig. */
export type RigShare = TableShare & { readonly rig?: RigId };

const PIECES_BETWEEN_WORDS = 500;
const DRIVES_BETWEEN_WORDS = 25;

/** Does a share of the work, telling how far it is. */
export function workShare(share: RigShare, tell: (message: ShareMessage) => void): void {
  const rig = rigNamed(share.rig);
  const all = suspects(rig);
  const shop = shopOf(rig);
  const maker = new OutcomeTableMaker(all, testsForTable(rig.tests), shop, undefined, share);
  while (maker.left > 0) {
    maker.work(PIECES_BETWEEN_WORDS);
    tell({ kind: 'tests-left', left: maker.left });
  }
  const mine = all.filter((_, s) => s % share.of === share.part);
  const complaints = KEPT_DRIVES.map((drives) => {
    const done: Complaint[] = [];
    while (done.length < mine.length) {
      tell({ kind: 'drives-left', cycles: drives.cycles, left: mine.length - done.length });
      done.push(...complaintsOf(mine.slice(done.length, done.length + DRIVES_BETWEEN_WORDS), shop, drives));
    }
    return all.map((_, s) => (s % share.of === share.part ? (done[Math.floor(s / share.of)] ?? null) : null));
  });
  tell({ kind: 'done', table: maker.table, complaints });
}

// Started by `tables` as a process of its own: it says which share is meant.
if (startedAs(import.meta.url)) {
  process.once('message', (share: RigShare) => {
    // The result is large: the line is held open until it has gone.
    workShare(share, (message) => {
      process.send?.(message, undefined, undefined, () => {
        if (message.kind === 'done') process.disconnect();
      });
    });
  });
}
