import { secondsToTicks, type Tick } from '../../base/ticks.ts';
import { driverTable } from '../devices/modes/driver.ts';
import type { FuseName } from '../rigs/BenchCircuit.ts';
import { wakeElectrical } from './electricalPace.ts';
import { worseBy } from './growingDamage.ts';
import type { HappeningKind, HappeningPlace } from './Observation.ts';
import { watchCoil } from './plungerMotion.ts';
import type { Rig } from './Rig.ts';
import { NEVER } from './WorldState.ts';

/** What is heard or seen when each of them parts. The truck's fuse parts unheard in its box. */
const PARTS_WITH: Readonly<Record<FuseName, readonly HappeningKind[]>> = {
  truck: [],
  jumper: ['fuse-pop'],
  milliamp: ['fuse-pop'],
  amp: ['fuse-pop'],
  'plain-lead': ['lead-burnt', 'spark'],
};
/** Where that is. */
const PARTED_AT: Readonly<Record<Exclude<FuseName, 'plain-lead'>, HappeningPlace>> = {
  truck: 'fuse',
  jumper: 'jumper',
  milliamp: 'milliamps-jack',
  amp: 'amps-jack',
};
const FUSE_NAMES = Object.keys(PARTS_WITH) as FuseName[];

/** An arc of less is not seen, amps. Common practice, no source. */
const ARC_SEEN_AMPS = 0.01;
/** A tip that takes up more than this on touching sparks, amps. Common practice, no source. */
const TOUCH_SPARKS_AMPS = 5;
/** An arc belongs to the contact that opened so long before, and two sparks so close are seen as one. */
const ARC_TICKS: Tick = secondsToTicks(0.01);
const ARC_BURNS_BY = 0.05;
/** Voltage over a closed contact at which silver melts under it. Source: Holm, Electric Contacts, from memory. */
const SILVER_MELTS_VOLTS = 0.37;

/** Looks, after each step of the circuit, for what the step has set off: modes changed, things melted, damage done. */
export function watchElectrical(rig: Rig, tick: Tick): void {
  watchCoil(rig, tick);
  watchDriver(rig);
  watchTouch(rig, tick);
  watchFuses(rig, tick);
  watchArc(rig, tick);
  watchSwitchContact(rig);
  watchSenseInput(rig);
}

/** A driver in its limit latches off until the key is turned off. A shorted one has no limit. */
function watchDriver(rig: Rig): void {
  const { state } = rig;
  if (state.bench.driver !== 'on' || !rig.circuit.driverLimits) return;
  state.bench.driver = driverTable.next(state.bench.driver, 'OVERLOAD');
  state.deadlines.pulse = NEVER;
  rig.sync();
  wakeElectrical(state);
}

function watchFuses(rig: Rig, tick: Tick): void {
  const { state, circuit } = rig;
  for (const name of FUSE_NAMES) {
    if (!circuit.fuses[name].melted || state.seenMelted[name]) continue;
    state.seenMelted[name] = true;
    for (const kind of PARTS_WITH[name]) rig.happen(kind, partedAt(rig, name), tick);
    if (name === 'plain-lead') rig.damage('plain-lead-burnt', 0);
    wakeElectrical(state);
  }
}

/** The plain lead burns through where it was last laid, which is where its spark is seen. */
function partedAt({ state }: Rig, name: FuseName): HappeningPlace {
  if (name !== 'plain-lead') return PARTED_AT[name];
  const ends = [state.bench.leads['plain-a'], state.bench.leads['plain-b']];
  const last = state.lastContact?.at;
  return ends.find((point) => point === last) ?? ends.find((point) => point !== null) ?? 'battery-positive';
}

/** A tip laid on a short sparks as it touches. */
function watchTouch(rig: Rig, tick: Tick): void {
  const { state } = rig;
  if (state.touched === null) return;
  if (Math.abs(rig.circuit.ampsThrough(state.touched)) > TOUCH_SPARKS_AMPS)
    spark(rig, state.bench.leads[state.touched], tick);
  state.touched = null;
}

/** Sparks close together are seen as one. */
function spark(rig: Rig, at: HappeningPlace | null, tick: Tick): void {
  const { happenings } = rig.state;
  const seen = happenings.some((one) => one.kind === 'spark' && one.tick >= tick - ARC_TICKS);
  if (!seen) rig.happen('spark', at, tick);
}

/** The spark over whatever opened the coil's circuit; in the jumper's own switch it burns the contacts. */
function watchArc(rig: Rig, tick: Tick): void {
  const { state } = rig;
  if (rig.circuit.arcAmps < ARC_SEEN_AMPS) return;
  spark(rig, openedAt(rig, tick), tick);
  if (state.jumperBrokeAt === null || tick - state.jumperBrokeAt > ARC_TICKS) return;
  state.jumperBrokeAt = null;
  rig.damage('jumper-contacts-burnt', worseBy(state.bench, 'jumper-contacts-burnt', ARC_BURNS_BY));
}

/** What has just opened: the contact a hand moved, or a loose one in the harness that is being moved. */
function openedAt({ state }: Rig, tick: Tick): HappeningPlace | null {
  const { lastContact, bench } = state;
  if (lastContact !== null && tick - lastContact.tick <= ARC_TICKS) return lastContact.at;
  return bench.wiggle?.at ?? null;
}

/**
 * The vacuum switch's contact welds at its making current while it makes or bounces. Once closed it bears more: until
 * the volts over it melt silver.
 */
function watchSwitchContact(rig: Rig): void {
  const { parameters, state } = rig;
  const amps = rig.circuit.switchAmps;
  if (amps <= parameters.switchWeldsAmps || parameters.switchStuckClosed === 1) return;
  const makes = state.bench.vacuumSwitch === 'bouncing';
  if (makes || amps * parameters.switchOhms > SILVER_MELTS_VOLTS) rig.damage('switch-stuck-closed', 0);
}

function watchSenseInput(rig: Rig): void {
  const volts = Math.abs(rig.circuit.volts('controller-sense'));
  if (volts > rig.parameters.senseSurvivesVolts) rig.damage('sense-input-damaged', 1);
}
