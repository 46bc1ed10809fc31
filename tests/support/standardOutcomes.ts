import type { RigId } from '../../src/sim/devices/BenchSurface.ts';
import type { Outcome } from '../../src/sim/rigs/standardTests/Outcome.ts';
import { runStandardTest } from '../../src/sim/rigs/standardTests/runStandardTest.ts';
import type { StandardTest } from '../../src/sim/rigs/standardTests/StandardTest.ts';
import { createWorld } from '../../src/sim/world/World.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';

const TRUCK = { ambientC: 20, altitudeM: 0, fuelLevel: 0.5 };

/** A test on a truck fresh in the morning. */
export function outcomesOn(
  test: StandardTest,
  seed: string,
  faults: readonly FaultChoice[] = [],
  rig?: RigId,
): readonly Outcome[] {
  return runStandardTest(test, createWorld({ ...TRUCK, ...(rig && { rig }), seed, faults }));
}

/** All that trucks of different tolerances showed, by set-up of a test. */
export type Sound = ReadonlyMap<string, readonly Outcome[]>;

/** Of sound trucks, or of trucks that all have the same fault. */
export function soundOutcomes(
  test: StandardTest,
  seeds: readonly string[],
  faults: readonly FaultChoice[] = [],
  rig?: RigId,
): Sound {
  const sound = new Map<string, Outcome[]>();
  for (const outcome of seeds.flatMap((seed) => outcomesOn(test, seed, faults, rig))) {
    sound.set(outcome.setUp, [...(sound.get(outcome.setUp) ?? []), outcome]);
  }
  return sound;
}

/**
 * What a test showed that no sound truck would, one line each: words and yes or no that none of them gave, numbers
 * further from all of theirs than these are from one another, with the instrument's error on both.
 */
export function shownOnlyWhenBad(sound: Sound, outcomes: readonly Outcome[]): readonly string[] {
  return outcomes.flatMap((outcome) => {
    const theirs = sound.get(outcome.setUp);
    if (theirs === undefined) return [`${outcome.setUp}: no sound truck came so far`];
    return fits(outcome, theirs) ? [] : [`${outcome.setUp}: ${told(outcome)} (sound: ${range(theirs)})`];
  });
}

function fits(outcome: Outcome, theirs: readonly Outcome[]): boolean {
  if (theirs.some(({ value }) => value === outcome.value)) return true;
  if (outcome.kind !== 'number' || typeof outcome.value !== 'number') return false;
  const numbers = numbersOf(theirs);
  if (numbers.length === 0) return false;
  const [low, high] = [Math.min(...numbers), Math.max(...numbers)];
  const slack = high - low + outcome.half + Math.max(...halvesOf(theirs));
  return outcome.value >= low - slack && outcome.value <= high + slack;
}

const numbersOf = (outcomes: readonly Outcome[]): readonly number[] =>
  outcomes.flatMap(({ value }) => (typeof value === 'number' ? [value] : []));
const halvesOf = (outcomes: readonly Outcome[]): readonly number[] =>
  outcomes.flatMap((outcome) => (outcome.kind === 'number' ? [outcome.half] : []));

const told = ({ value }: Outcome): string =>
  typeof value === 'number' ? String(Number(value.toPrecision(3))) : String(value);

function range(outcomes: readonly Outcome[]): string {
  const numbers = numbersOf(outcomes);
  if (numbers.length === 0) return [...new Set(outcomes.map(told))].join(' or ');
  const ends = [Math.min(...numbers), Math.max(...numbers)].map((end) => Number(end.toPrecision(3)));
  return ends[0] === ends[1] ? String(ends[0]) : ends.join(' to ');
}
