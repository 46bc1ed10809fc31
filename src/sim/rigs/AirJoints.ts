import { type BenchState, siteOf } from '../devices/BenchState.ts';
import {
  AIR_SITES,
  type AirSite,
  type ExaminedPlace,
  FITTINGS,
  type Fitting,
  mayFit,
  type SmokePlace,
  UNIT_PORTS,
} from '../devices/places.ts';
import type { AirFabric } from './AirFabric.ts';
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

/**
 * Every way air can go at a barb or a hose end: into the open, into a hose pushed on, and out past a loose clamp or a
 * cracked barb. All paths exist from the beginning; the bench's state opens some and shuts the rest.
 */
export function addJoints(fabric: AirFabric, at: AirNodes, room: number): void {
  for (const site of AIR_SITES) {
    const volume = at[SITE_VOLUMES[site]];
    const bore = site.startsWith('engine') ? 'enginePortM' : 'portM';
    fabric.bore(volume, room, bore, { ...BARE[site], open: (bench) => isOpenToAir(bench, site) });
    for (const { hose, end } of HOSES) {
      if (!mayFit(hose, site)) continue;
      fabric.bore(volume, at[SITE_VOLUMES[end]], bore, { open: (bench) => bench.sites[site] === hose });
    }
  }
  for (const port of UNIT_PORTS) {
    const volume = at[SITE_VOLUMES[port]];
    fabric.bore(volume, room, 'looseJointLeakM', {
      ...BARE[port],
      open: (bench) => bench.sites[port] !== null && bench.clamps[port] === 'loose',
    });
    fabric.bore(volume, room, 'crackedBarbLeakM', { ...BARE[port], open: (bench) => bench.cracked[port] });
  }
}

/** A site is open when nothing is on it and, for a hose end, its hose is not itself pushed onto something. */
function isOpenToAir(bench: BenchState, site: AirSite): boolean {
  if (bench.sites[site] !== null) return false;
  const own = HOSES.find(({ end }) => end === site);
  return own === undefined || siteOf(bench, own.hose) === null;
}
