import { relative } from 'node:path';
import type { TestSequencer, TestSpecification, Vitest } from 'vitest/node';

/** Files of ten seconds and more, the longest first. One that is missing here is only begun later than would be good. */
const HEAVIEST: readonly string[] = [
  'golden/goldenHigherLevels',
  'golden/golden',
  'golden/traps',
  'evidence/calibration',
  'cli/handout',
  'laws/faultsShow',
  'golden/codes',
  'coach/followed',
  'laws/hiddenFault',
  'cli/cli',
  'coach/sameAdvice',
  'learners/learners',
].map((name) => `tests/${name}.test.ts`);

/**
 * Begins with what takes longest, so that no worker is left alone with it at the end. Written without the runner's own class, which
 * would have to be loaded for every build.
 */
export class HeaviestFirst implements TestSequencer {
  constructor(private readonly run: Vitest) {}

  sort(files: TestSpecification[]): TestSpecification[] {
    const place = ({ moduleId }: TestSpecification): number => {
      const at = HEAVIEST.indexOf(relative(this.run.config.root, moduleId).replaceAll('\\', '/'));
      return at < 0 ? HEAVIEST.length : at;
    };
    return [...files].sort((a, b) => place(a) - place(b));
  }

  /** Every so many-th file, so that each share has its part of the heavy ones. */
  shard(files: TestSpecification[]): TestSpecification[] {
    const { shard } = this.run.config;
    if (shard === undefined) return files;
    return this.sort(files).filter((_, at) => at % shard.count === shard.index - 1);
  }
}
