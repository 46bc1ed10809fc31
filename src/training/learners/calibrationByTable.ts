import { Random } from '../../base/Random.ts';
import type { ItemId } from '../../sim/devices/items.ts';
import { rigNamed } from '../../sim/rigs/rigs.ts';
import { codesWord } from '../evidence/answer.ts';
import type { CalibrationClaim } from '../evidence/calibration.ts';
import { priorOf } from '../evidence/complaint.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import type { Posterior } from '../evidence/Posterior.ts';
import { TrueBench } from '../evidence/TrueBench.ts';
import { verdictEvidence } from '../evidence/verdictEvidence.ts';
import type { VerdictItem } from '../sitting/SittingAction.ts';
import { type CalibrationTruth, calibrationTruth, isRight } from './calibrationTruth.ts';
import { standardTest } from './LearnersBench.ts';
import type { Note } from './Note.ts';
import { type RandomBench, workAtRandom } from './randomHands.ts';
import type { ToolFactor } from './ToolFactor.ts';
import { Weigher } from './weighByTable.ts';

const MOST_TESTS = 9;
/** The shortest drive that shipped jobs begin with: driving is half of a sitting's cost. */
const CYCLES = [4];

/** A truck that has been driven, for as many random hands as want to work at it. */
export interface DrivenTruck {
  readonly seed: string;
  readonly truth: CalibrationTruth;
}

export function drivenTruck({ suspects, environment }: EvidenceTables, seed: string): DrivenTruck {
  return {
    seed,
    truth: calibrationTruth(suspects, CYCLES, environment, seed, Random.of(seed, 'calibration')),
  };
}

/** One random sitting on a bare bench, weighed by the kept tables as simulated learners are. `seed` is that of the hands. */
export function calibrationByTable(
  tables: EvidenceTables,
  factor: ToolFactor,
  seed: string,
  truck: DrivenTruck = drivenTruck(tables, seed),
): CalibrationClaim {
  const { truth } = truck;
  const weigher = weigherFor(truth, tables, factor);
  const bench = bareBench(truth, tables, truck.seed);
  const notes = workAtRandom(bench, weigher, tables, Random.of(seed, 'hands'), MOST_TESTS);
  return claimByTable(seed, truth, weigher, notes, tables);
}

/** Weighs by the tables, from what the work order says. */
export function weigherFor(truth: CalibrationTruth, tables: EvidenceTables, factor: ToolFactor): Weigher {
  const complaints = tables.complaintsFor(truth.drives);
  return new Weigher(tables, factor, priorOf(tables.suspects, complaints, codesWord(truth.codes)));
}

/** What the tables say of the leading item, on everything noted and on those tests alone that spoke for it. */
export function claimByTable(
  seed: string,
  truth: CalibrationTruth,
  weigher: Weigher,
  notes: readonly Note[],
  { groupOf }: EvidenceTables,
): CalibrationClaim {
  const shown = weigher.posterior(notes);
  const { item } = shown.leading();
  const group = groupOf(item);
  const chanceOn = (posterior: Posterior): number => posterior.ofAny(group);
  const prior = weigher.posterior([]);
  const before = chanceOn(prior);
  const speaking = new Set(
    [...new Set(notes.map(({ test }) => test))].filter(
      (id) => chanceOn(weigher.posterior(notes.filter(({ test }) => test === id))) > before,
    ),
  );
  const cited = weigher.posterior(notes.filter(({ test }) => speaking.has(test)));
  const weighed = verdictEvidence(item as VerdictItem, null, { prior, cited, shown }, groupOf);
  return {
    seed,
    truth: truth.suspect.id,
    tools: truth.badTools.map(({ fault }) => fault),
    claimed: item,
    right: isRight(truth, group),
    shown: weighed.shown,
    confirming: weighed.cited,
    leads: weighed.leads,
  };
}

/**
 * The true truck with its tools as they are, without a work order or a log. Each test begins with the bench as a job begins,
 * since that is what the tables are of: on some trucks a test leaves vacuum behind that no hand lets off.
 */
function bareBench(
  { faults, badTools }: CalibrationTruth,
  { environment }: EvidenceTables,
  seed: string,
): RandomBench {
  const bench = new TrueBench([...faults, ...badTools], seed, environment);
  const renewed: ItemId[] = [];
  let entry = 0;
  return {
    test: (test) => {
      entry++;
      const here = [...renewed];
      return bench
        .show(standardTest(rigNamed(environment.rig), test))
        .map((shown) => ({ test, shown, entry, since: shown.tick, renewed: here }));
    },
    renew: (item) => {
      bench.renew(item);
      renewed.push(item);
    },
  };
}
