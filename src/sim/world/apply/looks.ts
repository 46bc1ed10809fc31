import { siteOf } from '../../devices/BenchState.ts';
import { NOMINAL } from '../../devices/parameters.ts';
import { type ExaminedPlace, type Fitting, type HoseEnd, UNIT_PORTS } from '../../devices/places.ts';
import type { Sign } from '../Observation.ts';
import type { ApplyContext } from './ApplyContext.ts';

/** What an eye needs before it finds something, by size. Common practice, no source. */
const SPLIT_SEEN_M = 0.8e-3;
const CRACK_SEEN_M = 1e-3;
const CAP_SEAL_SEEN_M = 0.8e-3;
/** Bore left in a hose that is pinched, or that one looks into. */
const BORE_SEEN_M = 1.5e-3;
/** Bore left in a filter that looks dirty. */
const FILTER_DIRTY_M = 4e-3;
/** Bare copper on metal; a wire chafed less than this has lost some of its insulation, out of sight. */
const CHAFE_SEEN_OHMS = 20;
/** Any path at all through water or a hole in the insulation: far below sound insulation. */
const PATH_OHMS = 1e9;
/** A terminal that stands as wide open as this is seen without a gauge. */
const SPREAD_SEEN = 0.7;
/** Burnt contacts add this much to a jumper, ohms. */
const BURNT_OHMS = 0.3;

type Look = (context: ApplyContext) => readonly Sign[];

/** Signs that an eye finds at each place, from what is there; an empty list means that nothing looks wrong. */
export const LOOKS: Readonly<Record<ExaminedPlace, Look>> = {
  plug: ({ bench, parameters: p }) => {
    if (bench.plugMated) return ['not-seen'];
    const wet = Math.min(p.bridge12Ohms, p.bridge23Ohms) < PATH_OHMS;
    const spread = Math.max(p.spread1, p.spread2, p.spread3) >= SPREAD_SEEN;
    return signs([p.plugCorroded === 1, 'green-corrosion'], [wet, 'moisture'], [spread, 'terminal-spread']);
  },
  harness: ({ parameters: p }) =>
    signs(
      [
        Math.min(p.feedToGroundOhms, p.senseToGroundOhms, p.feedToBatteryOhms, p.senseToBatteryOhms) <
          CHAFE_SEEN_OHMS,
        'chafed',
      ],
      [Math.min(p.pierce1Ohms, p.pierce2Ohms, p.pierce3Ohms) < PATH_OHMS, 'insulation-pierced'],
    ),
  unit: ({ bench, parameters: p }) => {
    const barb = UNIT_PORTS.some((port) => bench.cracked[port] && bench.sites[port] === null);
    return signs([barb || p.bodyCrackM >= CRACK_SEEN_M, 'crack']);
  },
  'canister-hose': (context) => {
    const { canisterHoseOff, canisterHoseSplitM } = context.parameters;
    return [
      ...signs([canisterHoseOff === 1, 'hose-off'], [canisterHoseSplitM >= SPLIT_SEEN_M, 'split']),
      ...throughCanisterHose(context),
    ];
  },
  'air-hose': (context) =>
    signs([
      endIsOpen(context, 'air-hose', 'air-hose-end') && context.parameters.airHoseM < BORE_SEEN_M,
      'blocked',
    ]),
  'engine-hose': ({ parameters: p }) =>
    signs([p.engineHoseLeakM >= SPLIT_SEEN_M, 'split'], [p.engineHoseM < BORE_SEEN_M, 'pinched']),
  filter: ({ parameters: p }) =>
    signs([p.filterM < FILTER_DIRTY_M, 'dirty'], [p.waterInFilter === 1, 'water']),
  canister: (context) => [
    ...signs([context.parameters.canisterCrackM >= CRACK_SEEN_M, 'crack']),
    ...throughCanisterHose(context),
  ],
  'filler-cap': ({ parameters: p }) => signs([p.fillerCapLeakM >= CAP_SEAL_SEEN_M, 'loose-cap']),
  // The seals of the tank lie on its top, under the body.
  tank: () => ['not-seen'],
  'purge-valve': () => [],
  fuse: ({ bench, truckFuseMelted }) =>
    bench.fuseFitted ? ['not-seen'] : [truckFuseMelted() ? 'element-melted' : 'element-whole'],
  battery: () => [],
  jumper: ({ parameters: p, jumperFuseMelted }) =>
    signs([jumperFuseMelted(), 'element-melted'], [p.jumperOhms > NOMINAL.jumperOhms + BURNT_OHMS, 'burnt']),
};

function signs(...found: readonly (readonly [boolean, Sign])[]): readonly Sign[] {
  return found.flatMap(([is, sign]) => (is ? [sign] : []));
}

/** The hose is off the unit and nothing is in its end, so that one can look into it. */
function endIsOpen({ bench }: ApplyContext, hose: Fitting, end: HoseEnd): boolean {
  return siteOf(bench, hose) === null && bench.sites[end] === null;
}

/** What lies in the canister hose shows at its open end. */
function throughCanisterHose(context: ApplyContext): readonly Sign[] {
  if (!endIsOpen(context, 'canister-hose', 'canister-hose-end')) return [];
  const { charcoalInHose, fuelInCanister } = context.parameters;
  return signs([charcoalInHose === 1, 'charcoal'], [fuelInCanister === 1, 'fuel']);
}
