import { AIR_SITES, LEAD_ENDS, type LeadEnd } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';

/**
 * What the hands have done to the bench, as short texts: the same in every world that has had the same actions. Never
 * holds anything that was read, heard or found.
 */
export interface SetUp {
  /** Key, plug, command, fuse, supply, jumper and loose leads, which unit, what was renewed. */
  readonly circuit: string;
  /** What stands on every air site, clamps, bleed, and how much was drawn since air was last let in. */
  readonly air: string;
  readonly meter: string;
  readonly lamp: string;
  readonly led: string;
  readonly smoke: string;
}

/** Whole strokes since air was let in, to a tenth; more than this many count as alike. */
const MOST_STROKES = 5;

export function setUpOf(seen: Observation, strokes: number): SetUp {
  const ends = (...names: readonly LeadEnd[]): string => names.map((end) => seen.leads[end] ?? '-').join(':');
  const { meter } = seen;
  const circuit = [
    seen.key,
    seen.plug.mated ? 'mated' : 'parted',
    seen.reader.command,
    seen.fuse.fitted ? 'fuse' : 'no-fuse',
    seen.supply.on ? 'supply' : '',
    seen.jumper.switchedOn ? `jumper ${ends('jumper-supply', 'jumper-far')}` : '',
    ends('plain-a', 'plain-b'),
    LEAD_ENDS.some((end) => seen.leads[end]?.startsWith('slip-')) ? 'slipped' : '',
    seen.unit,
    seen.renewed.join('+'),
  ].join(' ');
  const air = [
    ...AIR_SITES.flatMap((site) => (seen.sites[site] === null ? [] : [`${site}=${seen.sites[site]}`])),
    ...Object.values(seen.clamps),
    `bleed ${seen.bleed}`,
    seen.handPump.releaseOpen ? 'open' : 'shut',
    `strokes ${Math.min(Math.floor(strokes * 10 + 0.5) / 10, MOST_STROKES)}`,
    seen.unit,
  ].join(' ');
  return {
    circuit,
    air,
    meter: [
      meter.function,
      meter.jack,
      ends('meter-red', 'meter-black'),
      meter.heldRange ?? 'auto',
      meter.extremes,
      meter.relative ? 'relative' : '',
    ].join(' '),
    lamp: ends('lamp-clip', 'lamp-tip'),
    led: ends('led-clip', 'led-tip'),
    smoke: `${seen.smoke.gas} ${seen.smoke.setKPa}`,
  };
}
