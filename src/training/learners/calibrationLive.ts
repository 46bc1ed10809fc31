import { assert } from '../../base/assert.ts';
import { Random } from '../../base/Random.ts';
import type { CalibrationClaim } from '../evidence/calibration.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { SittingEvidence } from '../evidence/SittingEvidence.ts';
import { hashOfContent } from '../scenario/hashOfContent.ts';
import type { Scenario, ScenarioContent } from '../scenario/Scenario.ts';
import { MAX_CITATIONS } from '../sitting/mayAct.ts';
import { Sitting } from '../sitting/Sitting.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { claimByTable, weigherFor } from './calibrationByTable.ts';
import { type CalibrationTruth, calibrationTruth, isRight } from './calibrationTruth.ts';
import { LearnersBench } from './LearnersBench.ts';
import { carriedBy, type Note } from './Note.ts';
import { workAtRandom } from './randomHands.ts';
import type { ToolFactor } from './ToolFactor.ts';

/** What the evidence of one sitting claims: by every suspect's own bench, as the score weighs it, and by the kept tables. */
export interface LiveClaims {
  readonly live: CalibrationClaim;
  readonly byTable: CalibrationClaim;
}

/** More would take minutes of every suspect's bench. */
const MOST_TESTS = 5;
/** What shipped jobs are driven before they begin. */
const CYCLES = [4, 8, 12];

/**
 * One random sitting with its log, and a verdict on the leading item that cites only what speaks for it, weighed as any
 * learner's. Heavy: some seconds.
 */
export function calibrationLive(
  tables: EvidenceTables,
  factor: ToolFactor,
  seed: string,
  mostTests: number = MOST_TESTS,
): LiveClaims {
  const random = Random.of(seed, 'calibration');
  const truth = calibrationTruth(tables.suspects, CYCLES, tables.environment, seed, random);
  const weigher = weigherFor(truth, tables, factor);
  const scenario = scenarioOf(truth, tables, seed);
  const sitting = Sitting.begin(scenario);
  const bench = new LearnersBench(sitting, tables, truth.drives, random);
  bench.do({ kind: 'accept-job' });
  const notes = workAtRandom(
    { test: (id) => bench.test(id), renew: (item) => bench.do({ kind: 'renew', item }) },
    weigher,
    tables,
    random,
    mostTests,
  );
  const begun = SittingEvidence.begin(scenario, sitting.record(), tables);
  assert(begun.ok, 'a sitting that was sat can be weighed', { seed });
  const evidence = begun.value;
  work(evidence);
  const item = evidence.posterior().leading().item as VerdictItem;
  const cites = confirming(notes, (some) => weigher.posterior(some).ofItem(item));
  evidence.acted({ tick: sitting.tick, action: { kind: 'give-verdict', item, mode: null, cites } });
  work(evidence);
  const { group, shown, cited, leads } = evidence.facts().verdict;
  return {
    live: {
      seed,
      truth: truth.suspect.id,
      tools: truth.badTools.map(({ fault }) => fault),
      claimed: item,
      right: isRight(truth, group),
      shown,
      confirming: cited,
      leads,
    },
    byTable: claimByTable(seed, truth, weigher, notes, tables),
  };
}

function work(evidence: SittingEvidence): void {
  while (evidence.work(Number.MAX_SAFE_INTEGER) > 0);
}

/** Of each test that speaks for an item the entry that speaks clearest, eight at most. */
function confirming(notes: readonly Note[], chanceOn: (some: readonly Note[]) => number): readonly number[] {
  const before = chanceOn([]);
  const best = new Map<string, { readonly entry: number; readonly chance: number }>();
  const entries = new Map(notes.map(({ entry, test }) => [entry, test]));
  for (const [entry, test] of entries) {
    const chance = chanceOn(carriedBy(entry, notes));
    if (chance > before && chance > (best.get(test)?.chance ?? 0)) best.set(test, { entry, chance });
  }
  return [...best.values()]
    .sort((a, b) => b.chance - a.chance)
    .slice(0, MAX_CITATIONS)
    .map(({ entry }) => entry)
    .sort((a, b) => a - b);
}

/** The sitting's job: a truck in the shop with the truth in it. Nobody reads its paper. */
function scenarioOf(
  { faults, badTools, drives, codes }: CalibrationTruth,
  { environment }: EvidenceTables,
  seed: string,
): Scenario {
  const content: ScenarioContent = {
    format: 1,
    id: 'calibration',
    title: '',
    summary: '',
    mode: 'assessment',
    level: 1,
    minutes: 0,
    aims: [],
    workOrder: {
      number: '',
      vehicle: '',
      complaint: '',
      history: [],
      codes: codes.map((code) => ({ code, status: 'stored' })),
      cautions: [],
    },
    bench: {
      ambientC: environment.ambientC,
      altitudeM: environment.altitudeM,
      fuelPercent: environment.fuelLevel * 100,
    },
    seed,
    drives,
    faults: [...faults, ...badTools],
    rulesOff: [],
    steps: [],
    remark: '',
  };
  return { ...content, contentHash: hashOfContent(content) };
}
