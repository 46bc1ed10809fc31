import { assert } from '../../base/assert.ts';
import { ok, type Result } from '../../base/Result.ts';
import type { Tick } from '../../base/ticks.ts';
import type { RigId } from '../../sim/devices/BenchSurface.ts';
import type { Advice } from '../../training/coach/Advice.ts';
import type { EvidenceTables } from '../../training/evidence/EvidenceTables.ts';
import type { JobPar } from '../../training/evidence/JobPar.ts';
import { SittingEvidence } from '../../training/evidence/SittingEvidence.ts';
import type { Scenario } from '../../training/scenario/Scenario.ts';
import { openSealed, type SealedScenario } from '../../training/scenario/seal.ts';
import type { DebriefFacts } from '../../training/score/DebriefFacts.ts';
import type { DebriefProblem } from '../../training/score/debrief.ts';
import type { TimedAction } from '../../training/sitting/SittingAction.ts';
import type { SittingRecord } from '../../training/sitting/SittingRecord.ts';
import type { Debriefing } from './debriefing.ts';
import type { BeginWeighing, WeighedSitting } from './EvidenceDesk.ts';
import { keptTables } from './keptTables.ts';
import type { EvidenceFailure } from './messages.ts';

/** How a sitting gets at what a closed job is judged with: what is there already, or its fetching. */
export interface DebriefingParts {
  /** Null while it has not been fetched. Must be there when advice or a debrief is asked for. */
  here(): Debriefing | null;
  fetch(): Promise<Debriefing>;
}

/** Fetches the kept tables of a rig, and gives the way to weigh sittings by them. */
export async function loadWeighing(
  debriefing: DebriefingParts,
  rig: RigId | undefined,
): Promise<Result<BeginWeighing, EvidenceFailure>> {
  const tables = await keptTables(rig);
  if (!tables.ok) return tables;
  return ok((sealed, record) => weighedBy(tables.value, debriefing, sealed, record));
}

/** Begins to weigh a sitting. Throws when the scenario or the record is not sound; the page has opened both before. */
export function weighedBy(
  tables: EvidenceTables,
  debriefing: DebriefingParts,
  sealed: SealedScenario,
  record: SittingRecord,
): WeighedSitting {
  const scenario = openSealed(sealed);
  assert(scenario.ok, 'the scenario opens here as on the page', { scenario });
  const evidence = SittingEvidence.begin(scenario.value, record, tables);
  assert(evidence.ok, 'the record replays here as on the page', { evidence });
  return new Weighed(scenario.value, tables, evidence.value, debriefing, record);
}

class Weighed implements WeighedSitting {
  private readonly actions: TimedAction[];
  private tick: Tick;
  private par: JobPar | null = null;

  constructor(
    private readonly scenario: Scenario,
    private readonly tables: EvidenceTables,
    private readonly evidence: SittingEvidence,
    private readonly debriefing: DebriefingParts,
    record: SittingRecord,
  ) {
    this.actions = [...record.actions];
    this.tick = record.endTick;
  }

  acted(timed: TimedAction): void {
    this.evidence.acted(timed);
    this.actions.push(timed);
    this.tick = Math.max(this.tick, timed.tick);
  }

  passed(tick: Tick): void {
    this.evidence.passed(tick);
    this.tick = Math.max(this.tick, tick);
  }

  work(mostTurns: number): number {
    return this.evidence.work(mostTurns);
  }

  get settled(): boolean {
    return this.evidence.settled;
  }

  advice(): Advice {
    const { evidence, actions, tick, tables } = this;
    const here = this.debriefing.here();
    assert(here !== null, 'what the coach advises with is fetched before he is asked');
    const posterior = evidence.posterior();
    return here.adviceOf({
      phase: evidence.phase,
      actions,
      tick,
      asked: evidence.asked,
      chances: posterior.suspects,
      toolChance: (tool) => posterior.ofTool(tool),
      tables,
      tools: this.scenario.tools,
    });
  }

  prepare(): void {
    const here = this.debriefing.here();
    if (here !== null) this.par ??= here.parOf(this.scenario, this.tables);
    // Ahead of its use: who is offline meanwhile asks again with the debrief.
    else
      this.debriefing.fetch().then(
        () => this.prepare(),
        () => {},
      );
  }

  debrief(record: SittingRecord): Result<DebriefFacts, DebriefProblem> {
    const here = this.debriefing.here();
    assert(here !== null, 'what a closed job is judged with is fetched before it is asked for');
    this.par ??= here.parOf(this.scenario, this.tables);
    return here.debrief(this.scenario, record, this.evidence.facts(), this.par);
  }
}
