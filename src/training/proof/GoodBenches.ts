import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { DRAW_SEEDS } from '../evidence/environment.ts';
import { TrueBench } from '../evidence/TrueBench.ts';
import type { ReadBench } from './FaultReadings.ts';

/** Other good benches beside one's own: enough to show how far tolerances spread. */
const OTHERS = 3;

/** A bench but for its faults. */
export type GoodBench = Omit<ReadBench, 'faults'>;

function keyOf({ environment, seed, renewedBefore = [] }: GoodBench): string {
  const { rig = '', ambientC, altitudeM, fuelLevel } = environment;
  return [rig, ambientC, altitudeM, fuelLevel, seed, ...renewedBefore].join();
}

/** What each test shows where nothing is wrong. It is worked once: the slider of a fault changes nothing there. */
export class GoodBenches {
  private readonly bench: TrueBench;
  private readonly others: readonly TrueBench[];
  private readonly byOwn = new Map<string, readonly Outcome[]>();
  private readonly byOthers = new Map<string, readonly Outcome[]>();
  private readonly key: string;

  constructor(readonly of: GoodBench) {
    const { seed, environment, renewedBefore } = of;
    const sound = (draw: string): TrueBench => new TrueBench([], draw, environment, renewedBefore);
    this.bench = sound(seed);
    this.others = DRAW_SEEDS.slice(0, OTHERS).map(sound);
    this.key = keyOf(of);
  }

  /** Whether these are the good ones beside that bench. */
  isBeside(bench: GoodBench): boolean {
    return keyOf(bench) === this.key;
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
