import type { Scenario } from '../training/scenario/Scenario.ts';
import { faultsInWords } from './describeProof.ts';

/** Sentences of `seal` and `variants`, and of other commands where they are given a sealed file, a class code or a seat. */
export const handoutWords = {
  sealed: (file: string, out: string, hash: string): string =>
    `${file}: sealed in ${out}. Records of it carry the hash ${hash.slice(0, 12)}….`,
  sealedAlready: (file: string): string =>
    `${file}: this file is sealed already. Give the scenario file that it was made of.`,
  sealedHasVariants: (file: string): string =>
    `${file}: it has variants. Give a class code (--class-code), so that each seat gets its own; without one every learner draws afresh.`,
  weakCode: (least: number): string =>
    `Note: a class code of fewer than ${least} letters and digits can be found by trying. Draw a longer one by chance where that matters.`,
  oneOut: 'With --out give one scenario file.',
  badSeats: (given: string, most: number): string =>
    `--seats ${given}: give a whole number from 1 to ${most}.`,
  badSeat: (given: string): string => `--seat ${given}: give the number of a seat, from 1 on.`,
  seatWantsCode: '--seat needs a class code. Add --class-code.',
  badCode: (given: string): string => `--class-code ${given}: a class code has 4 to 60 letters and digits.`,
  codeWanted: 'A class code is missing. Add --class-code.',
  noVariants: (file: string): string =>
    `${file}: this scenario has no variants and no ranges, so every seat has the same truck.`,
  checkSealed: (file: string, title: string, hash: string): string =>
    `${file}: whole and sealed. "${title}", hash ${hash.slice(0, 12)}…. To prove the job, check the scenario file that it was made of.`,
  seat: (seat: number, faults: Scenario['faults'], codes: readonly string[]): string =>
    `${String(seat).padStart(4)}  ${faultsInWords(faults)}${codes.length === 0 ? '' : `  (${codes.join(' ')})`}`,
  seatsHead: (file: string, mark: string): string => `${file}: class ${mark}\nseat  what is wrong`,
  sharedSeat: (seat: number, files: readonly string[]): string =>
    `Note: seat ${seat} was sat at more than once: ${files.join(', ')}.`,
  atSeat: (line: string, seat: number): string => `${line} Seat ${seat}.`,
  doesNotHold: {
    'variant-missing': 'it does not say which variant it had. Export it again from the job.',
    'variant-unknown':
      'its variant was drawn in no way that this version knows. It was changed after it was made.',
    'variant-differs': 'this draw gives another variant than it says. It was changed after it was made.',
    'seat-seed-differs': 'its truck is not the one of its seat. It was changed after it was made.',
    'other-class': 'it was not sat under this class code.',
  },
} as const;
