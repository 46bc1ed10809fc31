import { unreachable } from '../../base/assert.ts';
import type { Tick } from '../../base/ticks.ts';
import { createWorld } from '../../sim/world/World.ts';
import type { FaultChoice, WorldPort } from '../../sim/world/WorldPort.ts';
import { answer } from './answer.ts';
import type { Environment } from './environment.ts';
import type { Shown } from './Shown.ts';
import { Sight } from './Sight.ts';
import type { ScriptStep } from './watchShown.ts';

/** One suspect's bench under one tolerance draw, which goes through the true bench's script behind it and answers its questions. */
export class SuspectWorld {
  readonly answers: (Shown | undefined)[] = [];
  private world: WorldPort | null = null;
  private sight = new Sight();
  private done = 0;

  constructor(
    private readonly seed: string,
    private readonly faults: readonly FaultChoice[],
    private readonly environment: Environment,
  ) {}

  /** Steps of the script that it has gone through. */
  get at(): number {
    return this.done;
  }

  /** True while the bench is held in memory. */
  get held(): boolean {
    return this.world !== null;
  }

  /** Goes through the first steps of the script, or on by so many ticks of the bench's time at most. */
  catchUp(
    script: readonly ScriptStep[],
    to: number = script.length,
    mostTicks: Tick = Number.MAX_SAFE_INTEGER,
  ): void {
    this.world ??= createWorld({ seed: this.seed, faults: this.faults, ...this.environment });
    const { world } = this;
    const most = Math.min(world.tick + mostTicks, Number.MAX_SAFE_INTEGER);
    for (; this.done < to; this.done++) {
      const step = script[this.done] as ScriptStep;
      if (step.tick > most) {
        world.advanceTo(most);
        return;
      }
      if (step.tick > world.tick) world.advanceTo(step.tick);
      this.take(world, step);
    }
  }

  /** Lets the bench go; taken up again, it goes through the script from the beginning. */
  letGo(): void {
    if (this.world === null) return;
    this.world = null;
    this.sight = new Sight();
    this.done = 0;
  }

  private take(world: WorldPort, step: ScriptStep): void {
    switch (step.kind) {
      case 'act':
        // A drive would take longer than all the rest, and what it tells is known from the complaint. What another
        // world refuses, this one may do, and the other way round: it goes on as it is.
        if (step.action.kind !== 'road-test') world.apply(step.action);
        return;
      case 'mark':
        this.sight.mark(world.observe());
        return;
      case 'watch-switch':
        this.sight.watchSwitch(world.observe());
        return;
      case 'ask':
        this.answers[step.number] = answer(step.question, world.observe(), this.sight);
        return;
      default:
        unreachable(step);
    }
  }
}
