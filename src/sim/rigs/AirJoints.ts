import { type BenchState, siteOf } from '../devices/BenchState.ts';
import type { BenchSurface } from '../devices/BenchSurface.ts';
import {
  AIR_SITES,
  type AirSite,
  type ExaminedPlace,
  FITTINGS,
  type Fitting,
  mayFit,
  type SmokePlace,
  type UnitPort,
} from '../devices/places.ts';
import type { AirFabric, Bore, BoreUse } from './AirFabric.ts';
import type { AirNodes, AirVolume } from './airVolumes.ts';

/** The volume behind a barb, or in the hose of an end. */
export const SITE_VOLUMES: Readonly<Record<AirSite, AirVolume>> = {
  'canister-port': 'canister',
  'air-port': 'air',
  'engine-port': 'engine',
  'canister-hose-end': 'canister-hose',
  'air-hose-end': 'air-hose',
  'engine-hose-end': 'engine-hose',
  'pump-hose-end': 'pump-hose',
  'jar-hose-end': 'jar-hose',
  'manometer-hose-end': 'manometer',
  'smoke-hose-end': 'smoke-hose',
  'jar-tee-a': 'jar',
  'jar-tee-b': 'jar',
};

/** Every hose among the fittings, with the site that is its own open end. */
const HOSES: readonly { readonly hose: Fitting; readonly end: AirSite }[] = FITTINGS.flatMap((hose) =>
  AIR_SITES.filter((site) => site === `${hose}-end`).map((end) => ({ hose, end })),
);

/** Where smoke from a bare site is seen, and where an ear hears air that rushes there. */
const BARE: Readonly<Record<AirSite, { readonly seen: SmokePlace; readonly heard?: ExaminedPlace }>> = {
  'canister-port': { seen: 'canister-port', heard: 'unit' },
  'air-port': { seen: 'air-port', heard: 'unit' },
  'engine-port': { seen: 'engine-port', heard: 'unit' },
  'canister-hose-end': { seen: 'loose-end', heard: 'canister-hose' },
  'air-hose-end': { seen: 'loose-end', heard: 'air-hose' },
  'engine-hose-end': { seen: 'loose-end', heard: 'engine-hose' },
  'pump-hose-end': { seen: 'loose-end' },
  'jar-hose-end': { seen: 'loose-end' },
  'manometer-hose-end': { seen: 'loose-end' },
  'smoke-hose-end': { seen: 'loose-end' },
  'jar-tee-a': { seen: 'jar' },
  'jar-tee-b': { seen: 'jar' },
};

interface Joint {
  readonly from: AirVolume;
  readonly to: AirVolume | 'room';
  readonly bore: Bore;
  readonly use: BoreUse;
}

/**
 * Every way air can go at a barb or a hose end: into the open, into a hose pushed on, and out past a loose clamp or a
 * cracked barb. All paths exist from the beginning; the bench's state opens some and shuts the rest. All benches of a rig
 * share one table.
 */
const jointsOf = new WeakMap<BenchSurface, readonly Joint[]>();

export function addJoints(fabric: AirFabric, surface: BenchSurface, at: AirNodes, room: number): void {
  let joints = jointsOf.get(surface);
  if (joints === undefined) {
    const ofSites = surface.sites.flatMap((site) => jointsOfSite(surface, site));
    joints = [...ofSites, ...surface.ports.flatMap(leaksOfPort)];
    jointsOf.set(surface, joints);
  }
  for (const { from, to, bore, use } of joints)
    fabric.bore(at[from], to === 'room' ? room : at[to], bore, use);
}

function jointsOfSite({ fittings }: BenchSurface, site: AirSite): Joint[] {
  const from = SITE_VOLUMES[site];
  const bore = site.startsWith('engine') ? 'enginePortM' : 'portM';
  const open: Joint = {
    from,
    to: 'room',
    bore,
    use: { ...BARE[site], open: (bench) => isOpenToAir(bench, site) },
  };
  const pushedOn = HOSES.filter(({ hose }) => fittings.includes(hose) && mayFit(hose, site));
  return [
    open,
    ...pushedOn.map(
      ({ hose, end }): Joint => ({
        from,
        to: SITE_VOLUMES[end],
        bore,
        use: { open: (bench) => bench.sites[site] === hose },
      }),
    ),
  ];
}

function leaksOfPort(port: UnitPort): Joint[] {
  const from = SITE_VOLUMES[port];
  const loose: BoreUse = {
    ...BARE[port],
    open: (bench) => bench.sites[port] !== null && bench.clamps[port] === 'loose',
  };
  const cracked: BoreUse = { ...BARE[port], open: (bench) => bench.cracked[port] };
  return [
    { from, to: 'room', bore: 'looseJointLeakM', use: loose },
    { from, to: 'room', bore: 'crackedBarbLeakM', use: cracked },
  ];
}

/** A site is open when nothing is on it and, for a hose end, its hose is not itself pushed onto something. */
function isOpenToAir(bench: BenchState, site: AirSite): boolean {
  if (bench.sites[site] !== null) return false;
  const own = HOSES.find(({ end }) => end === site);
  return own === undefined || siteOf(bench, own.hose) === null;
}
