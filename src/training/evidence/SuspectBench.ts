import { secondsToTicks } from '../../base/ticks.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { AnswerSource, DrawAnswers, WorldAnswers } from './Answers.ts';
import { drawsFor, isLikely, type Likely } from './allotment.ts';
import type { Complaint } from './complaint.ts';
import { DRAW_SEEDS, type Environment } from './environment.ts';
import type { Beliefs } from './posteriorOf.ts';
import type { Suspect } from './Suspect.ts';
import { SuspectWorld } from './SuspectWorld.ts';
import type { ToolState } from './toolStates.ts';
import { usesTool } from './toolUse.ts';
import type { ScriptStep } from './watchShown.ts';

const TURN_TICKS = secondsToTicks(30);

/** The worlds of one set of faults: its draws with good tools, and its first draw with each tool bad. */
interface WorldSet {
  readonly draws: readonly SuspectWorld[];
  readonly badTools: ReadonlyMap<ToolState, SuspectWorld>;
  /** Numbers of the suspects that are held against it. */
  readonly suspects: number[];
  /** Draws that are kept in step now. */
  wanted: number;
  /** Whether a suspect that shows it is likely enough to be tried with bad tools. */
  likely: Likely;
}

/**
 * Every suspect's own bench, kept in step with the script that a `ShownWatch` takes down. Nothing happens by itself:
 * `catchUp` brings so many benches up to date; once none is `behind`, the rest is a matter of arithmetic. Which benches
 * there are changes only with `allot`.
 */
export class SuspectBench implements AnswerSource {
  private readonly sets = new Map<string, WorldSet>();
  private readonly setOf = new Map<readonly FaultChoice[], WorldSet>();
  private readonly toolByName: ReadonlyMap<string, ToolState>;
  private readonly toolsInHand = new Set<ToolState>();
  private readonly toolsUsed = new Set<ToolState>();
  /** The truck with nothing wrong: it has all its draws and all bad tools, since others lean on it. */
  private readonly soundSet: WorldSet;
  private readonly soundAnswers: DrawAnswers;
  private scriptSeen = 0;

  /** `complaints` tell what the drives before the work order melted; null where there were none. */
  constructor(
    private readonly beliefs: Beliefs,
    private readonly environment: Environment,
    complaints: readonly Complaint[] | null = null,
  ) {
    this.toolByName = new Map(
      beliefs.tools.flatMap((tool) => (tool.bad === null ? [] : [[nameOf(tool.bad), tool]])),
    );
    this.soundSet = this.setWith([]);
    this.soundSet.likely = 'always';
    this.soundSet.wanted = DRAW_SEEDS.length;
    for (const [s, suspect] of beliefs.suspects.entries()) {
      const melted = complaints?.[s]?.fuseMelted === true && suspect.faces === null;
      for (const faults of faceFaults(suspect)) {
        const set = this.setWith(melted ? [...faults, { fault: 'fuse-blown', severity: 1 }] : faults);
        set.suspects.push(s);
        this.setOf.set(faults, set);
      }
    }
    this.soundAnswers = this.soundSet.draws.map(({ answers }) => answers);
    this.allot(beliefs.prior);
  }

  /**
   * Takes benches on along the first steps of a script, in at most so many turns of half a minute of their own time each;
   * returns how many turns it took, 0 when all are in step. A turn costs some milliseconds.
   */
  catchUp(script: readonly ScriptStep[], to: number, mostTurns: number): number {
    this.noteTools(script, to);
    let turns = 0;
    for (const world of this.wantedWorlds()) {
      while (world.at < to) {
        if (turns >= mostTurns) return turns;
        world.catchUp(script, to, TURN_TICKS);
        turns++;
      }
    }
    return turns;
  }

  /** True while a bench that is wanted has not gone through the first steps of a script. */
  behind(script: readonly ScriptStep[], to: number): boolean {
    this.noteTools(script, to);
    for (const world of this.wantedWorlds()) if (world.at < to) return true;
    return false;
  }

  /** Benches held in memory now. */
  get held(): number {
    let count = 0;
    for (const { draws, badTools } of this.sets.values()) {
      for (const world of [...draws, ...badTools.values()]) if (world.held) count++;
    }
    return count;
  }

  /**
   * Gives every suspect as many benches as its chance is worth: lets some go, and takes up others, which then have the
   * whole script before them. Returns the numbers of the suspects for which other benches answer from now on.
   */
  allot(chances: readonly number[]): readonly number[] {
    const changed = new Set<number>();
    for (const set of this.sets.values()) {
      const chance = set.suspects.reduce((most, s) => Math.max(most, chances[s] ?? 0), 0);
      const wanted = set === this.soundSet ? set.wanted : drawsFor(chance, set.wanted);
      const likely = isLikely(chance, set.likely);
      if (wanted !== set.wanted || likely !== set.likely) for (const s of set.suspects) changed.add(s);
      set.wanted = wanted;
      set.likely = likely;
      for (const world of set.draws.slice(wanted)) world.letGo();
      if (likely === 'no') for (const world of set.badTools.values()) world.letGo();
    }
    return [...changed];
  }

  answersOf(faults: readonly FaultChoice[]): DrawAnswers {
    const set = this.setOf.get(faults);
    if (set === undefined) return [];
    // What a bench answered before it was let go stays true: odds that hang on it must not swing as benches come and go.
    return set.draws
      .map(({ answers }) => answers)
      .filter((answers, draw) => draw < set.wanted || answers.length > 0);
  }

  answersWithBadTool(faults: readonly FaultChoice[], tool: FaultChoice): WorldAnswers | null {
    const set = this.setOf.get(faults);
    return set === undefined ? null : this.withBadTool(set, tool);
  }

  soundWithBadTool(tool: FaultChoice): WorldAnswers | null {
    return this.withBadTool(this.soundSet, tool);
  }

  get sound(): DrawAnswers {
    return this.soundAnswers;
  }

  hasUsed(tool: FaultChoice): boolean {
    const state = this.toolByName.get(nameOf(tool));
    return state !== undefined && this.toolsUsed.has(state);
  }

  private withBadTool({ badTools }: WorldSet, tool: FaultChoice): WorldAnswers | null {
    const state = this.toolByName.get(nameOf(tool));
    if (state === undefined || !this.toolsUsed.has(state)) return null;
    return badTools.get(state)?.answers ?? null;
  }

  private setWith(faults: readonly FaultChoice[]): WorldSet {
    const key = JSON.stringify(faults);
    let set = this.sets.get(key);
    if (set === undefined) {
      const world = (seed: string, bad: readonly FaultChoice[] = []): SuspectWorld =>
        new SuspectWorld(seed, [...faults, ...bad], this.environment);
      const badTools = this.beliefs.tools.flatMap((tool): [ToolState, SuspectWorld][] =>
        tool.bad === null ? [] : [[tool, world(DRAW_SEEDS[0] as string, [tool.bad])]],
      );
      set = {
        draws: DRAW_SEEDS.map((seed) => world(seed)),
        badTools: new Map(badTools),
        suspects: [],
        wanted: 0,
        likely: 'no',
      };
      this.sets.set(key, set);
    }
    return set;
  }

  /** A tool counts as used from the first question on that was asked after it had been taken in hand. */
  private noteTools(script: readonly ScriptStep[], to: number): void {
    for (; this.scriptSeen < to; this.scriptSeen++) {
      const step = script[this.scriptSeen];
      if (step === undefined) continue;
      if (step.kind === 'ask') for (const tool of this.toolsInHand) this.toolsUsed.add(tool);
      for (const tool of this.toolByName.values()) {
        if (tool.item !== null && usesTool(tool.item, step)) this.toolsInHand.add(tool);
      }
    }
  }

  private *wantedWorlds(): Generator<SuspectWorld> {
    for (const { draws, badTools, wanted, likely } of this.sets.values()) {
      for (let d = 0; d < wanted; d++) yield draws[d] as SuspectWorld;
      if (likely === 'no') continue;
      for (const [tool, world] of badTools) if (this.toolsUsed.has(tool)) yield world;
    }
  }
}

/** The sets of faults whose worlds a suspect is held against. */
function faceFaults(suspect: Suspect): readonly (readonly FaultChoice[])[] {
  return suspect.faces === null ? [suspect.faults] : [suspect.faces.good, suspect.faces.bad];
}

function nameOf({ fault, severity }: FaultChoice): string {
  return `${fault} ${severity}`;
}
