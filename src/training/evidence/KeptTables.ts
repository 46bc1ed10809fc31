import { canonicalJson, sha256Hex } from '../../base/hash.ts';
import { rigNamed } from '../../sim/rigs/rigs.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { SET_UPS } from '../../sim/rigs/standardTests/setUps.ts';
import { drawnParameters } from '../../sim/rigs/tolerances.ts';
import type { DrivesBefore } from '../../sim/world/WorldPort.ts';
import { DRAW_SEEDS, type Environment } from './environment.ts';
import { casesOf } from './OutcomeTable.ts';
import type { Shown } from './Shown.ts';
import type { Suspect } from './Suspect.ts';

/** Version of the kept form. */
export const KEPT_FORMAT = 1;

/** One read mark of a test, with every answer that was ever given at it. */
export interface KeptMark {
  readonly channel: Shown['channel'];
  readonly setUp: string;
  readonly kind: Shown['kind'];
  /** How often one run of the test reads it. */
  readonly repeats: number;
  /** Half-width of the instrument where it is the same for all answers; else null, and each has its own beside it. */
  readonly half: number | null;
  readonly answers: readonly (KeptAnswer | readonly [KeptAnswer, number])[];
}

export type KeptAnswer = Shown['value'];

/** Answers by their numbers: one for all draws, or by draw one for all repeats, or by draw and repeat. */
export type KeptCell = number | readonly (number | readonly number[])[];

/** What a case shows at all marks: the number of draws, then a cell for each mark. */
export type KeptRow = readonly [draws: number, ...cells: KeptCell[]];

/** A test: what may be shown, each row once, and which row each case shows. */
export interface KeptTest {
  readonly id: string;
  readonly marks: readonly KeptMark[];
  readonly rows: readonly KeptRow[];
  readonly rowOf: readonly number[];
}

/** What some drives make of the suspects: complaints each once, and which one each suspect has. */
export interface KeptComplaints {
  readonly drives: DrivesBefore;
  readonly words: readonly { readonly codes: string; readonly fuseMelted: boolean }[];
  readonly wordOf: readonly number[];
}

/** The tables as they are kept. Nothing in them is about any scenario. Plain JSON. */
export interface KeptTables {
  readonly format: typeof KEPT_FORMAT;
  /** Of which rig they are; see `rigMark`. */
  readonly rig: string;
  readonly environment: Environment;
  readonly tests: readonly KeptTest[];
  readonly complaints: readonly KeptComplaints[];
  /** By item, the items that no test tells from it, itself first; items that stand alone are left out. */
  readonly groups: Readonly<Record<string, readonly string[]>>;
}

/**
 * A mark of everything that the tables are made from: the form they are kept in, suspects, steps of the tests, what the
 * faults change, and the rig's parameters as the tolerance draws have them. Tables with another mark are of another rig.
 * The laws of the rig are not in it: a test works some cells anew instead.
 */
export function rigMark(
  suspects: readonly Suspect[],
  tests: readonly StandardTest[],
  environment: Environment,
): string {
  const rig = rigNamed(environment.rig);
  const content = {
    format: KEPT_FORMAT,
    suspects: suspects.map(({ id, weight, faults, faces }) => ({ id, weight, faults, faces })),
    cases: casesOf(suspects).map(({ draws }) => draws),
    tests: tests.map(({ id, prepares, steps, undo }) => ({ id, prepares: SET_UPS[prepares], steps, undo })),
    faults: rig.faults,
    draws: DRAW_SEEDS.map((seed) => drawnParameters(rig, seed, [])),
    environment,
  };
  return sha256Hex(canonicalJson(content)).slice(0, 16);
}

/**
 * A number with the digits that a likelihood can feel: to a quarter of the instrument's half-width or a thousandth of
 * itself, whichever is coarser, in whole decades. A mean of few draws is uncertain by a hundredth of itself.
 */
export function keptNumber(value: number, half: number): number {
  const felt = Math.max(half / 4, Math.abs(value) / 1000);
  if (!(felt > 0)) return 0;
  let decades = 0;
  let step = 1;
  for (; step > felt && decades < 15; decades++) step /= 10;
  if (decades > 0) return Number(value.toFixed(decades)) + 0;
  while (step * 10 <= felt) step *= 10;
  return Math.floor(value / step + 0.5) * step;
}

/** Half-widths need two digits. */
export function keptHalf(half: number): number {
  return Number(half.toPrecision(2));
}
