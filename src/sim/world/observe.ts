import { displayOf } from '../devices/meter/display.ts';
import type { LeadPoint } from '../devices/places.ts';
import { handleAt } from './handleMotion.ts';
import type { InsideObservation, Observation, ReaderObservation } from './Observation.ts';
import type { Rig } from './Rig.ts';
import { gaugeIsSteady, gaugePa } from './readings.ts';

/** Sense thresholds of the controller, volts. */
const CLOSED_BELOW = 2;
const OPEN_ABOVE = 6;
const HIGH_ABOVE = 10;
const SENSE: LeadPoint = 'controller-sense';

/** What an instrument, an eye or an ear could know at the present tick. */
export function observeRig(rig: Rig): Observation {
  const { state, circuit } = rig;
  const { bench, meter } = state;
  return {
    tick: state.tick,
    key: bench.key,
    fuse: {
      fitted: bench.fuseFitted,
      element: bench.fuseFitted ? 'unseen' : circuit.truckFuse.melted ? 'melted' : 'whole',
    },
    plug: { mated: bench.plugMated, pins: [...bench.pins] },
    leads: { ...bench.leads },
    jumper: { switchedOn: bench.jumperOn, fuse: circuit.jumperFuse.melted ? 'melted' : 'whole' },
    sites: { ...bench.sites },
    clamps: { ...bench.clamps },
    handPump: {
      handle: handleAt(rig, state.tick),
      moving: bench.handle.mode !== 'still',
      releaseOpen: bench.releaseOpen,
    },
    gauge: { needleKPa: gaugePa(rig) / 1000, steady: gaugeIsSteady(rig) },
    meter: {
      function: bench.meterFunction,
      jack: bench.meterJack,
      heldRange: bench.meterRange,
      ranges: [],
      hold: bench.meterHold,
      extremes: bench.meterExtremes,
      relative: bench.meterRelative,
      batteryLow: false,
      display: displayOf(meter, bench.meterFunction),
      tone: meter.tone,
    },
    reader: readerOf(rig),
    dashLamp: bench.key !== 'off' && bench.controller.lamp,
    miles: bench.miles,
    lastDrive: state.lastDrive,
    testLamp: { glow: 0 },
    ledTester: { lit: 'dark' },
    supply: { on: bench.supplyOn, volts: 0, amps: 0, limiting: false },
    bleed: bench.bleed,
    manometer: { kPa: bench.waterLost ? null : 0, steady: true },
    smoke: { gas: bench.smoke.gas, setKPa: bench.smoke.pa / 1000, gaugeKPa: 0, flow: 0, seenAt: [] },
    unit: bench.unit,
    wiggling: bench.wiggle?.at ?? null,
    findings: [...state.findings],
    happenings: [...state.happenings],
    renewed: [...bench.renewed],
  };
}

function readerOf(rig: Rig): ReaderObservation {
  const { bench } = rig.state;
  if (bench.key === 'off')
    return {
      awake: false,
      senseVolts: null,
      senseState: null,
      command: 'off',
      driver: null,
      codes: [],
      freeze: [],
      monitor: null,
      fuelPercent: null,
    };
  // The controller's converter has steps of 0.01 V.
  const senseVolts = Math.floor(rig.circuit.volts(SENSE) * 100 + 0.5) / 100;
  return {
    awake: true,
    senseVolts,
    senseState: senseState(senseVolts),
    command: bench.command,
    driver: bench.driver,
    codes: [],
    freeze: [...bench.controller.freeze],
    monitor: { phase: 'waiting', seconds: 0, limitSeconds: null, complete: bench.controller.complete },
    fuelPercent: rig.spec.fuelLevel * 100,
  };
}

function senseState(volts: number): 'open' | 'closed' | 'implausible' | 'high' {
  if (volts < CLOSED_BELOW) return 'closed';
  if (volts > HIGH_ABOVE) return 'high';
  return volts > OPEN_ABOVE ? 'open' : 'implausible';
}

/** The inside of the unit and the truth of the circuit, for walkthroughs and the debrief. */
export function insideRig(rig: Rig): InsideObservation {
  const { bench } = rig.state;
  const { air, circuit, parameters } = rig;
  const kPa = (name: Parameters<typeof air.vacuum>[0]): number => air.vacuum(name) / 1000;
  const closed =
    parameters.switchStuckClosed === 1 || (bench.contactClosed && parameters.switchStuckOpen === 0);
  return {
    plunger: bench.plunger,
    ventSeat: bench.vent,
    vacuumSwitch: closed ? 'closed' : 'open',
    coilAmps: circuit.coil.amps,
    senseVolts: circuit.volts('cavity-3-back'),
    canisterKPa: kPa('canister'),
    airKPa: kPa('air'),
    driveKPa: kPa('drive'),
    delayKPa: kPa('delay'),
    pumpKPa: kPa('pump'),
    diaphragmTravel: air.diaphragmTravel,
  };
}
