import { assert } from '../../base/assert.ts';
import { ok, type Result } from '../../base/Result.ts';
import type { Tick } from '../../base/ticks.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { nextPhase } from '../sitting/phases.ts';
import { GRID_TICKS } from '../sitting/Recorder.ts';
import { type ReplayProblem, replayActions } from '../sitting/replayActions.ts';
import { Sitting } from '../sitting/Sitting.ts';
import type { TimedAction, VerdictItem } from '../sitting/SittingAction.ts';
import type { SittingRecord } from '../sitting/SittingRecord.ts';
import type { SittingPhase } from '../sitting/SittingView.ts';
import type { EvidenceFacts, EvidenceStep } from './EvidenceFacts.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import { environmentOf } from './environment.ts';
import { evidenceStep } from './evidenceStep.ts';
import { markEvidence } from './markEvidence.ts';
import type { Posterior } from './Posterior.ts';
import { priorOfJob } from './priorOfJob.ts';
import { settlingTest } from './settlingTest.ts';
import { toolStatesByDegree } from './toolStates.ts';
import { verdictEvidence } from './verdictEvidence.ts';
import { Weighing } from './Weighing.ts';
import { type Asked, ShownWatch } from './watchShown.ts';

/**
 * What a sitting's evidence is worth, while it goes on or at one go. It sits its own replica of the sitting and keeps every
 * suspect's bench in step with it. Nothing happens by itself: `acted` and `passed` tell it what the learner's sitting did,
 * `work` does the reckoning. However these calls are cut, what it says is the same to the last digit.
 */
export class SittingEvidence {
  private readonly weighing: Weighing;
  private readonly steps: EvidenceStep[] = [];
  /** How many questions had been asked when each item was last marked. */
  private readonly askedAtMark = new Map<VerdictItem, number>();
  private phaseNow: SittingPhase = 'work-order';
  private verdictPosterior: Posterior | null = null;

  private constructor(
    private readonly tables: EvidenceTables,
    scenario: Scenario,
    private readonly sitting: Sitting,
    private readonly watch: ShownWatch,
  ) {
    const { suspects } = tables;
    const complaints = tables.complaintsFor(scenario.drives);
    const beliefs = { suspects, prior: priorOfJob(scenario, tables), tools: toolStatesByDegree() };
    this.weighing = new Weighing(watch, beliefs, environmentOf(scenario), complaints);
    this.steps.push(evidenceStep(tables.rig, 0, 0, this.weighing.posterior()));
  }

  /** Begins with what a record holds so far, in whatever phase it is. Errors: as `replay`. */
  static begin(
    scenario: Scenario,
    record: SittingRecord,
    tables: EvidenceTables,
  ): Result<SittingEvidence, ReplayProblem> {
    const begun: { evidence: SittingEvidence | null } = { evidence: null };
    const sat = replayActions(
      () => {
        const sitting = Sitting.begin(scenario, record.seed);
        const watch = new ShownWatch(sitting.observe());
        begun.evidence = new SittingEvidence(tables, scenario, sitting, watch);
        return sitting;
      },
      scenario,
      record,
      {
        after: (_, timed) => begun.evidence?.note(timed),
        sample: { every: GRID_TICKS, at: (sitting) => begun.evidence?.look(sitting) },
      },
    );
    if (!sat.ok) return sat;
    const { evidence } = begun;
    assert(evidence !== null, 'a sitting that was sat again has begun');
    sat.value.onGrid = (sitting) => evidence.look(sitting);
    return ok(evidence);
  }

  /** The learner did this, and was not refused. In the order of the sitting; a wait lets its own time pass. */
  acted(timed: TimedAction): void {
    if (this.verdictGiven) {
      // Nothing that is done now is evidence for the verdict; the replica stands still.
      if (timed.action.kind === 'close-job')
        this.phaseNow = nextPhase(this.phaseNow, 'close-job') ?? 'closed';
      return;
    }
    this.sitting.advanceTo(timed.tick);
    const done = this.sitting.apply(timed.action);
    assert(done.ok, 'the replica allows what the sitting allowed', { action: timed.action });
    this.note(timed);
  }

  /** Time has passed to a tick of the learner's sitting. */
  passed(tick: Tick): void {
    if (!this.verdictGiven && tick > this.sitting.tick) this.sitting.advanceTo(tick);
  }

  /** Works in at most so many turns of some milliseconds each; returns how many it took, 0 when there is nothing to do now. */
  work(mostTurns: number): number {
    let turns = 0;
    while (turns < mostTurns) {
      const took = this.weighing.work(mostTurns - turns);
      turns += took.turns;
      if (took.reached === null) {
        if (took.turns === 0) break;
        continue;
      }
      const { entry, tick } = took.reached;
      if (entry === null) this.verdictPosterior = took.posterior;
      else this.steps.push(evidenceStep(this.tables.rig, entry, tick, took.posterior));
    }
    return turns;
  }

  /** True when everything shown so far has been weighed. */
  get settled(): boolean {
    return this.weighing.settled;
  }

  /** What everything shown so far leaves; after the verdict, what was shown until then. `settled` must be true. */
  posterior(): Posterior {
    return this.weighing.posterior();
  }

  /** Everything that was steadily shown so far. */
  get asked(): readonly Asked[] {
    return this.watch.asked;
  }

  get phase(): SittingPhase {
    return this.phaseNow;
  }

  /** What the evidence was worth. There must be a verdict, and everything must be `settled`. */
  facts(): EvidenceFacts {
    const { card, verdict, marks } = this.sitting.view();
    const shown = this.verdictPosterior;
    assert(verdict !== null && shown !== null && this.settled, 'a verdict is weighed before it is told');
    const prior = this.weighing.prior;
    return {
      steps: this.steps.slice(),
      verdict: verdictEvidence(
        verdict.item,
        verdict.mode,
        { prior, cited: this.weighing.cited(verdict.cites), shown },
        this.tables.groupOf,
      ),
      marks: marks.map((mark) =>
        markEvidence(mark, {
          prior,
          cited: this.weighing.cited(mark.cites),
          shown: this.weighing.after(this.askedAtMark.get(mark.item) ?? 0),
        }),
      ),
      settling: settlingTest(this.tables, shown.suspects, this.watch.asked, card.tools),
    };
  }

  private get verdictGiven(): boolean {
    return this.phaseNow === 'repair' || this.phaseNow === 'closed';
  }

  private look(sitting: Sitting): void {
    if (!this.verdictGiven) this.watch.passed(sitting.observe());
  }

  private note({ action }: TimedAction): void {
    if (action.kind === 'accept-job' || action.kind === 'close-job' || action.kind === 'give-verdict') {
      const next = nextPhase(this.phaseNow, action.kind);
      const verdict = action.kind === 'give-verdict' && this.phaseNow === 'bench';
      this.phaseNow = next ?? this.phaseNow;
      if (verdict) this.weighing.checkpoint(null, this.sitting.tick);
      return;
    }
    if (this.verdictGiven) return;
    const entries = this.watch.entries.length;
    this.watch.acted(action, this.sitting.observe());
    if (action.kind === 'mark-item') this.askedAtMark.set(action.item, this.watch.asked.length);
    if (this.watch.entries.length > entries) {
      this.weighing.checkpoint(this.watch.entries.length, this.sitting.tick);
    }
  }
}
