import type { BenchState } from '../devices/BenchState.ts';
import type { UnitPort } from '../devices/places.ts';
import type { AirVolume } from '../rigs/airVolumes.ts';
import { switchIsClosed } from '../rigs/unitParts.ts';
import { gaugeIsSteady, gaugePa, manometerIsSteady, manometerPa, smokeGauges } from './airInstruments.ts';
import { shareAtTick } from './airSteps.ts';
import { handleAt } from './handleMotion.ts';
import type { InsideObservation, Observation } from './Observation.ts';
import { observeMeter } from './observeMeter.ts';
import type { Rig } from './Rig.ts';
import { dashLampLit, readController } from './readController.ts';

/** What only an action changes, and what comes one by one: copied once and shared by all observations until then. */
export interface SteadySight {
  readonly pins: Observation['plug']['pins'];
  readonly leads: Observation['leads'];
  readonly sites: Observation['sites'];
  readonly clamps: Observation['clamps'];
  readonly cracked: Observation['cracked'];
  readonly renewed: Observation['renewed'];
  readonly findings: Observation['findings'];
  readonly happenings: Observation['happenings'];
  readonly lastFinding: number;
  readonly lastHappening: number;
}

/** `before` is the steady sight since the last action, null when there is none; it is given back where it still holds. */
export function steadySight({ state }: Rig, before: SteadySight | null): SteadySight {
  const { bench, lastFinding, lastHappening } = state;
  if (before?.lastFinding === lastFinding && before.lastHappening === lastHappening) return before;
  return {
    pins: before?.pins ?? [...bench.pins],
    leads: before?.leads ?? { ...bench.leads },
    sites: before?.sites ?? { ...bench.sites },
    clamps: before?.clamps ?? { ...bench.clamps },
    cracked: before?.cracked ?? cracksSeen(bench),
    renewed: before?.renewed ?? [...bench.renewed],
    findings: [...state.findings],
    happenings: [...state.happenings],
    lastFinding,
    lastHappening,
  };
}

function cracksSeen({ cracked, sites }: BenchState): Observation['cracked'] {
  const seen = (port: UnitPort): boolean => cracked[port] && sites[port] === null;
  return {
    'canister-port': seen('canister-port'),
    'air-port': seen('air-port'),
    'engine-port': seen('engine-port'),
  };
}

/**
 * What an instrument, an eye or an ear could know at the present tick. Whatever stands as it stood in the observation
 * `before` is the same object again.
 */
export function observeRig(rig: Rig, steady: SteadySight, before: Observation | null): Observation {
  const { state, circuit } = rig;
  const { bench } = state;
  return {
    tick: state.tick,
    key: bench.key,
    fuse: fuseOf(rig, before?.fuse),
    plug: plugOf(rig, steady, before?.plug),
    leads: steady.leads,
    jumper: jumperOf(rig, before?.jumper),
    sites: steady.sites,
    clamps: steady.clamps,
    cracked: steady.cracked,
    handPump: handPumpOf(rig, before?.handPump),
    gauge: gaugeOf(rig, before?.gauge),
    meter: observeMeter(rig, before?.meter),
    reader: readController(rig, before?.reader),
    dashLamp: dashLampLit(rig),
    miles: bench.miles,
    lastDrive: state.lastDrive,
    testLamp: before?.testLamp.glow === circuit.lampGlow ? before.testLamp : { glow: circuit.lampGlow },
    ledTester: before?.ledTester.lit === circuit.ledLit ? before.ledTester : { lit: circuit.ledLit },
    supply: supplyOf(rig, before?.supply),
    bleed: bench.bleed,
    manometer: manometerOf(rig, before?.manometer),
    smoke: smokeOf(rig, before?.smoke),
    unit: bench.unit,
    surface: rig.definition.surface,
    wiggling: bench.wiggle?.at ?? null,
    findings: steady.findings,
    happenings: steady.happenings,
    renewed: steady.renewed,
  };
}

type Seen<Name extends keyof Observation> = Observation[Name] | undefined;

function fuseOf({ state, circuit }: Rig, before: Seen<'fuse'>): Observation['fuse'] {
  const fitted = state.bench.fuseFitted;
  const element = fitted ? 'unseen' : circuit.truckFuse.melted ? 'melted' : 'whole';
  return before?.fitted === fitted && before.element === element ? before : { fitted, element };
}

function plugOf({ state }: Rig, { pins }: SteadySight, before: Seen<'plug'>): Observation['plug'] {
  const mated = state.bench.plugMated;
  return before?.mated === mated && before.pins === pins ? before : { mated, pins };
}

function jumperOf({ state, circuit }: Rig, before: Seen<'jumper'>): Observation['jumper'] {
  const switchedOn = state.bench.jumperOn;
  const fuse = circuit.jumperFuse.melted ? 'melted' : 'whole';
  return before?.switchedOn === switchedOn && before.fuse === fuse ? before : { switchedOn, fuse };
}

function handPumpOf(rig: Rig, before: Seen<'handPump'>): Observation['handPump'] {
  const { bench, tick } = rig.state;
  const handle = handleAt(rig, tick);
  const moving = bench.handle.mode !== 'still';
  const { releaseOpen } = bench;
  const still = before?.handle === handle && before.moving === moving && before.releaseOpen === releaseOpen;
  return still ? before : { handle, moving, releaseOpen };
}

function gaugeOf(rig: Rig, before: Seen<'gauge'>): Observation['gauge'] {
  const pa = gaugePa(rig);
  const needleKPa = pa / 1000;
  const steady = gaugeIsSteady(rig, pa);
  return before?.needleKPa === needleKPa && before.steady === steady ? before : { needleKPa, steady };
}

/** What the bench supply's own meters show. */
function supplyOf({ circuit, state }: Rig, before: Seen<'supply'>): Observation['supply'] {
  const { supply } = circuit.tools;
  const { deliveredAmps: amps, limiting } = supply;
  const on = state.bench.supplyOn;
  const volts = on ? supply.volts : 0;
  const still =
    before?.on === on && before.volts === volts && before.amps === amps && before.limiting === limiting;
  return still ? before : { on, volts, amps, limiting };
}

/** The water manometer as it is read. */
function manometerOf(rig: Rig, before: Seen<'manometer'>): Observation['manometer'] {
  const pa = manometerPa(rig);
  const kPa = pa === null ? null : pa / 1000;
  const steady = manometerIsSteady(rig);
  return before?.kPa === kPa && before.steady === steady ? before : { kPa, steady };
}

/** The smoke machine's own gauges, and where its smoke comes out. */
function smokeOf(rig: Rig, before: Seen<'smoke'>): Observation['smoke'] {
  const { gas, pa: setPa } = rig.state.bench.smoke;
  const { pa, flow } = smokeGauges(rig);
  const setKPa = setPa / 1000;
  const gaugeKPa = pa / 1000;
  const { smokeSeenAt } = rig.state;
  const still =
    before?.gas === gas && before.setKPa === setKPa && before.gaugeKPa === gaugeKPa && before.flow === flow;
  if (still && smokeSeenAt.length === 0 && before.seenAt.length === 0) return before;
  return { gas, setKPa, gaugeKPa, flow, seenAt: [...smokeSeenAt] };
}

/** The inside of the unit and the truth of the circuit, for walkthroughs and the debrief. */
export function insideRig(rig: Rig): InsideObservation {
  const { bench } = rig.state;
  const { air, circuit, parameters } = rig;
  const share = shareAtTick(rig, rig.state.tick);
  const kPa = (name: AirVolume): number => (air.has(name) ? air.vacuum(name, share) / 1000 : 0);
  return {
    plunger: bench.plunger,
    vacuumSwitch: switchIsClosed(parameters, bench) ? 'closed' : 'open',
    ...air.valves(bench, share),
    coilAmps: circuit.coil.amps,
    senseVolts: circuit.volts('cavity-3-back'),
    switchSideKPa: kPa(rig.definition.air.switchSide),
    canisterKPa: kPa('canister'),
    airKPa: kPa('air'),
    engineKPa: kPa('engine'),
    driveKPa: kPa('drive'),
    delayKPa: kPa('delay'),
    pumpKPa: kPa('pump'),
    canKPa: kPa('can'),
    diaphragmTravel: air.unitTravel(share),
  };
}
