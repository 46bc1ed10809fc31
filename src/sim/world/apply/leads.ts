import { err, ok } from '../../../base/Result.ts';
import { cavityOfBack, type LeadEnd, type LeadPoint, needsPartedPlug } from '../../devices/places.ts';
import { worseBy } from '../growingDamage.ts';
import type { Applied, ApplyContext } from './ApplyContext.ts';

/** A tip cannot be put on itself. */
function isOwnTip(end: LeadEnd, point: LeadPoint): boolean {
  return point === `${end}-tip`;
}

/** Damage that a bare tip or a piercing point does by being put there, a little more each time. */
const HARMS: Readonly<Partial<Record<LeadPoint, string>>> = {
  'front-1': 'terminal-1-spread',
  'front-2': 'terminal-2-spread',
  'front-3': 'terminal-3-spread',
  'wire-1': 'wire-1-pierced',
  'wire-2': 'wire-2-pierced',
  'wire-3': 'wire-3-pierced',
};
const HARM_STEP = 0.2;

/** Puts a lead end on a point. Several ends may share a point; a cavity's back is reached by a pin only. */
export function placeLead({ bench, damage }: ApplyContext, end: LeadEnd, point: LeadPoint): Applied {
  if (bench.leads[end] === point) return err('lead-already-there');
  if (isOwnTip(end, point)) return err('point-taken-by-own-tip');
  if (needsPartedPlug(point) && bench.plugMated) return err('point-needs-parted-plug');
  const cavity = cavityOfBack(point);
  if (cavity !== null && !bench.pins[cavity - 1]) return err('point-needs-pin');
  bench.leads[end] = point;
  const harm = HARMS[point];
  if (harm !== undefined) damage(harm, worseBy(bench, harm, HARM_STEP));
  return ok(undefined);
}

/** Lifts a lead end off; it rests on the mat. Breaking a current is seen as a spark. */
export function liftLead({ bench, ampsThrough, happen }: ApplyContext, end: LeadEnd): Applied {
  if (bench.leads[end] === null) return err('lead-is-loose');
  if (Math.abs(ampsThrough(end)) > SPARK_AMPS) happen('spark', bench.leads[end]);
  bench.leads[end] = null;
  return ok(undefined);
}

/** Breaking more than this in an inductive circuit is seen as a spark. Common practice, no source. */
export const SPARK_AMPS = 0.1;
