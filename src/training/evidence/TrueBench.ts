import type { ItemId } from '../../sim/devices/items.ts';
import { FAULTS } from '../../sim/faults/catalogue.ts';
import type { Outcome } from '../../sim/rigs/standardTests/Outcome.ts';
import { runStandardTest } from '../../sim/rigs/standardTests/runStandardTest.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import { createWorld } from '../../sim/world/World.ts';
import type { FaultChoice, WorldPort } from '../../sim/world/WorldPort.ts';
import type { Environment } from './environment.ts';

/** The item whose renewal cures a fault. */
export function itemOf({ fault }: FaultChoice): ItemId | null {
  return FAULTS.find(({ id }) => id === fault)?.item ?? null;
}

/**
 * A truck with its faults and its tools with theirs, for the plan of par to work on. Each test has a bench of its own, as a
 * job begins, on which its runs follow one another: so what comes and goes does so from run to run.
 */
export class TrueBench {
  private readonly benches = new Map<string, WorldPort>();
  private left: readonly FaultChoice[];

  constructor(
    faults: readonly FaultChoice[],
    private readonly seed: string,
    private readonly environment: Environment,
    private readonly renewedBefore: readonly ItemId[] = [],
  ) {
    this.left = faults;
  }

  /** Faults that no renewal has cured yet. */
  get faults(): readonly FaultChoice[] {
    return this.left;
  }

  /** One more run of a test. */
  show(test: StandardTest): readonly Outcome[] {
    let bench = this.benches.get(test.id);
    if (bench === undefined) {
      const { seed, renewedBefore, environment } = this;
      bench = createWorld({ seed, faults: this.left, ...environment, renewedBefore });
      this.benches.set(test.id, bench);
    }
    return runStandardTest(test, bench);
  }

  /** A good one in the place of an item. Says whether the old one was bad. */
  renew(item: ItemId): boolean {
    const before = this.left.length;
    this.left = this.left.filter((fault) => itemOf(fault) !== item);
    this.benches.clear();
    return this.left.length < before;
  }
}
