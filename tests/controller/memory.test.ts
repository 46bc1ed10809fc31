import { describe, expect, test } from 'vitest';
import { type ControllerMemory, freshMemory } from '../../src/sim/devices/controller/ControllerMemory.ts';
import {
  type CycleTests,
  cleared,
  DRIVES_TO_FORGET,
  endCycle,
  recordFailure,
} from '../../src/sim/devices/controller/memoryTransitions.ts';
import type { FreezeData, TroubleCode } from '../../src/sim/devices/controller/troubleCodes.ts';

// Two-trip logic, three passing trips, permanent codes: 13 CCR 1968.2(d)(2), general statement of a public emission programme
// (New York DMV/DEC: pending first, lamp and code on the second drive cycle); the rule on permanent codes from memory.

const freeze = (code: TroubleCode, miles = 0): FreezeData => ({
  code,
  miles,
  fuelPercent: 50,
  ambientC: 20,
  barometerKPa: 101.3,
  batteryVolts: 14.2,
  senseVolts: 8.9,
  strokes: 51,
  holdSeconds: null,
});
const JUDGED: CycleTests = {
  driven: true,
  circuits: true,
  commandedOn: true,
  switchChecked: true,
  judged: true,
};
const NOT_RUN: CycleTests = { ...JUDGED, commandedOn: false, switchChecked: false, judged: false };
const ON_THE_BENCH: CycleTests = { ...NOT_RUN, driven: false };

/** Cycles one after another; each fails the codes named. */
function following(
  memory: ControllerMemory,
  ...cycles: (CycleTests & { fails?: TroubleCode[] })[]
): ControllerMemory {
  let now = memory;
  for (const { fails = [], ...tests } of cycles) {
    for (const code of fails) now = recordFailure(now, freeze(code));
    now = endCycle(now, tests);
  }
  return now;
}
const failing = (...fails: TroubleCode[]) => ({ ...JUDGED, fails });
const lit = () => following(freshMemory(), failing('P0456'), failing('P0456'));

describe('two failing trips in a row', () => {
  test('the first makes a code pending, with freeze data and no lamp', () => {
    const memory = recordFailure(freshMemory(), freeze('P0456', 12));
    expect(memory).toMatchObject({ pending: ['P0456'], stored: [], permanent: [], lamp: false });
    expect(memory.freeze).toEqual([freeze('P0456', 12)]);
  });

  test('failing again in the same key cycle changes nothing', () => {
    const once = recordFailure(freshMemory(), freeze('P2400'));
    expect(recordFailure(once, freeze('P2400', 5))).toBe(once);
  });

  test('the second stores the code, makes it permanent and lights the lamp; the freeze data stay those of the first', () => {
    const memory = recordFailure(
      endCycle(recordFailure(freshMemory(), freeze('P0456', 12)), JUDGED),
      freeze('P0456', 40),
    );
    expect(memory).toMatchObject({ pending: ['P0456'], stored: ['P0456'], permanent: ['P0456'], lamp: true });
    expect(memory.freeze).toEqual([freeze('P0456', 12)]);
  });

  test('a passing trip between them clears the pending code and its freeze data', () => {
    const passed = following(freshMemory(), failing('P0456'), JUDGED);
    expect(passed).toEqual(freshMemory());
    expect(following(passed, failing('P0456'))).toMatchObject({
      pending: ['P0456'],
      stored: [],
      lamp: false,
    });
  });

  test('a trip in which the monitor could not run neither clears nor counts', () => {
    const waiting = following(freshMemory(), failing('P0456'), NOT_RUN, NOT_RUN);
    expect(waiting.pending).toEqual(['P0456']);
    expect(following(waiting, failing('P0456')).stored).toEqual(['P0456']);
  });

  test('two different codes in turn store neither', () => {
    const memory = following(freshMemory(), failing('P0456'), failing('P0442'));
    expect(memory).toMatchObject({ pending: ['P0442'], stored: [], lamp: false });
  });

  test('two codes in one trip are kept by number', () => {
    const memory = following(freshMemory(), failing('P2404', 'P2400'), failing('P2404', 'P2400'));
    expect(memory.stored).toEqual(['P2400', 'P2404']);
  });
});

describe('circuit codes and key cycles on the bench', () => {
  test('failing in two key cycles in a row stores the code', () => {
    const memory = following(
      freshMemory(),
      { ...ON_THE_BENCH, fails: ['P2400'] },
      { ...ON_THE_BENCH, fails: ['P2400'] },
    );
    expect(memory).toMatchObject({ stored: ['P2400'], lamp: true });
  });

  test('a key cycle without the failure clears the pending code', () => {
    expect(following(freshMemory(), { ...ON_THE_BENCH, fails: ['P2400'] }, ON_THE_BENCH).pending).toEqual([]);
  });

  test('a key cycle too short for the circuit tests does not', () => {
    const flick = { ...ON_THE_BENCH, circuits: false };
    expect(following(freshMemory(), { ...ON_THE_BENCH, fails: ['P2400'] }, flick).pending).toEqual(['P2400']);
  });

  test('P2401 is only cleared when the solenoid was commanded on', () => {
    const pending = following(freshMemory(), { ...ON_THE_BENCH, commandedOn: true, fails: ['P2401'] });
    expect(following(pending, ON_THE_BENCH).pending).toEqual(['P2401']);
    expect(following(pending, { ...ON_THE_BENCH, commandedOn: true }).pending).toEqual([]);
  });

  test('turning the key on the bench does not put the lamp out', () => {
    const stored = following(freshMemory(), failing('P2400'), failing('P2400'));
    const turned = following(stored, ...Array.from({ length: 6 }, () => ON_THE_BENCH));
    expect(turned).toMatchObject({ pending: [], stored: ['P2400'], lamp: true, passes: 0 });
  });
});

describe('three passing trips', () => {
  test('put the lamp out and clear the permanent code; the stored one stays for a while', () => {
    const twice = following(lit(), JUDGED, JUDGED);
    expect(twice).toMatchObject({ lamp: true, passes: 2, permanent: ['P0456'] });
    expect(following(twice, JUDGED)).toMatchObject({ lamp: false, stored: ['P0456'], permanent: [] });
  });

  test('must be in a row: a failing one starts again', () => {
    const memory = following(lit(), JUDGED, JUDGED, failing('P0456'), JUDGED, JUDGED);
    expect(memory).toMatchObject({ lamp: true, passes: 2 });
  });

  test('count only when the monitor came to a judgement', () => {
    expect(following(lit(), NOT_RUN, NOT_RUN, NOT_RUN)).toMatchObject({ lamp: true, passes: 0 });
  });

  test('a stored code is dropped after forty clean drives', () => {
    const out = following(lit(), JUDGED, JUDGED, JUDGED);
    const drives = Array.from({ length: DRIVES_TO_FORGET - 1 }, () => JUDGED);
    const nearly = following(out, ...drives);
    expect(nearly.stored).toEqual(['P0456']);
    expect(following(nearly, JUDGED)).toMatchObject({ stored: [], freeze: [] });
  });

  test('after the lamp went out, two failing trips light it again', () => {
    const out = following(lit(), JUDGED, JUDGED, JUDGED);
    expect(following(out, failing('P0456')).lamp).toBe(false);
    expect(following(out, failing('P0456'), failing('P0456')).lamp).toBe(true);
  });
});

describe('the reader’s clear', () => {
  test('takes everything but the permanent codes', () => {
    const memory = cleared({ ...lit(), complete: true });
    expect(memory).toEqual({ ...freshMemory(), permanent: ['P0456'] });
  });

  test('a permanent code goes with the first passing drive, not with a clear, a key cycle or a drive that did not run', () => {
    const memory = cleared(lit());
    expect(cleared(memory).permanent).toEqual(['P0456']);
    expect(following(memory, ON_THE_BENCH, NOT_RUN).permanent).toEqual(['P0456']);
    expect(following(memory, JUDGED).permanent).toEqual([]);
  });

  test('a fault still there is pending again in the same key cycle', () => {
    const failed = recordFailure(freshMemory(), freeze('P2400'));
    expect(recordFailure(cleared(failed), freeze('P2400')).pending).toEqual(['P2400']);
  });
});
