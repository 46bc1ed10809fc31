import { ohmsPerMetre } from '../components/Wire.ts';

/**
 * Every number of the demonstration rig that a fault or a tolerance may change. SI units; the unit stands in the
 * name's ending or beside it. A flag is 0 or 1. Values are the nominal ones of the rig's service data.
 */
export const NOMINAL = {
  batteryVolts: 12.66,
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

  coilOhmsAt20C: 32,
  coilSeriesOhms: 0,
  coilHenriesOut: 0.07,
  coilHenriesSeated: 0.11,
  coilCoreLossOhms: 2200,
  arcVolts: 300,
  pullInAmps: 0.19,
  dropOutAmps: 0.07,
  plungerTravelSeconds: 0.008,
  plungerStuckAtRest: 0,
  /** Chance that one trial finds the plunger stuck. */
  plungerStickChance: 0,

  senseRailVolts: 9.1,
  railHeadroomVolts: 0.7,
  sensePullUpOhms: 2200,
  senseDividerOhms: 110_000,

  switchOhms: 0.08,
  switchBounceSeconds: 0.002,
  switchStuckOpen: 0,
  switchStuckClosed: 0,
  tripPa: 2500,
  differentialPa: 600,

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
  ventSeatLeakM: 0,
  handPumpSealLeakM: 0,
  looseJointLeakM: 0.6e-3,
  crackedBarbLeakM: 0.8e-3,

  meterLeadOhms: 0.1,
  meterLeadBroken: 0,
  jumperOhms: 0.03,
  jumperFuseAmps: 3,
  jumperFuseOhms: 0.03,
  plainLeadOhms: 0.02,
  /** Gain errors of the instruments, as a share of reading. */
  meterVoltsGain: 0,
  meterOhmsGain: 0,
  gaugeGain: 0,
};

export type ParameterName = keyof typeof NOMINAL;
export type RigParameters = Record<ParameterName, number>;

export function nominalParameters(): RigParameters {
  return { ...NOMINAL };
}
