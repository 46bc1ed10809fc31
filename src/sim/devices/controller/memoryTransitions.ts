import type { ControllerMemory } from './ControllerMemory.ts';
import type { FreezeData, TroubleCode } from './troubleCodes.ts';

/** Passing trips in a row that put the lamp out: 13 CCR 1968.2(d)(2.3), from memory. */
export const PASSES_TO_PUT_LAMP_OUT = 3;
/** Drive cycles without the failure after which a stored code is dropped: 13 CCR 1968.2(d)(2.4), from memory. */
export const DRIVES_TO_FORGET = 40;

/** What was tested in a key cycle that ends. */
export interface CycleTests {
  /** The truck was driven: passing counts towards putting the lamp out. */
  readonly driven: boolean;
  /** The key was on long enough for the circuit tests. */
  readonly circuits: boolean;
  /** The solenoid was commanded on, so the feed was seen loaded. */
  readonly commandedOn: boolean;
  /** The monitor watched the switch at rest. */
  readonly switchChecked: boolean;
  /** The monitor came to a judgement about leaks. */
  readonly judged: boolean;
}

/** True when the test that sets this code ran in the cycle. */
export function wasTested(code: TroubleCode, tests: CycleTests): boolean {
  switch (code) {
    case 'P2008':
    case 'P2010':
    case 'P2014':
    case 'P2017':
    case 'P2400':
    case 'P2402':
    case 'P2404':
    case 'P2406':
      return tests.circuits;
    case 'P2009':
    case 'P2401':
      return tests.commandedOn;
    case 'P2016':
    case 'P2018':
    case 'P2405':
    case 'P2407':
      return tests.switchChecked;
    case 'P0441':
    case 'P0442':
    case 'P0446':
    case 'P0455':
    case 'P0456':
    case 'P0457':
    case 'P2004':
    case 'P2006':
    case 'P2015':
      return tests.judged;
  }
}

const including = (codes: readonly TroubleCode[], code: TroubleCode): TroubleCode[] =>
  codes.includes(code) ? [...codes] : [...codes, code].sort();

/**
 * A code's test has failed. The first time it is pending, with freeze data; failing again in the next cycle in which the test runs
 * stores it, makes it permanent and lights the lamp. Failing again within one key cycle changes nothing.
 */
export function recordFailure(memory: ControllerMemory, freeze: FreezeData): ControllerMemory {
  const { code } = freeze;
  if (memory.failedNow.includes(code)) return memory;
  const second = memory.pending.includes(code);
  const known = memory.freeze.some((kept) => kept.code === code);
  const noted: ControllerMemory = {
    ...memory,
    failedNow: including(memory.failedNow, code),
    pending: including(memory.pending, code),
    freeze: known ? memory.freeze : [...memory.freeze, freeze],
  };
  if (!second) return noted;
  return {
    ...noted,
    stored: including(memory.stored, code),
    permanent: including(memory.permanent, code),
    lamp: true,
    passes: 0,
    cleanDrives: 0,
  };
}

/**
 * The key cycle ends. A pending code whose test ran without failing is dropped. After a drive, the lamp comes nearer to going out
 * when everything stored was tested and passed; a permanent code goes with the lamp, or, once the reader has cleared
 * the stored one, on its first passing drive.
 */
export function endCycle(memory: ControllerMemory, tests: CycleTests): ControllerMemory {
  const failed = (code: TroubleCode): boolean => memory.failedNow.includes(code);
  const passed = (code: TroubleCode): boolean => !failed(code) && wasTested(code, tests);
  const pending = memory.pending.filter((code) => !passed(code));
  let next: ControllerMemory = { ...memory, pending, failedNow: [] };
  if (tests.driven) next = countDrive(next, memory, failed, passed);
  const kept = (code: TroubleCode): boolean => next.pending.includes(code) || next.stored.includes(code);
  return { ...next, freeze: next.freeze.filter(({ code }) => kept(code)) };
}

function countDrive(
  next: ControllerMemory,
  before: ControllerMemory,
  failed: (code: TroubleCode) => boolean,
  passed: (code: TroubleCode) => boolean,
): ControllerMemory {
  const { stored } = before;
  const permanent = before.permanent.filter((code) => stored.includes(code) || !passed(code));
  const counted = { ...next, permanent };
  if (stored.some(failed)) return { ...counted, passes: 0, cleanDrives: 0 };
  if (!stored.every(passed) || stored.length === 0) return counted;
  if (before.lamp) {
    const passes = before.passes + 1;
    if (passes < PASSES_TO_PUT_LAMP_OUT) return { ...counted, passes };
    const left = permanent.filter((code) => !stored.includes(code));
    return { ...counted, passes, lamp: false, permanent: left, cleanDrives: 0 };
  }
  const cleanDrives = before.cleanDrives + 1;
  if (cleanDrives < DRIVES_TO_FORGET) return { ...counted, cleanDrives };
  return { ...counted, stored: [], passes: 0, cleanDrives: 0 };
}

/** The reader's "clear": everything goes but the permanent codes. */
export function cleared(memory: ControllerMemory): ControllerMemory {
  return {
    pending: [],
    stored: [],
    permanent: [...memory.permanent],
    freeze: [],
    lamp: false,
    passes: 0,
    complete: false,
    failedNow: [],
    cleanDrives: 0,
    result: null,
  };
}
