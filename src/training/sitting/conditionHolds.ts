import { unreachable } from '../../base/assert.ts';
import type { Tick } from '../../base/ticks.ts';
import { paToInH2O, paToInHg } from '../../base/units.ts';
import type { LeadEnd } from '../../sim/devices/places.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { DoneCondition } from '../scenario/DoneCondition.ts';
import type { EntrySubject, LogEntry } from './LogEntry.ts';
import type { SittingPhase, SittingView } from './SittingView.ts';

/** What a condition is judged on. Counts run from the moment the step became the current one. */
export interface StepFacts extends Pick<SittingView, 'phase' | 'log' | 'verdict' | 'marks' | 'coachAsked'> {
  readonly observation: Observation;
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
      return readsVolts(seen, done['meter-volts']);
    case 'meter-ohms':
      return readsOhms(seen, done['meter-ohms']);
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
    case 'unit':
      return seen.unit === done.unit;
    case 'jack':
      return seen.meter.jack === done.jack;
    case 'supply':
      return seen.supply.on === (done.supply === 'on');
    case 'lamp':
      return seen.testLamp.glow >= LIT_FROM === (done.lamp === 'lit');
    case 'manometer-above-inh2o':
      return (waterColumn(seen) ?? Number.NEGATIVE_INFINITY) >= (done['manometer-above-inh2o'] ?? 0);
    case 'manometer-below-inh2o':
      return (waterColumn(seen) ?? Number.POSITIVE_INFINITY) <= (done['manometer-below-inh2o'] ?? 0);
    case 'smoke-at':
      return (done['smoke-at'] ?? []).every((place) => seen.smoke.seenAt.includes(place));
    case 'found':
      return foundHolds(done.found, facts);
    case 'looked-into':
      return done['looked-into'] !== undefined && lookedInto(done['looked-into'], facts);
    case 'moved':
      return seen.wiggling === done.moved;
    case 'codes':
      return seen.reader.awake && seen.reader.codes.every(({ status }) => status === 'permanent');
    case 'monitor':
      return monitorPassed(facts);
    case 'coach-asked':
      return coachAsked(done['coach-asked'] ?? 'question', facts);
    case 'marked':
      return (done.marked ?? []).every((wanted) =>
        facts.marks.some(
          ({ item, mark, cites }) => item === wanted.item && mark === wanted.mark && cites.length > 0,
        ),
      );
    case 'codes-read':
      return entriesOf('codes', facts).length > 0;
    case 'driven':
      return cyclesDriven(facts) >= (done.driven ?? 0);
    case 'verdict':
      return facts.verdict !== null;
    case 'named':
      return namedHolds(done.named, facts);
    case 'renewed':
      return done.renewed !== undefined && seen.renewed.includes(done.renewed);
    default:
      return unreachable(key);
  }
}

function readsVolts({ meter }: Observation, band: DoneCondition['meter-volts']): boolean {
  return meter.function === 'volts-dc' && meter.display.settled && within(meter.display.value, band);
}

function readsOhms({ meter }: Observation, band: DoneCondition['meter-ohms']): boolean {
  if (meter.function !== 'ohms' && meter.function !== 'continuity') return false;
  return meter.display.settled && within(meter.display.value ?? Number.POSITIVE_INFINITY, band);
}

function within(value: number | null, band: DoneCondition['meter-volts']): boolean {
  if (value === null || band === undefined) return false;
  return (
    value >= (band.above ?? Number.NEGATIVE_INFINITY) && value <= (band.below ?? Number.POSITIVE_INFINITY)
  );
}

/** Brightness from which a lamp is called lit: as dim as an eye still sees. Common practice, no source. */
const LIT_FROM = 0.02;

function waterColumn({ manometer }: Observation): number | null {
  return manometer.kPa === null ? null : paToInH2O(manometer.kPa * 1000);
}

/** Entries that wrote themselves down since the step became the one to do. */
function entriesOf(about: EntrySubject, { log, since }: StepFacts): readonly LogEntry[] {
  return log.filter((entry) => entry.about === about && entry.tick >= since);
}

function foundHolds(wanted: DoneCondition['found'], facts: StepFacts): boolean {
  if (wanted === undefined) return false;
  return entriesOf('finding', facts).some(({ seen }) => {
    const finding = seen.findings.at(-1);
    if (finding?.at !== wanted.at) return false;
    return wanted.sign === undefined || finding.signs.includes(wanted.sign);
  });
}

const END_OF_HOSE = {
  'canister-hose': 'canister-hose-end',
  'air-hose': 'air-hose-end',
  'engine-hose': 'engine-hose-end',
} as const;

function lookedInto(hose: keyof typeof END_OF_HOSE, facts: StepFacts): boolean {
  return entriesOf('finding', facts).some(({ seen }) => {
    const finding = seen.findings.at(-1);
    if (finding?.how !== 'look' || finding.at !== hose) return false;
    return !Object.values(seen.sites).includes(hose) && seen.sites[END_OF_HOSE[hose]] === null;
  });
}

function monitorPassed(facts: StepFacts): boolean {
  const cycles = entriesOf('drive', facts).at(-1)?.seen.lastDrive?.cycles ?? [];
  return cycles.filter(({ outcome }) => outcome !== 'not-run').at(-1)?.outcome === 'passed';
}

/** How far the coach may be asked, the least first. */
const DEPTHS = ['question', 'test', 'procedure'] as const;

function coachAsked(depth: (typeof DEPTHS)[number], { coachAsked: asked }: StepFacts): boolean {
  return DEPTHS.slice(DEPTHS.indexOf(depth)).some((deep) => asked[deep] > 0);
}

function namedHolds(wanted: DoneCondition['named'], { verdict }: StepFacts): boolean {
  if (wanted === undefined || verdict === null) return false;
  return verdict.item === wanted.item && (wanted.mode === undefined || verdict.mode === wanted.mode);
}

/** A verdict is given once: a step that asks for another one can never be done. */
export function isDecidedOtherwise({ named }: DoneCondition, facts: StepFacts): boolean {
  return named !== undefined && facts.verdict !== null && !namedHolds(named, facts);
}

function cyclesDriven(facts: StepFacts): number {
  return entriesOf('drive', facts).reduce((sum, { seen }) => sum + (seen.lastDrive?.cycles.length ?? 0), 0);
}

function loggedHolds(wanted: DoneCondition['logged'], facts: StepFacts): boolean {
  if (wanted === undefined) return false;
  const fitting = facts.log.filter(({ tick, about, seen, heard }) => {
    if (about !== 'reading' || tick < facts.since) return false;
    if (wanted.function !== undefined && seen.meter.function !== wanted.function) return false;
    if (wanted.red !== undefined && seen.leads['meter-red'] !== wanted.red) return false;
    if (wanted.black !== undefined && seen.leads['meter-black'] !== wanted.black) return false;
    if (wanted['meter-volts'] !== undefined && !readsVolts(seen, wanted['meter-volts'])) return false;
    if (wanted['meter-ohms'] !== undefined && !readsOhms(seen, wanted['meter-ohms'])) return false;
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
