import { readFileSync } from 'node:fs';
import type { ItemId } from '../../src/sim/devices/items.ts';
import { runStandardTest } from '../../src/sim/rigs/standardTests/runStandardTest.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { type CoachWords, coachWords } from '../../src/text/coachWords.ts';
import type { Advice } from '../../src/training/coach/Advice.ts';
import { adviceOf } from '../../src/training/coach/adviceOf.ts';
import { testSheet } from '../../src/training/coach/testSheet.ts';
import type { Posterior } from '../../src/training/evidence/Posterior.ts';
import { SittingEvidence } from '../../src/training/evidence/SittingEvidence.ts';
import { hashOfContent } from '../../src/training/scenario/hashOfContent.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import { COACH_DEPTHS, type SittingAction } from '../../src/training/sitting/SittingAction.ts';
import { tablesOfFew } from './fewSuspects.ts';
import { standardTest } from './support.ts';

const TABLES = tablesOfFew(
  new Set([
    'nothing-wrong',
    'capsule-torn/0.5',
    'vent-seat-leaking/0.5',
    'winding-open',
    'plunger-stuck',
    'plunger-sticky/0.5',
    'switch-stuck-open',
    'canister-hose-split/0.5',
    'filler-cap-leaking/0.5',
    'sense-open',
    'sense-open/moved',
    'ground-resistance/0.33',
  ]),
);

/** One work order and one seed, and behind it whatever is wrong. The truck has not been driven, so there are no codes to read. */
function jobWith(faults: readonly FaultChoice[]): Scenario {
  const file = new URL('../../scenarios/all-hoses-new.yaml', import.meta.url);
  const loaded = loadScenario(readFileSync(file, 'utf8'), 'all-hoses-new.yaml');
  if (!loaded.ok) throw new Error('the scenario does not load');
  const { contentHash: _, ...content } = {
    ...loaded.value,
    faults,
    drives: { cycles: 0, refuelled: false },
  };
  return { ...content, contentHash: hashOfContent(content) };
}

export interface Told {
  readonly advice: Advice;
  readonly words: readonly CoachWords[];
}

/** A job at work, with its coach. */
export class Coached {
  private readonly sitting: Sitting;
  private readonly evidence: SittingEvidence;
  private told = 0;

  constructor(faults: readonly FaultChoice[]) {
    const scenario = jobWith(faults);
    this.sitting = Sitting.begin(scenario);
    this.sitting.apply({ kind: 'accept-job' });
    const begun = SittingEvidence.begin(scenario, this.sitting.record(), TABLES);
    if (!begun.ok) throw new Error('the record does not replay');
    this.evidence = begun.value;
    this.told = this.sitting.record().actions.length;
  }

  do(...actions: readonly SittingAction[]): this {
    for (const action of actions) {
      const done = this.sitting.apply(action);
      if (!done.ok) throw new Error(`${action.kind} refused: ${done.error}`);
    }
    return this;
  }

  /** Works a standard test by its sheet and logs what it reads. */
  test(id: StandardTestId): this {
    const { sitting } = this;
    const bench = {
      get tick() {
        return sitting.tick;
      },
      apply: (action: Parameters<Sitting['apply']>[0]) => sitting.apply(action),
      advanceTo: (tick: number) => sitting.advanceTo(tick),
      observe: () => sitting.observe(),
    };
    runStandardTest(standardTest(id), bench, ({ of }) => {
      sitting.apply(of === 'codes' ? { kind: 'read-codes' } : { kind: 'log' });
    });
    return this;
  }

  /** Everything that the bench has shown so far. */
  get shown(): readonly unknown[] {
    this.weigh();
    return this.evidence.asked.map(({ question, shown }) => [question.setUp, question.tick, shown.value]);
  }

  get posterior(): Posterior {
    this.weigh();
    return this.evidence.posterior();
  }

  ask(): Told {
    const { posterior } = this;
    const advice = adviceOf({
      phase: this.evidence.phase,
      actions: this.sitting.record().actions,
      tick: this.sitting.tick,
      asked: this.evidence.asked,
      chances: posterior.suspects,
      toolChance: (tool: ItemId) => posterior.ofTool(tool),
      tables: TABLES,
    });
    return { advice, words: COACH_DEPTHS.map((depth) => coachWords(advice, depth, testSheet)) };
  }

  private weigh(): void {
    const { actions } = this.sitting.record();
    for (const timed of actions.slice(this.told)) this.evidence.acted(timed);
    this.told = actions.length;
    this.evidence.passed(this.sitting.tick);
    while (this.evidence.work(1000) > 0);
  }
}
