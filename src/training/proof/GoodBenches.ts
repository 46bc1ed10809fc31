import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { DRAW_SEEDS, type Environment } from '../evidence/environment.ts';
import { TrueBench } from '../evidence/TrueBench.ts';
import type { ReadBench } from './FaultReadings.ts';

/** Other good benches beside one's own: enough to show how far tolerances spread. */
const OTHERS = 3;

/** What each test shows where nothing is wrong. It is worked once: the slider of a fault changes nothing there. */
export class GoodBenches {
  private readonly bench: TrueBench;
  private readonly others: readonly TrueBench[];
  private readonly byOwn = new Map<string, readonly Outcome[]>();
  private readonly byOthers = new Map<string, readonly Outcome[]>();

  constructor(
    private readonly environment: Environment,
    private readonly seed: string,
  ) {
    this.bench = new TrueBench([], seed, environment);
    this.others = DRAW_SEEDS.slice(0, OTHERS).map((draw) => new TrueBench([], draw, environment));
  }

  /** Whether these are the good ones beside that bench. */
  isOf({ environment, seed }: Pick<ReadBench, 'environment' | 'seed'>): boolean {
    const own = this.environment;
    return (
      seed === this.seed &&
      environment.ambientC === own.ambientC &&
      environment.altitudeM === own.altitudeM &&
      environment.fuelLevel === own.fuelLevel
    );
  }

  /** On one's own bench. */
  ofOwn(test: StandardTest): readonly Outcome[] {
    return kept(this.byOwn, test, () => this.bench.show(test));
  }

  /** On other good benches, whose tolerances are others: three times the work. */
  ofOthers(test: StandardTest): readonly Outcome[] {
    return kept(this.byOthers, test, () => this.others.flatMap((bench) => bench.show(test)));
  }

  knowsOthers(test: StandardTest): boolean {
    return this.byOthers.has(test.id);
  }
}

function kept<T>(known: Map<string, T>, { id }: StandardTest, work: () => T): T {
  const before = known.get(id);
  if (before !== undefined) return before;
  const worked = work();
  known.set(id, worked);
  return worked;
}
