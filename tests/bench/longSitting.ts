import { readFileSync } from 'node:fs';
import { secondsToTicks, type Tick } from '../../src/base/ticks.ts';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import type { ScriptLine } from '../../src/cli/ScriptStep.ts';
import type { Action } from '../../src/sim/world/Action.ts';
import { createWorld } from '../../src/sim/world/World.ts';
import type { WorldSpec } from '../../src/sim/world/WorldPort.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { replayActions } from '../../src/training/sitting/replayActions.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { SittingRecord } from '../../src/training/sitting/SittingRecord.ts';

/** A sitting of a realistic length. */
export const SITTING_SECONDS = 900;

export interface LongSitting {
  readonly name: string;
  readonly scenario: Scenario;
  readonly record: SittingRecord;
}

export interface SittingChoice {
  readonly name: string;
  /** Which scenario it is sat on, and the file of its actions. */
  readonly id: string;
  readonly actions: string;
}

/**
 * A job with the pauses of someone who reads, thinks and walks round the truck: the same pause after every line, but none while the solenoid clicks,
 * so long that the job takes 15 minutes.
 */
export function longSitting({ name, id, actions }: SittingChoice): LongSitting {
  const at = (path: string): string => readFileSync(path, 'utf8');
  const scenario = loadScenario(at(`scenarios/${id}.yaml`), `${id}.yaml`);
  const lines = parseActions(at(actions));
  if (!scenario.ok || !lines.ok) throw new Error(JSON.stringify([scenario, lines]));
  const played = (pauseSeconds: number): Sitting => play(scenario.value, lines.value, pauseSeconds);
  // Pauses change how long "until steady" takes, so the right pause is found by trying.
  let pause = 0;
  for (let round = 0; round < 4; round++) {
    const seconds = played(pause).tick / secondsToTicks(1);
    pause = Math.max(pause + (SITTING_SECONDS - seconds) / lines.value.length, 0);
  }
  return { name, scenario: scenario.value, record: played(pause).record() };
}

function play(scenario: Scenario, lines: readonly ScriptLine[], pauseSeconds: number): Sitting {
  const sitting = Sitting.begin(scenario);
  const pause = secondsToTicks(pauseSeconds);
  for (const line of lines) {
    const done = runActions(sitting, [line]);
    if (!done.ok) throw new Error(`"${done.error.text}" was refused: ${done.error.refusal}`);
    if (sitting.observe().reader.command !== 'pulse') sitting.advanceTo(sitting.tick + pause);
  }
  return sitting;
}

export interface WorldActions {
  readonly spec: WorldSpec;
  readonly actions: readonly { readonly tick: Tick; readonly action: Action }[];
}

/** What of a sitting reaches its world. */
export function worldActions({ scenario, record }: LongSitting): WorldActions {
  const actions: { readonly tick: Tick; readonly action: Action }[] = [];
  let used: WorldSpec | null = null;
  const begin = (): Sitting =>
    Sitting.begin(scenario, record.seed, (spec) => {
      used = spec;
      const world = createWorld(spec);
      const apply = world.apply.bind(world);
      world.apply = (action) => {
        actions.push({ tick: world.tick, action });
        return apply(action);
      };
      return world;
    });
  const done = replayActions(begin, scenario, record, {});
  if (!done.ok || used === null) throw new Error(`the sitting does not replay: ${JSON.stringify(done)}`);
  return { spec: used, actions };
}
