import { readFileSync } from 'node:fs';
import { describe, expect, it, vi } from 'vitest';
import { runStandardTest } from '../../src/sim/rigs/standardTests/runStandardTest.ts';
import type { StandardTestId } from '../../src/sim/rigs/standardTests/testIds.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import { type CoachWords, coachWords } from '../../src/text/coachWords.ts';
import type { Advice } from '../../src/training/coach/Advice.ts';
import { adviceOf } from '../../src/training/coach/adviceOf.ts';
import { testSheet } from '../../src/training/coach/testSheet.ts';
import { SittingEvidence } from '../../src/training/evidence/SittingEvidence.ts';
import { hashOfContent } from '../../src/training/scenario/hashOfContent.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import { COACH_DEPTHS } from '../../src/training/sitting/SittingAction.ts';
import { tablesOfFew } from './fewSuspects.ts';
import { standardTest } from './support.ts';

// Whole sittings, every suspect's own bench beside them.
vi.setConfig({ testTimeout: 120_000 });

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

interface Told {
  readonly advice: Advice;
  readonly words: readonly CoachWords[];
}

/** A job at work, with its coach. */
class Coached {
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

  get chances(): readonly number[] {
    this.weigh();
    return this.evidence.posterior().suspects;
  }

  ask(): Told {
    this.weigh();
    const posterior = this.evidence.posterior();
    const advice = adviceOf({
      phase: this.evidence.phase,
      actions: this.sitting.record().actions,
      tick: this.sitting.tick,
      asked: this.evidence.asked,
      chances: posterior.suspects,
      toolChance: (tool) => posterior.ofTool(tool),
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

const wrong = (fault: string, severity = 0.5): readonly FaultChoice[] => [{ fault, severity }];

/** Two truths, work that cannot tell them apart, and the test that can. */
const PAIRS: readonly {
  readonly name: string;
  readonly one: readonly FaultChoice[];
  readonly other: readonly FaultChoice[];
  readonly before: readonly StandardTestId[];
  readonly parts: StandardTestId;
}[] = [
  {
    name: 'a torn capsule and a split hose',
    one: wrong('capsule-torn'),
    other: wrong('canister-hose-split'),
    before: ['codes-and-freeze-data', 'meter-on-battery', 'coil-ohms', 'hand-pump-dead-end'],
    parts: 'hold-capped',
  },
  {
    name: 'a switch stuck open and a sound truck',
    one: wrong('switch-stuck-open', 1),
    other: [],
    before: ['codes-and-freeze-data', 'sense-at-plug', 'command-clicks', 'hold-capped'],
    parts: 'vacuum-and-sense',
  },
  {
    name: 'a leaking cap and a leaking vent seat',
    one: wrong('filler-cap-leaking'),
    other: wrong('vent-seat-leaking'),
    before: ['codes-and-freeze-data', 'command-clicks', 'hand-pump-dead-end', 'sense-at-plug'],
    parts: 'smoke-vessel-alone',
  },
  {
    name: 'a wire that opens when moved and a split hose',
    one: [{ fault: 'sense-open', severity: 0.6, whenMoved: true }],
    other: wrong('canister-hose-split'),
    before: ['meter-on-battery', 'sense-at-plug', 'coil-ohms'],
    parts: 'wiggle-sense',
  },
  {
    name: 'an open winding and a stuck plunger',
    one: wrong('winding-open', 1),
    other: wrong('plunger-stuck', 1),
    before: ['meter-on-battery', 'meter-leads-together', 'sense-at-plug', 'hold-capped'],
    parts: 'coil-ohms',
  },
];

describe('the coach speaks of what was shown, not of what is wrong', () => {
  it.each(PAIRS)('the same advice in the same words until $parts parts them: $name', (pair) => {
    const one = new Coached(pair.one);
    const other = new Coached(pair.other);
    expect(one.ask()).toEqual(other.ask());
    for (const id of pair.before) {
      one.test(id);
      other.test(id);
      expect(one.shown, id).toEqual(other.shown);
      expect(one.ask(), id).toEqual(other.ask());
    }
    one.test(pair.parts);
    other.test(pair.parts);
    expect(one.shown).not.toEqual(other.shown);
    expect(one.chances).not.toEqual(other.chances);
  });

  it('once the bench has shown the difference, so may the advice', () => {
    const told = [wrong('capsule-torn'), wrong('canister-hose-split')].map((faults) =>
      new Coached(faults).test('codes-and-freeze-data').test('hand-pump-dead-end').test('hold-capped').ask(),
    );
    expect(told[0]?.advice).not.toEqual(told[1]?.advice);
  });
});
