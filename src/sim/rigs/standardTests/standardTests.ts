import { MATED_TESTS } from './matedTests.ts';
import { MOVED_TESTS } from './movedTests.ts';
import { PARTED_TESTS } from './partedTests.ts';
import { PORT_TESTS } from './portTests.ts';
import type { StandardTest } from './StandardTest.ts';
import { SIGHT_TESTS } from './sightTests.ts';
import { SYSTEM_TESTS } from './systemTests.ts';
import { TOOL_TESTS } from './toolTests.ts';
import { UNIT_TESTS } from './unitTests.ts';

/** Every standard test of the rig. */
export const STANDARD_TESTS: readonly StandardTest[] = [
  ...TOOL_TESTS,
  ...SIGHT_TESTS,
  ...MATED_TESTS,
  ...PARTED_TESTS,
  ...MOVED_TESTS,
  ...UNIT_TESTS,
  ...PORT_TESTS,
  ...SYSTEM_TESTS,
];
