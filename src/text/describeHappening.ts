import type { Happening } from '../sim/world/Observation.ts';
import { say, type TextKey } from './translate.ts';

/** What has a sentence of its own for the place where it happened. */
const AT_PLACE: Readonly<Partial<Record<string, TextKey>>> = {
  'fuse-pop fuse': 'happeningAt.truckFuse',
  'fuse-pop jumper': 'happeningAt.jumperFuse',
  'fuse-pop milliamps-jack': 'happeningAt.meterFuse',
  'fuse-pop amps-jack': 'happeningAt.meterFuse',
};

const PORTS = ['canister-port', 'air-port', 'engine-port'] as const;

/** The whole sentence of a happening, with its place where that could be told. */
export function describeHappening({ kind, at }: Pick<Happening, 'kind' | 'at'>): string {
  const port = PORTS.find((each) => each === at);
  if (kind === 'barb-cracked' && port !== undefined)
    return say('happeningAt.barb', { port: say(`sites.${port}`) });
  const known = AT_PLACE[`${kind} ${at}`];
  return say(known ?? `happeningSentences.${kind}`);
}
