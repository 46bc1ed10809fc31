import { goldenLevel, goldenNames, TRAPPED } from '../support/goldenJobs.ts';
import { goldenSuite } from '../support/goldenSuite.ts';

// A file of its own, so that the two halves are sat side by side.
goldenSuite(
  'golden jobs of levels 3 and 4',
  goldenNames.filter((name) => goldenLevel(name) > 2 && !TRAPPED.includes(name)),
);
