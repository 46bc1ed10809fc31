import type { RigId } from '../../sim/devices/BenchSurface.ts';
import type { Scenario } from '../scenario/Scenario.ts';

/** Which rig, where the bench stands and how full the tank is: the same in every suspect world. */
export interface Environment {
  /** The leak detection pump where none is named. */
  readonly rig?: RigId;
  readonly ambientC: number;
  readonly altitudeM: number;
  readonly fuelLevel: number;
}

export function environmentOf({ rig, bench }: Scenario): Environment {
  return {
    ...(rig === undefined ? {} : { rig }),
    ambientC: bench.ambientC,
    altitudeM: bench.altitudeM,
    fuelLevel: bench.fuelPercent / 100,
  };
}

/** Seeds of the tolerance draws: the same for every suspect, so that their differences are the faults' own. */
export const DRAW_SEEDS: readonly string[] = [0, 1, 2, 3, 4, 5, 6, 7].map((draw) => `tolerance-draw-${draw}`);
