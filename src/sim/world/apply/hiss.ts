import type { AirSite } from '../../devices/places.ts';
import type { HappeningPlace } from '../Observation.ts';
import type { ApplyContext } from './ApplyContext.ts';

/** Vacuum or pressure above which air that is let in or out is heard, pascal. Common practice, no source. */
const HISS_PA = 1500;

/** Air is let in or out at a site: a hiss, there or `at` a place before it, when there was vacuum or pressure behind it. */
export function hissAt({ vacuumAt, happen }: ApplyContext, site: AirSite, at: HappeningPlace = site): void {
  if (Math.abs(vacuumAt(site)) > HISS_PA) happen('hiss', at);
}
