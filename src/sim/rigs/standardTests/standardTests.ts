import { LEAK_DETECTION_PUMP } from '../leakDetectionPump/leakDetectionPump.ts';
import type { StandardTest } from './StandardTest.ts';

/** Every standard test of the leak detection pump. */
export const STANDARD_TESTS: readonly StandardTest[] = LEAK_DETECTION_PUMP.tests;
