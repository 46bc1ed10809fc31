import type { DriverMode } from '../modes/driver.ts';
import type { CircuitCodes } from './ControllerPlan.ts';
import type { TroubleCode } from './troubleCodes.ts';

/** Sense thresholds, volts. */
const CLOSED_BELOW = 2;
const OPEN_ABOVE = 6;
const HIGH_ABOVE = 10;

/** Feed thresholds while commanded off: the bias shows through an open circuit, the battery through a short to it. */
const FEED_BIAS_ABOVE = 2;
const FEED_HIGH_ABOVE = 7.5;
/** Commanded on, the feed stands at least at this share of battery voltage. */
const FEED_LOW_SHARE = 0.5;

/** Looks in a row that must agree before a circuit is called bad. */
const AGREEING_LOOKS = 2;
/** Two implausible looks this far apart set the code; after `FORGOTTEN_SECONDS` the first is forgotten. */
const IMPLAUSIBLE_SECONDS = 1;
const FORGOTTEN_SECONDS = 10;

export type SenseState = 'open' | 'closed' | 'implausible' | 'high';

export function senseStateOf(volts: number): SenseState {
  if (volts < CLOSED_BELOW) return 'closed';
  if (volts > HIGH_ABOVE) return 'high';
  return volts > OPEN_ABOVE ? 'open' : 'implausible';
}

/** What the controller's own inputs show at a look. */
export interface CircuitLook {
  readonly seconds: number;
  readonly driver: DriverMode;
  readonly feedVolts: number;
  readonly batteryVolts: number;
  readonly senseVolts: number;
}

/** What the looks so far have left undecided. Plain JSON. */
export interface CircuitTests {
  feedOpenLooks: number;
  feedHighLooks: number;
  feedLowLooks: number;
  senseHighLooks: number;
  /** When the sense was first seen implausible, seconds; null when it has not been lately. */
  implausibleSince: number | null;
}

export function freshCircuitTests(): CircuitTests {
  return { feedOpenLooks: 0, feedHighLooks: 0, feedLowLooks: 0, senseHighLooks: 0, implausibleSince: null };
}

/**
 * The continuous tests of the solenoid's feed and of the sense input. Changes `tests` in place and gives the codes that fail
 * now. A look is taken at least a quarter of a second after the last switching of the solenoid, so that no
 * kick of the coil is taken for a fault. A closed switch is no fault here: with the key on, anyone may pull vacuum on it.
 */
export function lookAtCircuits(tests: CircuitTests, look: CircuitLook, sets: CircuitCodes): TroubleCode[] {
  const { driver, feedVolts } = look;
  const codes: TroubleCode[] = [];
  const off = driver === 'off';
  const count = (was: number, fails: boolean): number => (fails ? Math.min(was + 1, AGREEING_LOOKS) : 0);
  if (off) {
    const high = feedVolts > FEED_HIGH_ABOVE;
    tests.feedHighLooks = count(tests.feedHighLooks, high);
    tests.feedOpenLooks = count(tests.feedOpenLooks, !high && feedVolts > FEED_BIAS_ABOVE);
  } else {
    const low = driver === 'latched' || feedVolts < FEED_LOW_SHARE * look.batteryVolts;
    tests.feedLowLooks = driver === 'latched' ? AGREEING_LOOKS : count(tests.feedLowLooks, low);
  }
  if (off && tests.feedOpenLooks === AGREEING_LOOKS) codes.push(sets.feedOpen);
  if (!off && tests.feedLowLooks === AGREEING_LOOKS) codes.push(sets.feedLow);
  if (off && tests.feedHighLooks === AGREEING_LOOKS) codes.push(sets.feedHigh);
  return [...codes, ...lookAtSense(tests, look, sets)];
}

function lookAtSense(
  tests: CircuitTests,
  { seconds, senseVolts }: CircuitLook,
  sets: CircuitCodes,
): TroubleCode[] {
  const sense = senseStateOf(senseVolts);
  tests.senseHighLooks = sense === 'high' ? Math.min(tests.senseHighLooks + 1, AGREEING_LOOKS) : 0;
  if (tests.senseHighLooks === AGREEING_LOOKS) return [sets.senseHigh];
  const since = tests.implausibleSince;
  if (sense === 'implausible') {
    if (since === null) tests.implausibleSince = seconds;
    else if (seconds - since >= IMPLAUSIBLE_SECONDS) return [sets.senseImplausible];
  } else if (since !== null && seconds - since > FORGOTTEN_SECONDS) {
    tests.implausibleSince = null;
  }
  return [];
}
