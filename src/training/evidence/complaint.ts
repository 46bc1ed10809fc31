import { secondsToTicks } from '../../base/ticks.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import { createWorld } from '../../sim/world/World.ts';
import type { DrivesBefore } from '../../sim/world/WorldPort.ts';
import { codesWord } from './answer.ts';
import { DRAW_SEEDS, type Environment } from './environment.ts';
import { normalised } from './information.ts';
import type { Suspect } from './Suspect.ts';

/** What the drives before the work order make of a suspect. */
export interface Complaint {
  /** Codes in the controller's memory, each once, as one word; '' where there are none. */
  readonly codes: string;
  readonly fuseMelted: boolean;
}

/** No suspect's complaint is less likely than this, so that a rare truth can still be named. */
export const LEAST_COMPLAINT = 0.03;
export const SAME_CODES = 0.85;
const SOME_CODES = 0.3;
/** Leak codes stand for sizes of one thing, and tolerance moves a leak from one to the next. */
const OTHER_LEAK_CODE = 0.12;
const LEAK_CODES: ReadonlySet<string> = new Set(['P0442', 'P0455', 'P0456', 'P0457']);

/** Takes the truck with this suspect's faults out for the drives. Heavy: some tenths of a second. */
export function complaintOf(suspect: Suspect, environment: Environment, drives: DrivesBefore): Complaint {
  const world = createWorld({
    seed: DRAW_SEEDS[0] as string,
    faults: suspect.faults,
    ...environment,
    drives,
  });
  world.apply({ kind: 'set-key', position: 'on' });
  world.advanceTo(secondsToTicks(0.1));
  const codes = codesWord(world.observe().reader.codes.map(({ code }) => code));
  world.apply({ kind: 'pull-fuse' });
  return { codes, fuseMelted: world.observe().fuse.element === 'melted' };
}

/** What the drives make of each of these suspects, in their order. Minutes of work for the whole catalogue. */
export function complaintsOf(
  suspects: readonly Suspect[],
  environment: Environment,
  drives: DrivesBefore,
): readonly Complaint[] {
  return suspects.map((suspect) => complaintOf(suspect, environment, drives));
}

/** How well a suspect's codes explain those of the work order; 0.03 to 0.9. */
export function complaintLikelihood(own: string, ordered: string): number {
  if (own === ordered) return SAME_CODES;
  const ours = wordsOf(own);
  const theirs = wordsOf(ordered);
  if (ours.some((code) => theirs.includes(code))) return SOME_CODES;
  const leaks = (codes: readonly string[]): boolean => codes.some((code) => LEAK_CODES.has(code));
  return leaks(ours) && leaks(theirs) ? OTHER_LEAK_CODE : LEAST_COMPLAINT;
}

/**
 * A truck that comes without any code comes for some other reason, and is sound that many times more often than one that a
 * code has brought. Invented for teaching.
 */
export const SOUND_WITHOUT_CODES = 8;

/** A part that was renewed before the order was written is bad so many times as often as one of the truck's age. Invented for teaching. */
export const NEW_PART = 0.15;

/**
 * Chances of the suspects once the complaint is known, and which parts are new; sum to 1. Without complaints, by the catalogue's
 * weights alone.
 */
export function priorOf(
  suspects: readonly Suspect[],
  complaints: readonly Complaint[] | null,
  ordered: string,
  renewed: readonly ItemId[] = [],
): number[] {
  return normalised(
    suspects.map(({ weight, items }, s) => {
      const fresh = items.reduce(
        (share, item) => (renewed.some((one) => one === item) ? share * NEW_PART : share),
        1,
      );
      const own = complaints?.[s];
      if (own === undefined) return weight * fresh;
      const oftener = ordered === '' && items.length === 0 ? SOUND_WITHOUT_CODES : 1;
      return weight * fresh * oftener * complaintLikelihood(own.codes, ordered);
    }),
  );
}

const wordsOf = (codes: string): readonly string[] => (codes === '' ? [] : codes.split(' '));
