import type { CalibrationClaim } from '../training/evidence/calibration.ts';
import type { EvidenceTables } from '../training/evidence/EvidenceTables.ts';
import {
  calibrationByTable,
  type DrivenTruck,
  drivenTruck,
} from '../training/learners/calibrationByTable.ts';
import { calibrationLive } from '../training/learners/calibrationLive.ts';
import { ToolFactor } from '../training/learners/ToolFactor.ts';
import { keptTables } from './keptTables.ts';
import { startedAs } from './startedAs.ts';

/** How sittings are weighed: by the kept tables, or as the score does, by every suspect's own bench. */
export type CalibrationPath = 'by-table' | 'live';

/** Sittings of these numbers, `to` not among them. */
export interface CalibrationTask {
  readonly path: CalibrationPath;
  readonly from: number;
  readonly to: number;
}

export type CalibrationMessage =
  | { readonly kind: 'sat'; readonly claims: readonly CalibrationClaim[] }
  | { readonly kind: 'not-opened'; readonly line: string };

/** Sits what is asked for. Each sitting hangs on its own number alone, so that it matters to none who sits it. */
export function workCalibration({ path, from, to }: CalibrationTask): CalibrationMessage {
  const tables = keptTables();
  if (!tables.ok) return { kind: 'not-opened', line: tables.error };
  factor ??= new ToolFactor(tables.value);
  const claims: CalibrationClaim[] = [];
  for (let i = from; i < to; i++) {
    const seed = `held-out/${i}`;
    claims.push(
      path === 'live'
        ? calibrationLive(tables.value, factor, seed).live
        : calibrationByTable(tables.value, factor, seed, truckOf(tables.value, i)),
    );
  }
  return { kind: 'sat', claims };
}

/** So many hands work at one truck, one after the other and each from its own beginning: driving it is half of the cost. */
const HANDS_TO_A_TRUCK = 4;
let truck: DrivenTruck | null = null;

function truckOf(tables: EvidenceTables, sitting: number): DrivenTruck {
  const seed = `held-out-truck/${Math.floor(sitting / HANDS_TO_A_TRUCK)}`;
  if (truck?.seed !== seed) truck = drivenTruck(tables, seed);
  return truck;
}

/** What bad tools show is worked out as it is asked for, and kept for the next task. */
let factor: ToolFactor | null = null;

// Started by `calibration` as a process of its own: it is sent one task after the other, until the line is closed.
if (startedAs(import.meta.url)) {
  process.on('message', (task: CalibrationTask) => process.send?.(workCalibration(task)));
}
