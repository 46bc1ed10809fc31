import { RIG_IDS } from '../../sim/devices/BenchSurface.ts';
import { ITEMS } from '../../sim/devices/items.ts';
import { faultById } from '../../sim/faults/catalogue.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { DraftText } from '../../training/draft/DraftText.ts';
import type { ReadBench } from '../../training/proof/FaultReadings.ts';

/**
 * The bench of a draft, for the readings beside its faults: they are shown as soon as the faults can be read, whatever else of the
 * file is still to be written.
 */
export function readBenchOf(form: DraftText): ReadBench | null {
  const faults = form.plainAt(['faults']);
  if (!Array.isArray(faults)) return faults === undefined || faults === null ? benchOf(form, []) : null;
  const known = faults.map(faultOf);
  return known.every((each) => each !== null) ? benchOf(form, known) : null;
}

function benchOf(form: DraftText, faults: readonly FaultChoice[]): ReadBench {
  const seed = form.plainAt(['seed']);
  const rig = RIG_IDS.find((id) => id === form.plainAt(['rig']));
  const renewed = form.plainAt(['work-order', 'renewed']);
  return {
    environment: {
      ...(rig === undefined ? {} : { rig }),
      ambientC: figure(form.plainAt(['bench', 'ambient-celsius']), -30, 50, 20),
      altitudeM: figure(form.plainAt(['bench', 'altitude-metres']), -400, 4500, 200),
      fuelLevel: figure(form.plainAt(['bench', 'fuel-percent']), 0, 100, 50) / 100,
    },
    seed: typeof seed === 'string' && seed !== '' ? seed : 'draft',
    ...(Array.isArray(renewed) ? { renewedBefore: ITEMS.filter((item) => renewed.includes(item)) } : {}),
    faults,
  };
}

function figure(value: unknown, lowest: number, highest: number, otherwise: number): number {
  return typeof value === 'number' && value >= lowest && value <= highest ? value : otherwise;
}

function faultOf(entry: unknown): FaultChoice | null {
  if (typeof entry !== 'object' || entry === null) return null;
  const { fault, severity, 'when-moved': whenMoved, root } = entry as Readonly<Record<string, unknown>>;
  const known = typeof fault === 'string' ? faultById(fault) : undefined;
  if (known === undefined || known.weight === 0) return null;
  return {
    fault: known.id,
    severity: known.severity === null ? 0 : figure(severity, 0, 1, 0),
    ...(whenMoved === true && known.intermittent === 'when-moved' ? { whenMoved: true } : {}),
    ...(typeof root === 'string' ? { root } : {}),
  };
}
