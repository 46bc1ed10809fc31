import { err, ok } from '../../../base/Result.ts';
import { type BenchState, siteOf } from '../../devices/BenchState.ts';
import { freshMemory } from '../../devices/controller/ControllerMemory.ts';
import type { ItemId } from '../../devices/items.ts';
import {
  CAVITIES,
  cavityBack,
  type Fitting,
  type HoseEnd,
  LEAD_ENDS,
  type LeadPoint,
  UNIT_PORTS,
} from '../../devices/places.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';
import { layBareUnit } from './bareUnit.ts';

/**
 * Fits a new item in place of the old. What has to come apart for it stays apart, for the fitter to put together again:
 * a new unit lies bare with its plug parted, a new plug is parted and has no pins, a new hose is on the truck's side
 * only. A new fuse is pushed in.
 */
export function renew(context: ApplyContext, item: ItemId): Applied {
  const { bench, surface, rebuild, renewJumperFuse } = context;
  if (!surface.items.includes(item)) return err('cannot-be-reached');
  // The truck's own unit is off the truck while the other stands in its place.
  if (item === 'unit' && bench.unit !== 'truck') return err('unit-is-not-the-trucks');
  bench.renewed.push(item);
  COMES_APART[item]?.(bench);
  rebuild();
  if (item === 'jumper') renewJumperFuse();
  return ok(undefined);
}

const COMES_APART: Readonly<Partial<Record<ItemId, (bench: BenchState) => void>>> = {
  unit: (bench) => {
    layBareUnit(bench);
    bench.cracked = { 'canister-port': false, 'air-port': false, 'engine-port': false };
  },
  plug: (bench) => {
    bench.plugMated = false;
    bench.pins = [false, false, false];
    liftFrom(bench, (point) => PLUG_POINT.test(point) || CAVITIES.some((n) => cavityBack(n) === point));
  },
  'feed-wire': (bench) => liftFrom(bench, (point) => point === 'wire-1'),
  'ground-wire': (bench) => liftFrom(bench, (point) => point === 'wire-2'),
  'sense-wire': (bench) => liftFrom(bench, (point) => point === 'wire-3'),
  'canister-hose': (bench) => takeHoseOff(bench, 'canister-hose', 'canister-hose-end'),
  'air-hose': (bench) => takeHoseOff(bench, 'air-hose', 'air-hose-end'),
  'engine-hose': (bench) => takeHoseOff(bench, 'engine-hose', 'engine-hose-end'),
  fuse: (bench) => {
    bench.fuseFitted = true;
  },
  controller: (bench) => {
    bench.controller = freshMemory();
    bench.command = 'off';
    bench.pulseHigh = false;
    bench.driver = 'off';
  },
};

/** Terminals of the harness half, and a tip slipped across its wire side. */
const PLUG_POINT = /^(harness|front|slip)-/;

function liftFrom(bench: BenchState, where: (point: LeadPoint) => boolean): void {
  for (const end of LEAD_ENDS) {
    const point = bench.leads[end];
    if (point !== null && where(point)) bench.leads[end] = null;
  }
}

function takeHoseOff(bench: BenchState, hose: Fitting, end: HoseEnd): void {
  const site = siteOf(bench, hose);
  if (site !== null) bench.sites[site] = null;
  bench.sites[end] = null;
  const port = UNIT_PORTS.find((name) => name === site);
  if (port !== undefined) bench.clamps[port] = 'loose';
}
