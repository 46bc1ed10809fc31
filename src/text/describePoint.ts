import type { LeadEnd, LeadPoint } from '../sim/devices/places.ts';
import { capital } from './format.ts';
import { say } from './translate.ts';

/** `sense, cavity 3` once the service data was opened, `cavity 3` before. */
export function describePoint(point: LeadPoint, functionsKnown: boolean): string {
  const name = say(`points.${point}`);
  const cavity = /^cavity-([123])-back$/.exec(point)?.[1];
  if (!functionsKnown || cavity === undefined) return name;
  return `${say(`functions.${cavity as '1' | '2' | '3'}`)}, ${name}`;
}

/** Name of a point as a place to put a lead: `cavity 3 wire side`. */
export function describeSide(point: LeadPoint): string {
  switch (point) {
    case 'cavity-1-back':
    case 'cavity-2-back':
    case 'cavity-3-back':
      return say(`pointSides.${point}`);
    default:
      return say(`points.${point}`);
  }
}

/** `Red lead, on cavity 3 wire side` or `Red lead, loose on the mat`. */
export function describeEnd(end: LeadEnd, point: LeadPoint | null): string {
  const name = capital(say(`ends.${end}`));
  if (point === null) return say('hand.onBare', { end: name, where: say('hand.loose') });
  return say('hand.on', { end: name, point: describeSide(point) });
}
