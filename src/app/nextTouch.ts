import type { AirSite, Fitting, LeadEnd, LeadPoint } from '../sim/devices/places.ts';
import type { Observation } from '../sim/world/Observation.ts';
import type { DoneCondition } from '../training/scenario/DoneCondition.ts';
import { gaugeInHg } from '../training/sitting/conditionHolds.ts';
import { EXAMINED_SPOTS } from '../ui/interaction/examinedAt.ts';
import { type Grip, siteOf } from '../ui/interaction/Grip.ts';
import { jumperInUse, partnerOf, toolInUse } from '../ui/interaction/layout/leadEnds.ts';
import type { HotspotId } from '../ui/interaction/layout/PlacedHotspot.ts';
import { tabOfSite } from '../ui/interaction/layout/shelf.ts';
import type { ShelfTab } from '../ui/interaction/layout/shelfPlan.ts';
import type { Touch } from '../ui/interaction/Touch.ts';

/** What a step still asks for, the bench as it stands, and the hand over it. */
interface Asked {
  readonly todo: DoneCondition;
  readonly seen: Observation;
  readonly holding: Grip | null;
  readonly shelf: ShelfTab;
}

/** Where one part of a condition sends the hand; null when it asks for nothing that can be touched now. */
type Finder = (asked: Asked) => HotspotId | null;

/**
 * In the order in which a careful hand goes about it: what was opened is closed before anything else is opened, leads come
 * off before the plug is moved, the key goes off first and on last.
 */
const FINDERS: readonly Finder[] = [
  ({ todo, seen, holding }) => liftedEnd(todo['leads-off'] ?? [], seen, holding),
  ({ todo, seen }) =>
    todo['gauge-below-inhg'] === undefined || seen.handPump.releaseOpen ? null : 'pump-release',
  ({ todo }) => (todo.key === 'off' ? 'key-position:off' : null),
  ({ todo, seen }) => (todo['pins-out'] === undefined ? null : firstPin(seen)),
  ({ todo }) => (todo.plug === undefined ? null : 'plug'),
  ({ todo }) => (todo.moved === undefined ? null : `wiggle:${todo.moved}`),
  ({ todo, seen }) => (todo['looked-into'] === undefined ? null : lookInto(todo['looked-into'], seen)),
  clampedNow,
  fittedNow,
  ({ todo, seen, holding }) => takenOff(todo['taken-off'] ?? [], seen, holding),
  ({ todo }) => (todo.found === undefined ? null : placeOnly(EXAMINED_SPOTS[todo.found.at])),
  ({ todo }) => (todo.jack === undefined ? null : `meter-jack:${todo.jack}`),
  ({ todo }) => (todo['meter-on'] === undefined ? null : `meter-selector:${todo['meter-on']}`),
  ({ todo, seen }) => pinAsked(todo['pins-in'] ?? [], seen),
  leadsNow,
  ({ todo }) => (todo.supply === undefined ? null : 'supply-switch'),
  ({ todo }) => (todo.key === undefined ? null : `key-position:${todo.key}`),
  (asked) =>
    asked.todo.jumper === undefined && asked.todo.clicks === undefined ? null : jumperSwitch(asked),
  ({ todo, seen }) => (todo['vacuum-cycles'] === undefined ? null : cycle(todo['vacuum-cycles'], seen)),
  ({ todo, seen }) => (todo['gauge-above-inhg'] === undefined ? null : draw(seen)),
  ({ todo }) => (todo.release === undefined ? null : 'pump-release'),
];

/**
 * What to touch next for what a step still asks for; null while it is only to be waited, looked at or read about, and while
 * the hand holds something that the step has no place for.
 */
export function nextTouch(
  todo: DoneCondition,
  seen: Observation,
  hand: { readonly holding: Grip | null; readonly shelf: ShelfTab },
): Touch | null {
  const asked: Asked = { todo, seen, holding: hand.holding, shelf: hand.shelf };
  for (const find of FINDERS) {
    const at = find(asked);
    if (at !== null) return freeHandOr(at, asked) ? { kind: 'bench', at } : null;
  }
  return todo.logged === undefined ? null : toLog(todo.logged, asked);
}

/** A full hand is led to a place for what it holds, never to something else. */
function freeHandOr(at: HotspotId, { holding }: Asked): boolean {
  return holding === null || /^(point|site|cavity-pin|shelf|place):/.test(at);
}

/** What an entry has to say must stand on the bench first; then it is logged. */
function toLog(logged: NonNullable<DoneCondition['logged']>, asked: Asked): Touch | null {
  const { seen } = asked;
  const [above, below] = [logged['gauge-above-inhg'], logged['gauge-below-inhg']];
  const leads = [
    { end: 'meter-red', point: logged.red },
    { end: 'meter-black', point: logged.black },
  ].filter((lead): lead is { end: LeadEnd; point: LeadPoint } => lead.point !== undefined);
  const first: DoneCondition = {
    ...(logged.function === undefined || seen.meter.function === logged.function
      ? {}
      : { 'meter-on': logged.function }),
    ...(leads.every(({ end, point }) => seen.leads[end] === point) ? {} : { 'leads-on': leads }),
    ...(above === undefined || gaugeInHg(seen) >= above ? {} : { 'gauge-above-inhg': above }),
    ...(below === undefined || gaugeInHg(seen) <= below ? {} : { 'gauge-below-inhg': below }),
  };
  if (Object.keys(first).length > 0) return nextTouch(first, seen, asked);
  const reads = logged.function !== undefined || logged.red !== undefined;
  return reads && !seen.meter.display.settled ? null : { kind: 'log' };
}

function liftedEnd(ends: readonly LeadEnd[], seen: Observation, holding: Grip | null): HotspotId | null {
  const end = ends.find((each) => seen.leads[each] !== null);
  return holding !== null || end === undefined ? null : `end:${end}`;
}

function firstPin({ plug }: Observation): HotspotId | null {
  const at = plug.pins.indexOf(true);
  return at < 0 ? null : `cavity-pin:${(at + 1) as 1 | 2 | 3}`;
}

function pinAsked(cavities: readonly (1 | 2 | 3)[], { plug }: Observation): HotspotId | null {
  const cavity = cavities.find((each) => plug.pins[each - 1] !== true);
  return cavity === undefined ? null : `cavity-pin:${cavity}`;
}

/** An eye is only led to places whose press is a look. */
function placeOnly(at: HotspotId): HotspotId | null {
  return at.startsWith('place:') ? at : null;
}

function lookInto(hose: 'canister-hose' | 'air-hose' | 'engine-hose', seen: Observation): HotspotId | null {
  const off = siteOf(hose, seen) === null && seen.sites[`${hose}-end`] === null;
  return off ? `place:${hose}` : null;
}

/** The first clamp that is not as asked and has what belongs on it. */
function clampedNow({ todo, seen }: Asked): HotspotId | null {
  const clamp = todo.clamped?.find(({ port, setting }) => {
    const wanted = todo.fitted?.find(({ site }) => site === port)?.item;
    const on = seen.sites[port];
    return on !== null && (wanted === undefined || on === wanted) && seen.clamps[port] !== setting;
  });
  return clamp === undefined ? null : `clamp:${clamp.port}`;
}

/** The first thing that is not where it belongs; whatever stands in its way comes off first, if it is to come off at all. */
function fittedNow({ todo, seen, holding, shelf }: Asked): HotspotId | null {
  const missing = (todo.fitted ?? []).filter(({ item, site }) => seen.sites[site] !== item);
  const held = holding?.kind === 'fitting' ? holding.item : null;
  // What is held goes to its own place, whichever was next.
  const next =
    missing.find(({ item }) => item === held) ?? missing.find(({ site }) => isFree(site, seen)) ?? missing[0];
  if (next === undefined) return null;
  const inTheWay = wayOf(next.site, seen);
  if (inTheWay !== null) return holding === null ? `fitting:${inTheWay}` : null;
  const tab = tabOfSite(next.site);
  if (next.item === held) return tab === null || tab === shelf ? `site:${next.site}` : `shelf:${tab}`;
  return holding === null ? `fitting:${next.item}` : null;
}

function isFree(site: AirSite, seen: Observation): boolean {
  return wayOf(site, seen) === null;
}

/** What keeps a site from being fitted: something on it, or its hose still sitting on something. */
function wayOf(site: AirSite, seen: Observation): Fitting | null {
  const on = seen.sites[site];
  if (on !== null) return on;
  const hose = site.endsWith('-hose-end') ? (site.slice(0, -'-end'.length) as Fitting) : null;
  return hose !== null && siteOf(hose, seen) !== null ? hose : null;
}

function takenOff(items: readonly Fitting[], seen: Observation, holding: Grip | null): HotspotId | null {
  const item = items.find((each) => siteOf(each, seen) !== null);
  return item === undefined || holding !== null ? null : `fitting:${item}`;
}

/** The first lead that is not where it is asked for. The ends of the ground lead are alike, so it may lie either way round. */
function leadsNow({ todo, seen, holding, shelf }: Asked): HotspotId | null {
  const asked = eitherWay(todo['leads-on'] ?? [], seen, holding);
  const missing = asked.filter(({ end, point }) => seen.leads[end] !== point);
  const held = holding?.kind === 'lead' ? missing.find(({ end }) => end === holding.end) : undefined;
  if (held !== undefined) return `point:${held.point}`;
  const end = missing[0]?.end;
  if (end === undefined || holding !== null) return null;
  const stowed = partnerOf(end) !== null && !toolInUse(end, seen);
  return stowed && shelf !== 'leads' ? 'shelf:leads' : `end:${end}`;
}

function eitherWay(
  asked: readonly { readonly end: LeadEnd; readonly point: LeadPoint }[],
  seen: Observation,
  holding: Grip | null,
): readonly { readonly end: LeadEnd; readonly point: LeadPoint }[] {
  const turned = asked.map(({ end, point }) => ({
    end: end.startsWith('plain-') ? (partnerOf(end) ?? end) : end,
    point,
  }));
  const lying = (leads: typeof asked): number =>
    leads.filter(({ end, point }) => end.startsWith('plain-') && seen.leads[end] === point).length;
  if (lying(asked) !== lying(turned)) return lying(asked) > lying(turned) ? asked : turned;
  const first = turned.find(({ end }) => end.startsWith('plain-'))?.end;
  return holding?.kind === 'lead' && holding.end === first ? turned : asked;
}

function jumperSwitch({ seen, shelf }: Asked): HotspotId {
  return jumperInUse(seen) || shelf === 'leads' ? 'jumper-switch' : 'shelf:leads';
}

function draw({ handPump }: Observation): HotspotId {
  return handPump.releaseOpen ? 'pump-release' : 'pump-handle';
}

function cycle(wanted: NonNullable<DoneCondition['vacuum-cycles']>, seen: Observation): HotspotId {
  return gaugeInHg(seen) >= wanted['above-inhg'] ? 'pump-release' : draw(seen);
}
