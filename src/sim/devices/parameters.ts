import { ohmsPerMetre } from '../components/Wire.ts';

/**
 * Every number of a rig that a fault or a tolerance may change. SI units; the unit stands in the name's ending or beside
 * it. A flag is 0 or 1. Values are the nominal ones of the leak detection pump's service data; another rig gives its own
 * where they differ, and leaves alone what it has no use for.
 */
export const NOMINAL = {
  /** Open-circuit volts at full charge; the share of charge lowers them. */
  batteryVolts: 12.66,
  batteryCharge: 1,
  runningVolts: 14.2,
  batteryOhms: 0.008,
  supplyPathOhms: 0.02,
  keyContactOhms: 0.01,
  fuseRatingAmps: 10,
  fuseOhms: 0.0077,
  fuseBlown: 0,
  chassisStrapOhms: 0.001,

  driverOhms: 0.25,
  driverLimitAmps: 3,
  driverBiasVolts: 5.8,
  driverBiasOhms: 33_000,
  driverClampVolts: 40,
  driverDead: 0,
  driverStuckOn: 0,

  terminalOhms: 0.004,
  /** 3.5 m of 0.5 mm². */
  feedWireOhms: 3.5 * ohmsPerMetre(0.5),
  /** 1.2 m of 0.5 mm², plug to splice. */
  groundWireOhms: 1.2 * ohmsPerMetre(0.5),
  /** 0.3 m of 0.5 mm², splice to chassis stud. */
  spliceWireOhms: 0.3 * ohmsPerMetre(0.5),
  /** 3.5 m of 0.35 mm². */
  senseWireOhms: 3.5 * ohmsPerMetre(0.35),
  feedToGroundOhms: 1e12,
  senseToGroundOhms: 1e12,
  feedToBatteryOhms: 1e12,
  senseToBatteryOhms: 1e12,
  /** Moisture between neighbouring cavities. */
  bridge12Ohms: 1e12,
  bridge23Ohms: 1e12,
  /** How far a harness terminal is spread: 0 grips, 1 hardly touches and opens when the harness moves. */
  spread1: 0,
  spread2: 0,
  spread3: 0,
  /** Pierced insulation, as a leak from the wire to chassis. */
  pierce1Ohms: 1e12,
  pierce2Ohms: 1e12,
  pierce3Ohms: 1e12,
  /** 1 while corrosion shows green at the plug. */
  plugCorroded: 0,

  coilOhmsAt20C: 32,
  coilSeriesOhms: 0,
  /** Share of the winding that is shorted out. */
  shortedTurnsShare: 0,
  coilHenriesOut: 0.07,
  coilHenriesSeated: 0.11,
  coilCoreLossOhms: 2200,
  arcVolts: 300,
  pullInAmps: 0.19,
  dropOutAmps: 0.07,
  plungerTravelSeconds: 0.008,
  plungerStuckAtRest: 0,
  plungerStuckDrawn: 0,
  /** Chance that one trial finds the plunger stuck. */
  plungerStickChance: 0,

  senseRailVolts: 9.1,
  railHeadroomVolts: 0.7,
  sensePullUpOhms: 2200,
  senseDividerOhms: 110_000,
  senseSurvivesVolts: 24,

  switchOhms: 0.08,
  switchBounceSeconds: 0.002,
  /** A fine bore damps the capsule: vacuum must stand past a point for so long before the contact follows. */
  switchDampingSeconds: 0.12,
  switchStuckOpen: 0,
  switchStuckClosed: 0,
  /** Chance that the contact fails to make on one trip. */
  switchMissChance: 0,
  switchWeldsAmps: 1,
  tripPa: 2500,
  differentialPa: 600,
  /** A switch on a lever: share of the lever's full travel at which it closes going, and opens coming back. */
  leverTripShare: 0.92,
  leverResetShare: 0.8,
  /** Share of its travel at which a lever stops, driven or let go. */
  leverReachShare: 1,

  canisterPassageM3: 12e-6,
  airPassageM3: 10e-6,
  enginePassageM3: 3e-6,
  driveChamberM3: 26e-6,
  pumpChamberM3: 4e-6,
  delayChamberM3: 8e-6,
  canisterHoseM3: 40e-6,
  airHoseM3: 60e-6,
  engineHoseM3: 10e-6,
  canisterM3: 2.6e-3,
  tankM3: 75e-3,
  reservoirM3: 0.3e-3,
  /** The hand pump's 50 mL counts its cylinder half drawn (8 mL), so the hose and gauge alone hold 42 mL. */
  pumpHoseM3: 42e-6,
  pumpDeadM3: 0.3e-6,
  pumpStrokeM3: 16e-6,

  portM: 8e-3,
  enginePortM: 4e-3,
  ventSeatM: 7e-3,
  solenoidValveM: 1.6e-3,
  pumpCheckM: 3e-3,
  pumpCheckCrackPa: 150,
  delayCheckM: 1e-3,
  delayCheckCrackPa: 100,
  delayBleedM: 0.1e-3,
  ventShutPa: 8000,
  ventOpenPa: 6000,
  diaphragmM2: 9e-4,
  diaphragmTravelM: 22e-3,
  diaphragmPreloadN: 9,
  diaphragmNPerM: 250,
  handPumpCheckM: 2.5e-3,
  handPumpCheckCrackPa: 100,
  releaseM: 1.5e-3,
  filterM: 8e-3,
  engineVacuumPa: 57_000,
  tankReliefPa: 4000,
  /** Every truck seeps a little, inside its limit. */
  seepM: 0.2e-3,
  capsuleLeakM: 0,
  /** Vacuum on the canister port above which the capsule tears. */
  capsuleTearsPa: 22 * 3386.389,
  ventSeatLeakM: 0,
  ventStuckShut: 0,
  ventStuckOpen: 0,
  delayCheckLeakM: 0,
  inletCheckLeakM: 0,
  outletCheckLeakM: 0,
  solenoidValveLeakM: 0,
  diaphragmLeakM: 0,
  bodyCrackM: 0,
  canisterHoseSplitM: 0,
  /** 1 while the canister hose lies off its barb at the canister. */
  canisterHoseOff: 0,
  airHoseM: 8e-3,
  engineHoseM: 4e-3,
  engineHoseLeakM: 0,
  fillerCapLeakM: 0,
  canisterCrackM: 0,
  tankSealLeakM: 0,
  purgeLeakM: 0,
  /** Root causes that the eye can find and that spoil a new part again. */
  charcoalInHose: 0,
  waterInFilter: 0,
  fuelInCanister: 0,
  handPumpSealLeakM: 0,
  /** Friction of the gauge's needle. */
  gaugeStickPa: 0,

  jarM3: 1e-3,
  jarHoseM3: 8e-6,
  bleedM: 0.4e-3,
  manometerM3: 15e-6,
  smokeHoseM3: 30e-6,
  smokeSupplyM: 1.2e-3,
  /** Gauge pressure above which the canister's shell or the tank's seam gives way. */
  canisterBurstsPa: 7000,

  looseJointLeakM: 0.6e-3,
  crackedBarbLeakM: 0.8e-3,

  meterLeadOhms: 0.1,
  meterLeadBroken: 0,
  meterMilliampFuseBlown: 0,
  meterAmpFuseBlown: 0,
  /** Charge of the meter's own battery, 0 to 1; below 0.25 it shows its sign and reads high. */
  meterBattery: 1,
  jumperOhms: 0.03,
  jumperFuseAmps: 3,
  jumperFuseOhms: 0.03,
  jumperFuseBlown: 0,
  plainLeadBurnt: 0,
  supplyVolts: 12,
  supplyLimitAmps: 3,
  supplyOhms: 0.02,
  plainLeadOhms: 0.02,
  /** The meter's own error in each kind of function, as a share of its accuracy bound, −1 to 1. */
  meterVoltsError: 0,
  meterAcError: 0,
  meterOhmsError: 0,
  meterAmpsError: 0,
  /** Gain error of the hand pump's gauge, as a share of reading. */
  gaugeGain: 0,
};

export type ParameterName = keyof typeof NOMINAL;
export type RigParameters = Record<ParameterName, number>;

/** A rig's nominal parameters: those of the list, but for what it has otherwise. */
export function nominalParameters(own: Partial<RigParameters> = {}): RigParameters {
  return { ...NOMINAL, ...own };
}
