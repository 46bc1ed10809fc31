import { AIR_SITES, CAVITIES, type Fitting, LEAD_ENDS, type LeadPoint } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { describeSide } from '../../text/describePoint.ts';
import { capital } from '../../text/format.ts';
import { say } from '../../text/translate.ts';

const BENCH_POINTS: ReadonlySet<LeadPoint> = new Set<LeadPoint>([
  'supply-positive',
  'supply-negative',
  'meter-red-tip',
  'meter-black-tip',
]);
const OWN: ReadonlySet<Fitting> = new Set<Fitting>(['canister-hose', 'air-hose', 'engine-hose']);

/** Leads, pins, caps, plugs and tool hoses that are still on the truck, each by name and place. */
export function toolsOnTruck({ leads, plug, sites }: Observation): readonly string[] {
  const ends = LEAD_ENDS.flatMap((end) => {
    const point = leads[end];
    if (point === null || BENCH_POINTS.has(point)) return [];
    return [say('roadTest.thingOn', { thing: say(`ends.${end}`), place: describeSide(point) })];
  });
  const pins = CAVITIES.filter((cavity) => plug.pins[cavity - 1]).map((cavity) =>
    say('roadTest.pinIn', { cavity }),
  );
  const fittings = AIR_SITES.flatMap((site) => {
    const fitting = sites[site];
    const onTruck = site.endsWith('-port') || OWN.has(site.replace(/-end$/, '') as Fitting);
    if (fitting === null || !onTruck || OWN.has(fitting)) return [];
    return [say('roadTest.thingOn', { thing: say(`fittings.${fitting}`), place: say(`sites.${site}`) })];
  });
  return [...ends, ...pins, ...fittings].map(capital);
}

/** What is not as on a finished truck. It does not hold the truck back: it drives as it stands. */
export function notAsOnTruck({ plug, fuse, unit, sites, clamps, surface }: Observation): readonly string[] {
  const ports = surface.ports.flatMap((port) => {
    const hose = surface.hoses[port];
    if (hose !== undefined && sites[port] !== hose)
      return [say('roadTest.hoseOff', { hose: say(`fittings.${hose}`) })];
    if (clamps[port] === 'loose') return [say('roadTest.clampLoose', { port: say(`sites.${port}`) })];
    return [];
  });
  return [
    ...(plug.mated ? [] : [say('roadTest.plugParted')]),
    ...(fuse.fitted ? [] : [say('roadTest.fuseOut')]),
    ...(unit === 'truck' ? [] : [say('roadTest.knownGood')]),
    ...ports.map(capital),
  ];
}
