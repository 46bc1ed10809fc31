import type { LeadEnd } from '../sim/devices/places.ts';
import type { Observation } from '../sim/world/Observation.ts';
import { describePoint } from './describePoint.ts';
import { say } from './translate.ts';

/** Brightness of a test lamp as an eye puts it. Common practice, no source. */
const DARK_BELOW = 0.02;
const BRIGHT_FROM = 0.6;

/** `dark`, `dim` or `bright`. */
export function glowWords(glow: number): string {
  return say(glow < DARK_BELOW ? 'log.dark' : glow < BRIGHT_FROM ? 'log.dim' : 'log.bright');
}

export function ledWords({ ledTester }: Observation): string {
  return say(`log.led.${ledTester.lit}`);
}

/** Where smoke comes out, or that none is seen. */
export function smokeWords({ smoke }: Observation): string {
  if (smoke.seenAt.length === 0) return say('log.noSmoke');
  return say('log.smokeAt', { places: smoke.seenAt.map((place) => say(`smokePlaces.${place}`)).join(', ') });
}

/** The two points a tool stands between, or null while one of its ends is loose. */
export function standsBetween(
  seen: Observation,
  one: LeadEnd,
  other: LeadEnd,
  functionsKnown: boolean,
): { readonly a: string; readonly b: string } | null {
  const a = seen.leads[one];
  const b = seen.leads[other];
  if (a === null || b === null) return null;
  return { a: describePoint(a, functionsKnown), b: describePoint(b, functionsKnown) };
}
