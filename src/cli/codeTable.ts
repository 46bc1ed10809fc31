import type { RigId } from '../sim/devices/BenchSurface.ts';
import type { TroubleCode } from '../sim/devices/controller/troubleCodes.ts';
import { type ItemId, TOOL_ITEMS } from '../sim/devices/items.ts';
import { severityValue } from '../sim/faults/applyFault.ts';
import { PUMP_FAULTS } from '../sim/faults/catalogue.ts';
import type { FaultEntry } from '../sim/faults/Fault.ts';
import { FIRST_RIG } from '../sim/rigs/rigs.ts';
import type { DriveCycle } from '../sim/world/Observation.ts';
import { createWorld } from '../sim/world/World.ts';

export const DRIVES = 6;

/** Where on a fault's range a row stands; 'only' for a fault with one degree. */
export type Degree = 'only' | 'mild' | 'middle' | 'worst';
const DEGREES: Readonly<Record<Exclude<Degree, 'only'>, number>> = { mild: 0, middle: 0.5, worst: 1 };

/** What one fault at one severity does to a truck that is driven. */
export interface CodeRow {
  readonly fault: string;
  readonly item: ItemId;
  readonly degree: Degree;
  /** In SI; null for a fault with one degree. */
  readonly severity: { readonly value: number; readonly unit: string } | null;
  /** Codes stored after the drives, and those only seen once or not twice in a row. */
  readonly stored: readonly TroubleCode[];
  readonly seen: readonly TroubleCode[];
  /** Miles until the lamp was lit; null when it stayed out. */
  readonly lampMiles: number | null;
  /** How the cycles went in which the monitor could run or a circuit failed, each different course once. */
  readonly courses: readonly Pick<DriveCycle, 'outcome' | 'strokes' | 'tripSeconds' | 'holdSeconds'>[];
  /** No code in all the drives: only the bench finds it. */
  readonly benchOnly: boolean;
}

/** The whole table: every fault of a rig at each of its degrees, on a half-full truck at 20 °C by the sea. */
export function codeTable(faults: readonly FaultEntry[] = PUMP_FAULTS, rig: RigId = FIRST_RIG): CodeRow[] {
  return [...codeRows(faults, rig)];
}

export function* codeRows(faults: readonly FaultEntry[], rig: RigId): Generator<CodeRow> {
  for (const fault of faults) for (const degree of degreesOf(fault)) yield codeRow(fault, degree, rig);
}

/** Tools stay at home: that their faults leave no mark on a drive is shown by the worst of each. */
function degreesOf({ severity, item }: FaultEntry): readonly Degree[] {
  if (severity === null) return ['only'];
  return TOOL_ITEMS.includes(item) ? ['worst'] : ['mild', 'middle', 'worst'];
}

function codeRow(entry: FaultEntry, degree: Degree, rig: RigId): CodeRow {
  const share = degree === 'only' ? 0 : DEGREES[degree];
  const fault = { fault: entry.id, severity: share };
  const truck = { seed: 'table of codes', ambientC: 20, altitudeM: 0, fuelLevel: 0.5 };
  const world = createWorld({ ...truck, rig, faults: [fault] });
  world.apply({ kind: 'road-test', cycles: DRIVES });
  const cycles = world.observe().lastDrive?.cycles ?? [];
  world.apply({ kind: 'set-key', position: 'on' });
  const stored = world.observe().reader.codes.filter(({ status }) => status === 'stored');
  const codes = stored.map(({ code }) => code);
  const seen = [...new Set(cycles.flatMap((cycle) => cycle.codes))].sort();
  return {
    fault: entry.id,
    item: entry.item,
    degree,
    severity:
      entry.severity === null ? null : { value: severityValue(entry, share), unit: entry.severity.unit },
    stored: codes,
    seen: seen.filter((code) => !codes.includes(code)),
    lampMiles: milesToLamp(cycles),
    courses: coursesOf(cycles),
    benchOnly: seen.length === 0,
  };
}

function milesToLamp(cycles: readonly DriveCycle[]): number | null {
  const lit = cycles.findIndex(({ lamp }) => lamp);
  if (lit < 0) return null;
  return cycles.slice(0, lit + 1).reduce((sum, { miles }) => sum + miles, 0);
}

function coursesOf(cycles: readonly DriveCycle[]): CodeRow['courses'] {
  const different = new Map<string, CodeRow['courses'][number]>();
  for (const { outcome, strokes, tripSeconds, holdSeconds } of cycles) {
    if (outcome === 'not-run') continue;
    const course = { outcome, strokes, tripSeconds, holdSeconds };
    different.set(JSON.stringify(course), course);
  }
  return [...different.values()];
}
