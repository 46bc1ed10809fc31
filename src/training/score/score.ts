import { clamp } from '../../base/maths.ts';
import { type ScoreWeights, USUAL_WEIGHTS } from '../scenario/weights.ts';
import { boardReason } from './boardMarks.ts';
import type {
  DebriefFacts,
  JobCost,
  RuleOutcome,
  SafetyBreach,
  ScorePart,
  ScoreReason,
} from './DebriefFacts.ts';
import { economyReasons } from './economy.ts';
import type { JudgedJob } from './JudgedJob.ts';
import { repairReasons } from './repairReasons.ts';
import type { VerdictWorth } from './VerdictWorth.ts';

const RIGHT_ITEM = 20;
const RIGHT_MODE = 5;
/** What a right verdict is worth that nothing carries, as a share. */
const UNCARRIED = 0.2;
const PROOF = 20;
const METHOD = 25;
const MINOR_POINTS = 5;
const SERIOUS_CAP = 40;

export interface ScoreFacts {
  readonly job: JudgedJob;
  readonly worth: VerdictWorth;
  readonly rules: readonly RuleOutcome[];
  readonly safety: readonly SafetyBreach[];
  readonly renewed: DebriefFacts['renewed'];
  readonly cost: JobCost;
  readonly trialFits: readonly number[];
}

/**
 * The score out of 100, in whole points. A wrong verdict that is well carried keeps its evidence; a lucky one has little of
 * anything. Safety is not points to be earned: a minor breach takes five, a serious one holds the total at 40.
 */
export function scoreOf(facts: ScoreFacts): DebriefFacts['score'] {
  const { job, worth, rules, safety, renewed, cost } = facts;
  const ticks = {
    minutes: facts.trialFits,
    money: renewed.flatMap(({ needed, money, tick }) => (!needed && money > 0 ? [tick] : [])),
  };
  const usual: ScorePart[] = [
    part('verdict', verdictReasons(worth)),
    part('evidence', [proofReason(job), boardReason(job.evidence)]),
    part('method', methodReasons(rules), METHOD),
    part('economy', economyReasons(job, worth, cost, ticks)),
    part('repair', repairReasons(job, worth, renewed)),
  ];
  const { weights } = job.scenario;
  const parts = weights === undefined ? usual : usual.map((one) => weighed(one, weights));
  const minor = safety.filter(({ grade }) => grade === 'minor').length;
  const serious = safety.some(({ grade }) => grade === 'serious');
  const safetyDeduction = minor * MINOR_POINTS;
  const sum = parts.reduce((total, { points }) => total + points, 0) - safetyDeduction;
  const total = clamp(sum, 0, serious ? SERIOUS_CAP : 100);
  return { total, parts, safetyDeduction, cappedAt: serious ? SERIOUS_CAP : null };
}

function part(name: ScorePart['part'], because: readonly ScoreReason[], whole?: number): ScorePart {
  const points = because.reduce((sum, line) => sum + line.points, 0);
  const of = whole ?? because.reduce((sum, line) => sum + line.of, 0);
  return { part: name, points: Math.floor(points + 0.5), of, because };
}

/** A part at the weight that the job gives it: each of its lines in the same measure. */
function weighed({ part: name, because }: ScorePart, weights: ScoreWeights): ScorePart {
  const measure = weights[name] / USUAL_WEIGHTS[name];
  const lines = because.map((line) => ({ ...line, points: line.points * measure, of: line.of * measure }));
  return part(name, lines, weights[name]);
}

function verdictReasons({ right, modeRight, weight }: VerdictWorth): readonly ScoreReason[] {
  const share = UNCARRIED + (1 - UNCARRIED) * weight;
  return [
    { kind: 'right-item', points: right ? RIGHT_ITEM * share : 0, of: RIGHT_ITEM, right, weight },
    {
      kind: 'right-mode',
      points: modeRight ? RIGHT_MODE * share : 0,
      of: RIGHT_MODE,
      right: modeRight,
      weight,
    },
  ];
}

/** How far the verdict is carried; whether it is right does not matter here. */
function proofReason({ evidence, verdict }: JudgedJob): ScoreReason {
  const { weight, prior, cited, shown, leads } = evidence.verdict;
  return {
    kind: 'proof',
    points: PROOF * weight,
    of: PROOF,
    entries: verdict.cites,
    weight,
    prior,
    cited,
    shown,
    leads,
  };
}

/** Rules weigh the same: each is worth its share of those that had an occasion or that the plan asks for. */
function methodReasons(rules: readonly RuleOutcome[]): readonly ScoreReason[] {
  const judged = rules.filter(({ outcome }) => outcome !== 'no-occasion');
  return judged.map(({ rule, outcome, entries, ticks }) => {
    const of = METHOD / judged.length;
    const isKept = outcome === 'kept';
    return { kind: 'rule', points: isKept ? of : 0, of, rule, kept: isKept, entries, ticks };
  });
}
