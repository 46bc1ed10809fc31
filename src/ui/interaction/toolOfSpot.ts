import type { BenchTool } from '../../sim/devices/items.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { HotspotId } from './layout/PlacedHotspot.ts';

/** Whether a tool stands on this bench. */
export function isThere({ away }: Observation, tool: BenchTool): boolean {
  return away === undefined || !away.includes(tool);
}

/**
 * Whether a hand or an eye can go there: the rig has it, and nothing of it is a tool that this bench does not have.
 */
export function isSpotThere(seen: Observation, id: HotspotId): boolean {
  if (!isOfRig(seen, id)) return false;
  if (seen.away === undefined) return true;
  const tool = toolOfSpot(id);
  return tool === null || isThere(seen, tool);
}

/** Whether the rig has what a hotspot stands for; what is no place of the unit's or the truck's is at every rig. */
function isOfRig({ surface }: Observation, id: HotspotId): boolean {
  const [kind, name] = id.split(':');
  const has = (names: readonly string[]): boolean => name !== undefined && names.includes(name);
  switch (kind) {
    case 'site':
      return has(surface.sites);
    case 'fitting':
      return has(surface.fittings);
    case 'clamp':
      return has(surface.ports);
    case 'place':
      return has(surface.examined);
    default:
      return true;
  }
}

/** The tool that a hotspot belongs to; null where it is the truck's, or nobody's. */
export function toolOfSpot(id: HotspotId): BenchTool | null {
  const exact = OF_SPOT.find(([, ids]) => ids.some((each) => each === id));
  if (exact !== undefined) return exact[0];
  return OF_KIND.find(([, start]) => id.startsWith(start))?.[0] ?? null;
}

const OF_SPOT: readonly (readonly [BenchTool, readonly HotspotId[]])[] = [
  ['meter', ['lcd', 'end:meter-red', 'end:meter-black', 'point:meter-red-tip', 'point:meter-black-tip']],
  ['back-probe-pins', ['pin-tray']],
  ['drag-gauge', ['drag-gauge']],
  ['jumper', ['jumper-switch', 'jumper-fuse', 'end:jumper-supply', 'end:jumper-far']],
  ['plain-lead', ['end:plain-a', 'end:plain-b']],
  ['test-lamp', ['end:lamp-clip', 'end:lamp-tip']],
  ['led-tester', ['end:led-clip', 'end:led-tip']],
  ['bench-supply', ['supply-switch', 'point:supply-positive', 'point:supply-negative']],
  ['hand-pump', ['pump-handle', 'pump-release', 'gauge', 'fitting:pump-hose', 'site:pump-hose-end']],
  [
    'jar',
    ['bleed-less', 'bleed-more', 'fitting:jar-hose', 'site:jar-hose-end', 'site:jar-tee-a', 'site:jar-tee-b'],
  ],
  ['manometer', ['manometer', 'refill', 'fitting:manometer-hose', 'site:manometer-hose-end']],
  ['smoke-machine', ['smoke-less', 'smoke-more', 'smoke-gauge', 'fitting:smoke-hose', 'site:smoke-hose-end']],
  ['reader', ['reader']],
];

/** Where every spot of a kind is the tool's. */
const OF_KIND: readonly (readonly [BenchTool, string])[] = [
  ['meter', 'meter-'],
  ['back-probe-pins', 'cavity-pin:'],
  ['caps-and-plugs', 'fitting:cap-'],
  ['caps-and-plugs', 'fitting:plug-'],
  ['smoke-machine', 'smoke-gas:'],
];
