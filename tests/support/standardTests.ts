import { AIR_TESTS } from './standard/air.ts';
import { ELECTRICAL_TESTS } from './standard/electrical.ts';
import type { StandardTest } from './standard/parts.ts';
import { SMOKE_TESTS } from './standard/smoke.ts';

/** The standard tests of the rig, each worked by actions only on a bench fresh in the morning. */
export const STANDARD_TESTS: readonly StandardTest[] = [...ELECTRICAL_TESTS, ...AIR_TESTS, ...SMOKE_TESTS];
