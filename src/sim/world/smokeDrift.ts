import type { Tick } from '../../base/ticks.ts';
import type { SmokePlace } from '../devices/places.ts';
import { mixSmoke } from '../rigs/mixSmoke.ts';
import type { Rig } from './Rig.ts';
import type { WorldState } from './WorldState.ts';

/** Less smoke than this in a volume is none. */
const LEAST_SHARE = 1e-4;
/**
 * Air that comes out with this much of the machine's thick smoke in it can be seen, if there is enough of it. Common
 * practice, no source.
 */
const VISIBLE_SHARE = 0.03;
/** About 0.12 L/min: a wisp. The seep of a sound truck at the proper pressure is less. Common practice, no source. */
const VISIBLE_KG_PER_S = 2.4e-6;

/** True while there is smoke anywhere or some is being made. */
export function smokeMoves(state: WorldState): boolean {
  return state.bench.smoke.gas !== 'off' || state.smokeShares.length > 0;
}

/**
 * Lets smoke travel with the air of the step just taken, and looks where it comes out: a place shows once the air that
 * leaves there has enough smoke in it, which takes as long as the machine needs to sweep what lies before it.
 */
export function driftSmoke(rig: Rig, tick: Tick): void {
  const { state, air } = rig;
  if (!smokeMoves(state)) return;
  const shares = mixSmoke(air.network, air.smokeSource, state.smokeShares);
  state.smokeShares = shares.some((share) => share > LEAST_SHARE) ? shares : [];
  const seen = placesSeen(rig);
  const fresh = seen.find((place) => !state.smokeSeenAt.includes(place));
  if (fresh !== undefined) rig.happen('smoke-seen', fresh, tick);
  state.smokeSeenAt = seen;
}

function placesSeen({ state, air }: Rig): SmokePlace[] {
  const places: SmokePlace[] = [];
  for (const { seen, from } of air.outflows(VISIBLE_KG_PER_S)) {
    if ((state.smokeShares[from] ?? 0) > VISIBLE_SHARE && !places.includes(seen)) places.push(seen);
  }
  return places;
}
