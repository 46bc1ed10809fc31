import type { Tick } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import { airCapped, inHgOf, pumpOnUnit, readerSense, senseReading, watchesSense } from './setups.ts';
import type { Moment, Timeline } from './Timeline.ts';

/** One vacuum trial where vacuum works the switch: from its first stroke until the vacuum is let off or has gone. */
export interface VacuumBout {
  readonly from: Tick;
  readonly lastStroke: Tick;
  readonly to: Tick;
  readonly ended: 'released' | 'gone' | 'undone' | 'verdict';
  readonly strokes: readonly { readonly tick: Tick; readonly seen: Observation }[];
  /** What must be capped was capped at every stroke. */
  readonly capped: boolean;
  readonly peakInHg: number;
  /** The pump drew on the port itself, not through the jar. */
  readonly direct: boolean;
  /** While vacuum stood the meter was on the sense circuit, or what the reader says of it was logged. */
  readonly senseWatched: boolean;
  /** What was seen of the switch while vacuum stood. */
  readonly under: readonly ('open' | 'closed' | 'between')[];
}

/** Below this the vacuum has gone, inHg: under half a small division of the gauge. */
export const GONE_INHG = 0.4;
/** Shallower strokes are a touch of the handle, not a trial. */
const LEAST_STROKE = 0.1;

export function isStroke({ action }: Moment): boolean {
  if (action === null) return false;
  if (action.kind === 'stroke') return action.depth >= LEAST_STROKE;
  return action.kind === 'pump-handle' && action.position >= LEAST_STROKE;
}

/** All such trials of the truck's own unit, in order, between two ticks. */
export function vacuumBouts({ moments }: Timeline, from: Tick, until: Tick): readonly VacuumBout[] {
  const bouts: VacuumBout[] = [];
  let open: Draft | null = null;
  const end = (tick: Tick, ended: VacuumBout['ended']): void => {
    if (open !== null)
      bouts.push({
        ...open,
        to: tick,
        ended,
        capped: open.strokes.every(({ seen }) => airCapped(seen)),
        direct: open.strokes.every(({ seen }) => seen.sites[seen.surface.switchPort] === 'pump-hose'),
      });
    open = null;
  };
  for (const moment of moments) {
    if (moment.tick < from) continue;
    if (moment.tick > until) break;
    const { tick, seen } = moment;
    if (isStroke(moment) && pumpOnUnit(seen) && seen.unit === 'truck') {
      open ??= { from: tick, lastStroke: tick, strokes: [], peakInHg: 0, senseWatched: false, under: [] };
      open.strokes.push({ tick, seen });
      open.lastStroke = tick;
      continue;
    }
    if (open === null) continue;
    watch(open, moment);
    if (moment.action?.kind === 'release' && moment.action.open) end(tick, 'released');
    else if (!pumpOnUnit(seen)) end(tick, 'undone');
    else if (!seen.handPump.moving && inHgOf(seen.gauge.needleKPa) < GONE_INHG) end(tick, 'gone');
  }
  end(until, 'verdict');
  return bouts;
}

interface Draft {
  from: Tick;
  lastStroke: Tick;
  strokes: { tick: Tick; seen: Observation }[];
  peakInHg: number;
  senseWatched: boolean;
  under: ('open' | 'closed' | 'between')[];
}

function watch(bout: Draft, moment: Moment): void {
  const { seen } = moment;
  const inHg = inHgOf(seen.gauge.needleKPa);
  bout.peakInHg = Math.max(bout.peakInHg, inHg);
  if (inHg < seen.surface.switchTellsFromInHg) return;
  const reading = switchSeen(moment);
  if (watchesSense(seen) || reading !== null) bout.senseWatched = true;
  if (reading !== null) bout.under.push(reading);
}

/** What this moment shows of the vacuum switch: by the meter as it stands, or by the reader where it was written down. */
export function switchSeen({
  action,
  seen,
}: Pick<Moment, 'seen'> & { readonly action: { readonly kind: string } | null }):
  | 'open'
  | 'closed'
  | 'between'
  | null {
  return senseReading(seen) ?? (action?.kind === 'log' && seen.plug.mated ? readerSense(seen) : null);
}
