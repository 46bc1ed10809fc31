import { type Tick, ticksToSeconds } from '../../base/ticks.ts';
import type { Observation } from '../../sim/world/Observation.ts';
import type { ScenarioStep } from '../scenario/Scenario.ts';
import { conditionHolds, gaugeInHg } from './conditionHolds.ts';
import type { LogEntry } from './LogEntry.ts';
import type { SittingPhase } from './SittingView.ts';

/** A gauge reading at or below this, inHg, counts as let off. */
const LET_OFF_INHG = 0.5;

/** Finds the walkthrough's current step. Only ever goes forward. Fed at grid ticks and at actions. */
export class StepTracker {
  private current = 0;
  private since: Tick = 0;
  private clicksOn = 0;
  private cycles = 0;
  private drawn = false;
  private stillSince: Tick | null = null;
  private handle = 0;

  constructor(private readonly steps: readonly ScenarioStep[]) {}

  /** Index of the step to do now; the number of steps when all are done. */
  get index(): number {
    return this.current;
  }

  notice(seen: Observation, phase: SittingPhase, log: readonly LogEntry[], newClicksOn: number): void {
    this.clicksOn += newClicksOn;
    this.watchPump(seen);
    for (;;) {
      const step = this.steps[this.current];
      if (step === undefined) return;
      const heldSeconds = this.stillSince === null ? 0 : ticksToSeconds(seen.tick - this.stillSince);
      const facts = {
        observation: seen,
        phase,
        log,
        since: this.since,
        clicksOn: this.clicksOn,
        vacuumCycles: this.cycles,
        heldSeconds,
      };
      if (!conditionHolds(step.done, facts)) return;
      this.current++;
      this.since = seen.tick;
      this.clicksOn = 0;
      this.cycles = 0;
      this.drawn = false;
      if (this.stillSince !== null) this.stillSince = seen.tick;
    }
  }

  private watchPump(seen: Observation): void {
    const inHg = gaugeInHg(seen);
    const above = this.steps[this.current]?.done['vacuum-cycles']?.['above-inhg'];
    if (above !== undefined && inHg >= above) this.drawn = true;
    if (this.drawn && inHg <= LET_OFF_INHG) {
      this.drawn = false;
      this.cycles++;
    }
    // The hold begins when the handle comes to rest after a stroke, and ends with the next one or the release.
    const busy = seen.handPump.moving || seen.handPump.handle !== this.handle;
    this.handle = seen.handPump.handle;
    if (seen.handPump.releaseOpen) this.stillSince = null;
    else if (busy) this.stillSince = seen.tick;
  }
}
