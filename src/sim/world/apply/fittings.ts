import { err, ok } from '../../../base/Result.ts';
import { siteOf } from '../../devices/BenchState.ts';
import {
  type AirSite,
  type ClampSetting,
  type Fitting,
  type HoseEnd,
  mayFit,
  UNIT_PORTS,
  type UnitPort,
} from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';
import { hissAt } from './hiss.ts';

const OWN_END: Readonly<Partial<Record<Fitting, HoseEnd>>> = {
  'canister-hose': 'canister-hose-end',
  'air-hose': 'air-hose-end',
  'engine-hose': 'engine-hose-end',
  'pump-hose': 'pump-hose-end',
  'jar-hose': 'jar-hose-end',
  'manometer-hose': 'manometer-hose-end',
  'smoke-hose': 'smoke-hose-end',
};

function isPort(site: AirSite): site is UnitPort {
  return (UNIT_PORTS as readonly string[]).includes(site);
}

function leave(context: ApplyContext, site: AirSite): void {
  hissAt(context, site);
  context.bench.sites[site] = null;
  if (isPort(site)) context.bench.clamps[site] = 'loose';
}

/** Puts a hose, cap or plug on a site; its clamp is slid back and must be tightened again. */
export function putOn(context: ApplyContext, item: Fitting, site: AirSite): Applied {
  const { bench, surface } = context;
  if (!surface.fittings.includes(item) || !surface.sites.includes(site)) return err('cannot-be-reached');
  if (bench.sites[site] === item) return err('already-so');
  if (!mayFit(item, site)) return err('does-not-fit');
  if (bench.sites[site] !== null) return err('site-taken');
  const ownEnd = OWN_END[item];
  if (ownEnd !== undefined && bench.sites[ownEnd] !== null) return err('site-taken');
  if (!isPort(site) && hoseIsOnPort(context, site)) return err('site-taken');
  const from = siteOf(bench, item);
  if (from !== null) leave(context, from);
  bench.sites[site] = item;
  if (isPort(site)) bench.clamps[site] = 'loose';
  return ok(undefined);
}

/** A hose end is free only while its hose is off the unit and off any other hose. */
function hoseIsOnPort({ bench }: ApplyContext, end: AirSite): boolean {
  const hose = (Object.keys(OWN_END) as Fitting[]).find((item) => OWN_END[item] === end);
  return hose !== undefined && siteOf(bench, hose) !== null;
}

/** Takes a hose, cap or plug off; it lies open on the mat. */
export function takeOff(context: ApplyContext, item: Fitting): Applied {
  const site = siteOf(context.bench, item);
  if (site === null) return err('not-fitted');
  leave(context, site);
  return ok(undefined);
}

/** Sets the clamp of a port. Over-tight cracks the barb, and it stays cracked. */
export function clamp({ bench, happen }: ApplyContext, port: UnitPort, setting: ClampSetting): Applied {
  if (bench.sites[port] === null) return err('nothing-to-clamp');
  if (bench.clamps[port] === setting) return err('clamp-already-so');
  bench.clamps[port] = setting;
  if (setting === 'over-tight' && !bench.cracked[port]) {
    bench.cracked[port] = true;
    happen('barb-cracked', port);
  }
  return ok(undefined);
}
