import { AIR_SITES, type LeadEnd } from '../../sim/devices/places.ts';
import type { Reading } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { Hands } from './Hands.ts';

/** How much vacuum the hand pump was asked for: nothing, some, or as much as a hold needs. */
export type Drawn = 0 | 1 | 2;

/** What a sheet asks for, in strokes that a sound unit alone takes, and what is as good when a hand has done it. */
const MANY_ASKED = 2.5;
const MANY_DONE = 1.6;
const SOME_DONE = 0.02;

export function drawnOnSheet({ strokes }: Hands): Drawn {
  return strokes === 0 ? 0 : strokes < MANY_ASKED ? 1 : 2;
}

/** Whether as much was drawn as a sheet asks for. */
export function drawnEnough(asked: Drawn, { strokes }: Hands): boolean {
  return asked === 0 ? strokes === 0 : strokes >= (asked === 1 ? SOME_DONE : MANY_DONE);
}

/**
 * What of the bench bears on a reading, as a short text: two benches with the same text are one set-up for it. A tool that is
 * tried by itself does not care how the truck stands.
 */
export function standFor(of: Reading['of'], hands: Hands, toolAlone: boolean): string {
  switch (of) {
    case 'meter':
    case 'tone':
      return [meter(hands), toolAlone ? '' : circuit(hands), onSense(hands) ? air(hands) : ''].join(' | ');
    case 'reader-volts':
    case 'reader-state':
    case 'seconds-taken':
    case 'strokes-taken':
      return `${circuit(hands)} | ${air(hands)}`;
    case 'reader-driver':
    case 'click':
    case 'lamp':
    case 'led':
      return toolAlone ? tools(hands) : circuit(hands);
    case 'gauge':
    case 'gauge-lost':
    case 'manometer':
    case 'manometer-at-goal':
    case 'manometer-lost':
      return toolAlone ? pumpAlone(hands) : `${drive(hands)} | ${air(hands)} ${letsIn(hands)}`;
    case 'smoke':
      return `${drive(hands)} | ${air(hands)} | ${hands.smoke}`;
    case 'meter-battery-sign':
    case 'finding':
    case 'codes':
    case 'freeze-data':
    case 'drive':
    case 'fuse':
    case 'jumper-fuse':
      return '';
  }
}

/** Whether vacuum bears on a reading that is taken in this stand. */
export function minds(of: Reading['of'], hands: Hands): boolean {
  switch (of) {
    case 'meter':
    case 'tone':
      return onSense(hands);
    case 'reader-volts':
    case 'reader-state':
      return !hands.bleedOpen;
    case 'gauge':
    case 'gauge-lost':
      return true;
    default:
      return false;
  }
}

const PAIRS: readonly (readonly [LeadEnd, LeadEnd])[] = [
  ['jumper-supply', 'jumper-far'],
  ['plain-a', 'plain-b'],
  ['lamp-clip', 'lamp-tip'],
  ['led-clip', 'led-tip'],
];

/** Tools that join two points. A lead with one end in the air joins nothing. */
function tools({ leads, jumperOn, supplyOn }: Hands): string {
  const joined = PAIRS.flatMap(([one, other]) => {
    const ends = [leads[one], leads[other]];
    if (ends.includes(undefined) || (one === 'jumper-supply' && !jumperOn)) return [];
    return [`${one.split('-')[0]} ${ends.sort().join(' ')}`];
  });
  return [...joined, supplyOn ? 'supply' : ''].join(', ');
}

/** Meter and its two points; which lead is on which is left open. */
function meter(hands: Hands): string {
  const { leads } = hands;
  const ends = [leads['meter-red'] ?? '-', leads['meter-black'] ?? '-'];
  const tipToTip = ends.some((end) => end.startsWith('meter-'));
  const points = tipToTip ? 'tips' : ends.sort().join(' ');
  return `${hands.meter.function} ${hands.meter.jack} ${points} ${tools(hands)}`;
}

function onSense({ leads }: Hands): boolean {
  return [leads['meter-red'], leads['meter-black']].some(
    (point) => point !== undefined && (point.includes('3') || point === 'controller-sense'),
  );
}

function circuit(hands: Hands): string {
  const { key, mated, command, fuseIn, unit } = hands;
  return [key, mated ? 'mated' : 'parted', command, fuseIn ? '' : 'no fuse', unit, tools(hands)].join(' ');
}

/** What moves air by itself. */
function drive({ key, command, mated, unit }: Hands): string {
  const driven = key === 'off' || !mated ? 'off' : command;
  return [key === 'running' ? 'running' : 'still', driven, unit].join(' ');
}

/** What stands on every barb and hose end; one cap is as good as another. */
function air({ sites, loose, bleedOpen }: Hands): string {
  const on = AIR_SITES.flatMap((site) => {
    const item = sites[site];
    if (item === undefined) return [];
    const slack = loose.some((port) => port === site) ? ' loose' : '';
    return [`${site}=${item.replace(/^(cap|plug)-.$/, '$1')}${slack}`];
  });
  return [...on, bleedOpen ? 'bleed' : ''].join(' ');
}

const letsIn = ({ releaseOpen }: Hands): string => (releaseOpen ? 'open' : '');

/** The hand pump on a plug, wherever the truck's hoses are. */
function pumpAlone({ sites, releaseOpen }: Hands): string {
  return `${sites['pump-hose-end'] === undefined ? '' : 'closed'} ${releaseOpen ? 'open' : ''}`;
}
