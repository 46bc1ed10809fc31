import { unreachable } from '../../base/assert.ts';
import type { Tick } from '../../base/ticks.ts';
import { paToInHg } from '../../base/units.ts';
import type { LeadEnd } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { DoneCondition } from '../scenario/DoneCondition.ts';
import type { LogEntry } from './LogEntry.ts';
import type { SittingPhase } from './SittingView.ts';

/** What a condition is judged on. Counts run from the moment the step became the current one. */
export interface StepFacts {
  readonly observation: Observation;
  readonly phase: SittingPhase;
  readonly log: readonly LogEntry[];
  readonly since: Tick;
  readonly clicksOn: number;
  readonly vacuumCycles: number;
  readonly heldSeconds: number;
}

export const gaugeInHg = (seen: Observation): number => paToInHg(seen.gauge.needleKPa * 1000);

const PHASES: readonly SittingPhase[] = ['work-order', 'bench', 'repair', 'closed'];

/** Whether every part of the condition holds at this moment. */
export function conditionHolds(done: DoneCondition, facts: StepFacts): boolean {
  return (Object.keys(done) as (keyof DoneCondition)[]).every((key) => partHolds(key, done, facts));
}

function partHolds(key: keyof DoneCondition, done: DoneCondition, facts: StepFacts): boolean {
  const seen = facts.observation;
  const { display } = seen.meter;
  switch (key) {
    case 'phase':
      return done.phase === undefined || PHASES.indexOf(facts.phase) >= PHASES.indexOf(done.phase);
    case 'key':
      return seen.key === done.key;
    case 'plug':
      return seen.plug.mated === (done.plug === 'mated');
    case 'meter-on':
      return seen.meter.function === done['meter-on'];
    case 'meter-volts':
      return (
        seen.meter.function === 'volts-dc' && display.settled && within(display.value, done['meter-volts'])
      );
    case 'meter-ohms':
      if (seen.meter.function !== 'ohms' && seen.meter.function !== 'continuity') return false;
      return display.settled && within(display.value ?? Number.POSITIVE_INFINITY, done['meter-ohms']);
    case 'leads-on':
      return leadsOn(done['leads-on'] ?? [], seen);
    case 'leads-off':
      return (done['leads-off'] ?? []).every((end: LeadEnd) => seen.leads[end] === null);
    case 'pins-in':
      return (done['pins-in'] ?? []).every((cavity) => seen.plug.pins[cavity - 1] === true);
    case 'pins-out':
      return seen.plug.pins.every((pin) => !pin);
    case 'fitted':
      return (done.fitted ?? []).every(({ item, site }) => seen.sites[site] === item);
    case 'taken-off':
      return (done['taken-off'] ?? []).every((item) => !Object.values(seen.sites).includes(item));
    case 'clamped':
      return (done.clamped ?? []).every(({ port, setting }) => seen.clamps[port] === setting);
    case 'gauge-above-inhg':
      return gaugeInHg(seen) >= (done['gauge-above-inhg'] ?? 0);
    case 'gauge-below-inhg':
      return gaugeInHg(seen) <= (done['gauge-below-inhg'] ?? 0);
    case 'release':
      return seen.handPump.releaseOpen === (done.release === 'open');
    case 'jumper':
      return seen.jumper.switchedOn === (done.jumper === 'on');
    case 'solenoid':
      return seen.reader.command === done.solenoid;
    case 'clicks':
      return facts.clicksOn >= (done.clicks ?? 0);
    case 'vacuum-cycles':
      return facts.vacuumCycles >= (done['vacuum-cycles']?.times ?? 0);
    case 'held-seconds':
      return facts.heldSeconds >= (done['held-seconds'] ?? 0);
    case 'logged':
      return loggedHolds(done.logged, facts);
    case 'verdict':
      return facts.phase === 'repair' || facts.phase === 'closed';
    case 'renewed':
      return done.renewed !== undefined && seen.renewed.includes(done.renewed);
    default:
      return unreachable(key);
  }
}

function within(value: number | null, band: DoneCondition['meter-volts']): boolean {
  if (value === null || band === undefined) return false;
  return (
    value >= (band.above ?? Number.NEGATIVE_INFINITY) && value <= (band.below ?? Number.POSITIVE_INFINITY)
  );
}

function loggedHolds(wanted: DoneCondition['logged'], facts: StepFacts): boolean {
  if (wanted === undefined) return false;
  const fitting = facts.log.filter(({ tick, seen, heard }) => {
    if (tick < facts.since) return false;
    if (wanted.function !== undefined && seen.meter.function !== wanted.function) return false;
    if (wanted.red !== undefined && seen.leads['meter-red'] !== wanted.red) return false;
    if (wanted.black !== undefined && seen.leads['meter-black'] !== wanted.black) return false;
    if (wanted['gauge-above-inhg'] !== undefined && gaugeInHg(seen) < wanted['gauge-above-inhg'])
      return false;
    if (wanted['gauge-below-inhg'] !== undefined && gaugeInHg(seen) > wanted['gauge-below-inhg'])
      return false;
    if (wanted['clicks-heard'] !== undefined && heard.clicksOn < wanted['clicks-heard']) return false;
    return true;
  });
  return fitting.length >= (wanted.times ?? 1);
}

const OTHER_END: Readonly<Partial<Record<LeadEnd, LeadEnd>>> = { 'plain-a': 'plain-b', 'plain-b': 'plain-a' };

/** Every lead where it is asked for. The plain lead's ends are alike, so it may lie either way round. */
function leadsOn(asked: NonNullable<DoneCondition['leads-on']>, seen: Observation): boolean {
  const asAsked = asked.every(({ end, point }) => seen.leads[end] === point);
  return asAsked || asked.every(({ end, point }) => seen.leads[OTHER_END[end] ?? end] === point);
}
