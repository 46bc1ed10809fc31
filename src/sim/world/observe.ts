import type { AirVolume } from '../rigs/airVolumes.ts';
import { ventStandsShut } from '../rigs/UnitAir.ts';
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
    renewed: before?.renewed ?? [...bench.renewed],
    findings: [...state.findings],
    happenings: [...state.happenings],
    lastFinding,
    lastHappening,
  };
}

/** What an instrument, an eye or an ear could know at the present tick. */
export function observeRig(rig: Rig, steady: SteadySight): Observation {
  const { state, circuit } = rig;
  const { bench } = state;
  return {
    tick: state.tick,
    key: bench.key,
    fuse: {
      fitted: bench.fuseFitted,
      element: bench.fuseFitted ? 'unseen' : circuit.truckFuse.melted ? 'melted' : 'whole',
    },
    plug: { mated: bench.plugMated, pins: steady.pins },
    leads: steady.leads,
    jumper: { switchedOn: bench.jumperOn, fuse: circuit.jumperFuse.melted ? 'melted' : 'whole' },
    sites: steady.sites,
    clamps: steady.clamps,
    handPump: {
      handle: handleAt(rig, state.tick),
      moving: bench.handle.mode !== 'still',
      releaseOpen: bench.releaseOpen,
    },
    gauge: { needleKPa: gaugePa(rig) / 1000, steady: gaugeIsSteady(rig) },
    meter: observeMeter(rig),
    reader: readController(rig),
    dashLamp: dashLampLit(rig),
    miles: bench.miles,
    lastDrive: state.lastDrive,
    testLamp: { glow: circuit.lampGlow },
    ledTester: { lit: circuit.ledLit },
    supply: supplyOf(rig),
    bleed: bench.bleed,
    manometer: manometerOf(rig),
    smoke: smokeOf(rig),
    unit: bench.unit,
    wiggling: bench.wiggle?.at ?? null,
    findings: steady.findings,
    happenings: steady.happenings,
    renewed: steady.renewed,
  };
}

/** What the bench supply's own meters show. */
function supplyOf({ circuit, state }: Rig): Observation['supply'] {
  const { volts, deliveredAmps, limiting } = circuit.tools.supply;
  const on = state.bench.supplyOn;
  return { on, volts: on ? volts : 0, amps: deliveredAmps, limiting };
}

/** The water manometer as it is read. */
function manometerOf(rig: Rig): Observation['manometer'] {
  const pa = manometerPa(rig);
  return { kPa: pa === null ? null : pa / 1000, steady: manometerIsSteady(rig) };
}

/** The smoke machine's own gauges, and where its smoke comes out. */
function smokeOf(rig: Rig): Observation['smoke'] {
  const { smoke } = rig.state.bench;
  const { pa, flow } = smokeGauges(rig);
  const seenAt = [...rig.state.smokeSeenAt];
  return { gas: smoke.gas, setKPa: smoke.pa / 1000, gaugeKPa: pa / 1000, flow, seenAt };
}

/** The inside of the unit and the truth of the circuit, for walkthroughs and the debrief. */
export function insideRig(rig: Rig): InsideObservation {
  const { bench } = rig.state;
  const { air, circuit, parameters } = rig;
  const share = shareAtTick(rig, rig.state.tick);
  const kPa = (name: AirVolume): number => air.vacuum(name, share) / 1000;
  const closed = switchIsClosed(parameters, bench);
  return {
    plunger: bench.plunger,
    ventSeat: ventStandsShut(bench, parameters) ? 'shut' : 'open',
    vacuumSwitch: closed ? 'closed' : 'open',
    coilAmps: circuit.coil.amps,
    senseVolts: circuit.volts('cavity-3-back'),
    canisterKPa: kPa('canister'),
    airKPa: kPa('air'),
    driveKPa: kPa('drive'),
    delayKPa: kPa('delay'),
    pumpKPa: kPa('pump'),
    diaphragmTravel: air.diaphragmTravel(share),
  };
}
