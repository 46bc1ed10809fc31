import type { LeadPoint } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { across, isLoaded, readsNow } from './setups.ts';

/** The rig's service data: what each side of the loaded solenoid may drop, volts. */
const MOST_GROUND_DROP = 0.1;
const MOST_FEED_DROP = 0.3;
/** What is left at the plug of a sound feed, read to ground: no less than this on any battery that still cranks. Common practice, no source. */
const LEAST_FEED_VOLTS = 11;

const GROUNDS: readonly LeadPoint[] = ['battery-negative', 'chassis-stud', 'ground-splice'];
const FEED_AT_PLUG: readonly LeadPoint[] = ['cavity-1-back', 'wire-1'];
const GROUND_AT_PLUG: readonly LeadPoint[] = ['cavity-2-back', 'wire-2'];

/** The meter shows, settled and with the solenoid carrying its current, that the feed brings the battery to the plug. */
export function showsSoundFeed(seen: Observation): boolean {
  const volts = loadedVolts(seen);
  if (volts === null) return false;
  if (across(seen, FEED_AT_PLUG, ['battery-positive', 'fuse-in', 'fuse-out'])) return volts <= MOST_FEED_DROP;
  return across(seen, FEED_AT_PLUG, [...GROUNDS, ...GROUND_AT_PLUG]) && volts >= LEAST_FEED_VOLTS;
}

/** The same of the ground side: next to nothing is lost between the plug and the battery. */
export function showsSoundGround(seen: Observation): boolean {
  const volts = loadedVolts(seen);
  return volts !== null && across(seen, GROUND_AT_PLUG, GROUNDS) && volts <= MOST_GROUND_DROP;
}

function loadedVolts(seen: Observation): number | null {
  const { display, function: which } = seen.meter;
  if (which !== 'volts-dc' || !isLoaded(seen) || !display.settled || !readsNow(seen)) return null;
  return display.value === null ? null : Math.abs(display.value);
}
