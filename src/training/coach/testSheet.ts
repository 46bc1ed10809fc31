import { assert } from '../../base/assert.ts';
import type { RigId } from '../../sim/devices/BenchSurface.ts';
import { rigNamed } from '../../sim/rigs/rigs.ts';
import type { StandardTest, TestStep } from '../../sim/rigs/standardTests/StandardTest.ts';
import { SET_UPS } from '../../sim/rigs/standardTests/setUps.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { testMinutes } from '../../sim/rigs/standardTests/testMinutes.ts';
import { bookMinutes } from '../sitting/book.ts';

/** A standard test as the coach hands it out: the test, the steps of its set-up, its minutes by the book. */
export interface TestSheet {
  readonly test: StandardTest;
  readonly setUp: readonly TestStep[];
  readonly minutes: number;
}

export function testSheet(id: StandardTestId, rig?: RigId): TestSheet {
  const test = rigNamed(rig).tests.find((one) => one.id === id);
  assert(test !== undefined, 'every named standard test has its sheet', { id });
  return { test, setUp: SET_UPS[test.prepares], minutes: testMinutes(test, bookMinutes) };
}
