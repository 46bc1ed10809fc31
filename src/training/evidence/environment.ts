import type { Scenario } from '../scenario/Scenario.ts';

/** Where the bench stands and how full the tank is: the same in every suspect world. */
export interface Environment {
  readonly ambientC: number;
  readonly altitudeM: number;
  readonly fuelLevel: number;
}

export function environmentOf({ bench }: Scenario): Environment {
  return { ambientC: bench.ambientC, altitudeM: bench.altitudeM, fuelLevel: bench.fuelPercent / 100 };
}

/** Seeds of the tolerance draws: the same for every suspect, so that their differences are the faults' own. */
export const DRAW_SEEDS: readonly string[] = [0, 1, 2, 3, 4, 5, 6, 7].map((draw) => `tolerance-draw-${draw}`);
