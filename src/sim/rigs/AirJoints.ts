import { Orifice } from '../components/Orifice.ts';
import { type BenchState, siteOf } from '../devices/BenchState.ts';
import type { RigParameters } from '../devices/parameters.ts';
import {
  AIR_SITES,
  type AirSite,
  type Fitting,
  mayFit,
  UNIT_PORTS,
  type UnitPort,
} from '../devices/places.ts';
import type { AirNetwork } from '../network/AirNetwork.ts';
import type { AirVolume } from './airVolumes.ts';

const SITE_VOLUMES: Readonly<Record<AirSite, AirVolume>> = {
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

const HOSE_VOLUMES: Readonly<Partial<Record<Fitting, AirVolume>>> = {
  'canister-hose': 'canister-hose',
  'air-hose': 'air-hose',
  'engine-hose': 'engine-hose',
  'pump-hose': 'pump-hose',
  'jar-hose': 'jar-hose',
  'manometer-hose': 'manometer',
  'smoke-hose': 'smoke-hose',
};

const HOSE_OF_END: Readonly<Partial<Record<AirSite, Fitting>>> = {
  'canister-hose-end': 'canister-hose',
  'air-hose-end': 'air-hose',
  'engine-hose-end': 'engine-hose',
  'pump-hose-end': 'pump-hose',
  'jar-hose-end': 'jar-hose',
  'manometer-hose-end': 'manometer-hose',
  'smoke-hose-end': 'smoke-hose',
};

/** One path that may exist between a site and something else; `hose` null is the open air. */
interface Joint {
  readonly site: AirSite;
  readonly hose: Fitting | null;
  readonly path: Orifice;
}

/**
 * Every way air can go at a barb or a hose end: into the open, into a hose pushed on, and out past a loose clamp or a
 * cracked barb. All paths exist from the beginning; the bench's state opens some and shuts the rest.
 */
export class AirJoints {
  private readonly joints: Joint[] = [];
  private readonly leaks: {
    readonly port: UnitPort;
    readonly path: Orifice;
    readonly of: 'clamp' | 'crack';
  }[] = [];

  constructor(
    network: AirNetwork,
    nodes: Readonly<Record<AirVolume, number>>,
    ambient: number,
    q: RigParameters,
  ) {
    for (const site of AIR_SITES) {
      const volume = nodes[SITE_VOLUMES[site]];
      const bore = site.startsWith('engine') ? q.enginePortM : q.portM;
      this.joints.push({ site, hose: null, path: network.add(Orifice.bore(volume, ambient, bore)) });
      for (const hose of hosesFor(site)) {
        const other = nodes[HOSE_VOLUMES[hose] as AirVolume];
        this.joints.push({ site, hose, path: network.add(Orifice.bore(volume, other, bore)) });
      }
    }
    for (const port of UNIT_PORTS) {
      const volume = nodes[SITE_VOLUMES[port]];
      const leak = (m: number): Orifice => network.add(Orifice.bore(volume, ambient, m));
      this.leaks.push({ port, of: 'clamp', path: leak(q.looseJointLeakM) });
      this.leaks.push({ port, of: 'crack', path: leak(q.crackedBarbLeakM) });
    }
  }

  sync(bench: BenchState): void {
    for (const { site, hose, path } of this.joints) {
      const there = bench.sites[site];
      const open = hose === null ? isOpenToAir(bench, site) : there === hose;
      path.openness = open ? 1 : 0;
    }
    for (const { port, path, of } of this.leaks) {
      const covered = bench.sites[port] !== null;
      const leaks = of === 'crack' ? bench.cracked[port] : covered && bench.clamps[port] === 'loose';
      path.openness = leaks ? 1 : 0;
    }
  }

  volumeOf(site: AirSite): AirVolume {
    return SITE_VOLUMES[site];
  }
}

/** A site is open when nothing is on it and, for a hose end, its hose is not itself pushed onto something. */
function isOpenToAir(bench: BenchState, site: AirSite): boolean {
  if (bench.sites[site] !== null) return false;
  const hose = HOSE_OF_END[site];
  return hose === undefined || siteOf(bench, hose) === null;
}

/** Every hose that can be pushed onto a site. */
function hosesFor(site: AirSite): readonly Fitting[] {
  return (Object.keys(HOSE_VOLUMES) as Fitting[]).filter((hose) => mayFit(hose, site));
}
