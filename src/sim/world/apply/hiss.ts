import type { AirSite } from '../../devices/places.ts';
import type { ApplyContext } from './ApplyContext.ts';

/** Vacuum above which air that is let in is heard, pascal. Common practice, no source. */
const HISS_PA = 1500;

/** Air is let in at a site: a hiss when there was vacuum behind it. */
export function hissAt({ vacuumAt, happen }: ApplyContext, site: AirSite): void {
  if (vacuumAt(site) > HISS_PA) happen('hiss');
}
