import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { LEAD_ENDS, type LeadPoint, UNIT_PORTS } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { SafetyBreach } from './DebriefFacts.ts';
import type { SafetyId } from './ruleIds.ts';
import {
  canisterLineOpen,
  coilFed,
  hasVapourLine,
  inHgOf,
  isOff,
  jumperFeeds,
  plainLeadFrom,
  toolOn,
} from './setups.ts';
import { standingAt } from './standing.ts';
import type { Moment, Timeline } from './Timeline.ts';

/** 14 inches of water, kPa (NIST SP 811: 249.0889 Pa each). Limit for tank and canister: common practice, no source. */
const CANISTER_LIMIT_KPA = 3.487;
/** Rated limit of this rig's unit, inHg. */
const UNIT_LIMIT_INHG = 22;
/** Sources with no fuse before them. */
const UNFUSED: readonly LeadPoint[] = ['battery-positive', 'fuse-in'];
const SENSE_WIRE: readonly LeadPoint[] = [
  'cavity-3-back',
  'controller-sense',
  'harness-3',
  'front-3',
  'wire-3',
  'slip-2-3',
];

const GRADES: Readonly<Record<SafetyId, SafetyBreach['grade']>> = {
  'unfused-source': 'serious',
  'supply-on-sense-mated': 'serious',
  'lamp-on-sense-mated': 'minor',
  'slipped-probe': 'minor',
  'too-much-vacuum-on-canister': 'serious',
  'too-much-pressure-on-canister': 'serious',
  'over-rated-vacuum': 'minor',
  'smoke-with-shop-air': 'serious',
  'spark-at-open-vapour': 'serious',
  'spark-at-unaired-unit': 'minor',
};

/**
 * States that are a breach for as long as they last; each time one begins counts once. `over` says when it has ended,
 * where that is not simply its opposite: a needle that swings about a limit is one breach, until the vacuum is let off.
 */
const LASTING: readonly {
  readonly breach: SafetyId;
  readonly holds: (moment: Moment) => boolean;
  readonly over?: (moment: Moment) => boolean;
}[] = [
  { breach: 'unfused-source', holds: ({ seen }) => plainLeadFrom(seen, unfused(seen)) !== null },
  {
    breach: 'supply-on-sense-mated',
    holds: ({ seen }) => {
      const fed = jumperFeeds(seen) ?? plainLeadFrom(seen, [...unfused(seen), 'fuse-out']);
      return fed !== null && SENSE_WIRE.includes(fed);
    },
  },
  {
    breach: 'lamp-on-sense-mated',
    holds: ({ seen }) => {
      const { 'lamp-clip': clip, 'lamp-tip': tip } = seen.leads;
      if (!seen.plug.mated || clip === null || tip === null) return false;
      return SENSE_WIRE.includes(clip) !== SENSE_WIRE.includes(tip);
    },
  },
  {
    breach: 'slipped-probe',
    holds: ({ seen }) => seen.plug.mated && LEAD_ENDS.some((end) => seen.leads[end]?.startsWith('slip-')),
  },
  {
    breach: 'too-much-vacuum-on-canister',
    holds: ({ seen }) => pumpReachesCanister(seen) && seen.gauge.needleKPa > CANISTER_LIMIT_KPA,
    over: ({ seen }) => seen.gauge.needleKPa < CANISTER_LIMIT_KPA / 2,
  },
  {
    breach: 'too-much-pressure-on-canister',
    holds: ({ seen }) => smokeReachesCanister(seen) && seen.smoke.gaugeKPa > CANISTER_LIMIT_KPA,
    over: ({ seen }) => seen.smoke.gaugeKPa < CANISTER_LIMIT_KPA / 2,
  },
  {
    breach: 'smoke-with-shop-air',
    holds: ({ seen }) => seen.smoke.gas === 'shop-air' && Object.values(seen.sites).includes('smoke-hose'),
  },
  {
    breach: 'over-rated-vacuum',
    holds: ({ seen }) =>
      UNIT_PORTS.some((port) => toolOn(seen, 'pump-hose', port)) &&
      inHgOf(seen.gauge.needleKPa) > UNIT_LIMIT_INHG,
    over: ({ seen }) => inHgOf(seen.gauge.needleKPa) < UNIT_LIMIT_INHG / 2,
  },
];

/** Sources with no fuse of the circuit before them, as far as they are switched on. */
function unfused({ supply }: Observation): readonly LeadPoint[] {
  return supply.on ? [...UNFUSED, 'supply-positive'] : UNFUSED;
}

/** The hand pump draws on the canister: by its hose, or through the unit, whose vent is open at rest. */
function pumpReachesCanister(seen: Observation): boolean {
  if (toolOn(seen, 'pump-hose', 'canister-hose-end')) return true;
  return seen.sites['canister-port'] === 'canister-hose' && toolOn(seen, 'pump-hose', 'air-port');
}

/** The smoke machine blows into the canister: by its hose, or through the unit, whose vent is open at rest. */
function smokeReachesCanister(seen: Observation): boolean {
  if (toolOn(seen, 'smoke-hose', 'canister-hose-end')) return true;
  if (seen.sites['canister-port'] !== 'canister-hose') return false;
  return toolOn(seen, 'smoke-hose', 'air-port');
}

/**
 * Breaches of safety over the whole sitting, also after the verdict, in the order of their ticks: only what an action of the
 * bench can do. Deliberate tests on the parted harness half are proper and break nothing: terminal 3 bridged to 2 by the plain lead
 * while the reader is watched, a test lamp or the LED tester on the parted feed, volts and ohms by the matched test pin. So are
 * the jumper on the parted unit, made at the unit first and switched at the battery end, and the water column at any port.
 */
export function safetyBreaches(timeline: Timeline): readonly SafetyBreach[] {
  const breaches: SafetyBreach[] = [];
  const add = (breach: SafetyId, tick: number): void => {
    breaches.push({ breach, grade: GRADES[breach], tick });
  };
  for (const { breach, holds, over } of LASTING) {
    let was = false;
    for (const moment of timeline.moments) {
      const is = holds(moment);
      if (is && !was) add(breach, moment.tick);
      was = is || (was && over !== undefined && !over(moment));
    }
  }
  for (const tick of sparksAtOpenVapour(timeline)) add('spark-at-open-vapour', tick);
  for (const tick of sparksAtUnairedUnit(timeline)) add('spark-at-unaired-unit', tick);
  return breaches.sort((a, b) => a.tick - b.tick);
}

/** Jumper switched, or a spark seen, while the vapour line stood open; one for each time it was left open. */
function sparksAtOpenVapour({ moments, happenings }: Timeline): readonly number[] {
  const switched = moments.flatMap(({ tick, action, before, seen }) => {
    const live = jumperFeeds(seen) !== null || jumperFeeds(before) !== null;
    return action?.kind === 'switch-jumper' && live && canisterLineOpen(seen) ? [tick] : [];
  });
  const sparks = happenings.flatMap(({ kind, tick }) => {
    const seen = standingAt(moments, tick);
    return kind === 'spark' && seen !== null && canisterLineOpen(seen) ? [tick] : [];
  });
  const closings = moments.filter(({ seen }) => !canisterLineOpen(seen)).map(({ tick }) => tick);
  const first: number[] = [];
  for (const tick of [...switched, ...sparks].sort((a, b) => a - b)) {
    const last = first.at(-1);
    if (last === undefined || closings.some((closed) => closed > last && closed < tick)) first.push(tick);
  }
  return first;
}

/** Time for what vapour is in the unit to leave it through its open port. Common practice asks to air it, no source for how long. */
const AIRED_TICKS = secondsToTicks(30);

/**
 * Contact to the unit made or broken with a tip instead of the jumper's switch, so that it sparks at the unit itself, while the unit was
 * still on its vapour hose or had just come off it.
 */
function sparksAtUnairedUnit({ moments, start }: Timeline): readonly number[] {
  const sparks: number[] = [];
  if (!hasVapourLine(start)) return [];
  let offSince: Tick | null = isOff(start, 'canister-hose') ? start.tick : null;
  for (const { tick, action, before, seen } of moments) {
    if (!isOff(seen, 'canister-hose')) offSince = null;
    else offSince ??= tick;
    const byTip = action?.kind === 'place-lead' || action?.kind === 'lift-lead';
    if (!byTip || coilFed(before) === coilFed(seen)) continue;
    if (offSince === null || tick - offSince < AIRED_TICKS) sparks.push(tick);
  }
  return sparks;
}
