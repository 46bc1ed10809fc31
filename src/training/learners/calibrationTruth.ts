import type { Random } from '../../base/Random.ts';
import { secondsToTicks } from '../../base/ticks.ts';
import { createWorld } from '../../sim/world/World.ts';
import type { DrivesBefore, FaultChoice } from '../../sim/world/WorldPort.ts';
import { codesWord } from '../evidence/answer.ts';
import { SOUND_WITHOUT_CODES } from '../evidence/complaint.ts';
import type { Environment } from '../evidence/environment.ts';
import type { Suspect } from '../evidence/Suspect.ts';
import { toolStates } from '../evidence/toolStates.ts';

/** What is wrong in a calibration sitting, and what the work order says of it. */
export interface CalibrationTruth {
  readonly suspect: Suspect;
  readonly faults: readonly FaultChoice[];
  readonly badTools: readonly FaultChoice[];
  readonly drives: DrivesBefore;
  /** Codes that the drives left in memory. */
  readonly codes: readonly string[];
}

/**
 * The truth of a sitting, driven for one of these numbers of cycles under the tolerances of its seed, which no suspect has.
 * Heavy: some tenths of a second.
 */
export function calibrationTruth(
  suspects: readonly Suspect[],
  cycles: readonly number[],
  environment: Environment,
  seed: string,
  random: Random,
): CalibrationTruth {
  const truth = drawnTruth(suspects, cycles, random);
  return { ...truth, codes: codesAfter(truth, seed, environment) };
}

/**
 * Draws a truth from the catalogue by its weights: any degree within a fault's range, what comes and goes by chance or when
 * moved, two together, or nothing; and beside it each tool bad by its own chance, at any degree.
 */
export function drawnTruth(
  suspects: readonly Suspect[],
  cycles: readonly number[],
  random: Random,
): Omit<CalibrationTruth, 'codes'> {
  const suspect = drawn(suspects, random.next());
  const faults = suspect.faults.map((choice) => ({ ...choice, severity: random.next() }));
  const badTools = toolStates().flatMap(({ bad, prior }) => {
    const [at, severity] = [random.next(), random.next()];
    return bad !== null && at < prior ? [{ ...bad, severity }] : [];
  });
  const driven = cycles[Math.floor(random.next() * cycles.length)] ?? 0;
  return { suspect, faults, badTools, drives: { cycles: driven, refuelled: false } };
}

/** Whether a verdict on any of these items is right. */
export function isRight({ suspect }: CalibrationTruth, items: readonly string[]): boolean {
  return items.some((item) => item === suspect.item || suspect.items.some((one) => one === item));
}

/**
 * How often a truck that is so comes to the shop. A sound one never sets a code, so it comes as often as one without a code
 * is sound.
 */
export function weightOfTruth({ items, weight }: Suspect): number {
  return items.length === 0 ? weight * SOUND_WITHOUT_CODES : weight;
}

function drawn(suspects: readonly Suspect[], at: number): Suspect {
  let left = at * suspects.reduce((sum, suspect) => sum + weightOfTruth(suspect), 0);
  for (const suspect of suspects) {
    left -= weightOfTruth(suspect);
    if (left < 0) return suspect;
  }
  return suspects.at(-1) as Suspect;
}

function codesAfter(
  { faults, drives }: Omit<CalibrationTruth, 'codes'>,
  seed: string,
  environment: Environment,
): readonly string[] {
  const world = createWorld({ seed, faults, ...environment, drives });
  world.apply({ kind: 'set-key', position: 'on' });
  world.advanceTo(secondsToTicks(0.1));
  const word = codesWord(world.observe().reader.codes.map(({ code }) => code));
  return word === '' ? [] : word.split(' ');
}
