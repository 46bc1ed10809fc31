import { exp, ln } from '../../base/maths.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { AnswerSource } from './Answers.ts';
import { type Cluster, clustersOf } from './clusters.ts';
import { foretell } from './foretell.ts';
import { likelihood } from './likelihood.ts';
import type { Question } from './Question.ts';
import type { Shown } from './Shown.ts';
import type { Faces, Suspect } from './Suspect.ts';
import type { Asked } from './watchShown.ts';

type Answer = Shown['value'];
type Faults = readonly FaultChoice[];

const MOST_CLUSTERED = 2000;

/**
 * What evidence says for each suspect, as logarithms of likelihoods. What a cluster of repeats says is worked out once and
 * kept, so that a new reading costs its own work only; the worlds must have answered before they are asked for.
 */
export class SuspectLikelihood {
  private readonly neighbours: readonly (readonly Faults[])[];
  private readonly clustered = new Map<string, readonly Cluster[]>();
  private readonly always = new Map<string, readonly number[]>();
  private readonly faces = new Map<string, Map<Faults, number>>();

  constructor(
    private readonly suspects: readonly Suspect[],
    private readonly source: AnswerSource,
  ) {
    this.neighbours = neighboursOf(suspects);
  }

  /** For each suspect, under one state of the tools, from the questions of these numbers. */
  logs(tool: FaultChoice | null, asked: readonly Asked[], numbers: readonly number[]): number[] {
    const clusters = this.clusters(asked, numbers);
    const sums = this.suspects.map(() => 0);
    for (const cluster of clusters) {
      const row = this.row(tool, cluster);
      for (let s = 0; s < sums.length; s++) sums[s] = (sums[s] ?? 0) + cluster.weight * (row[s] ?? 0);
    }
    for (const [s, { faces }] of this.suspects.entries()) {
      if (faces !== null) sums[s] = this.comesAndGoes(faces, tool, asked, numbers);
    }
    return sums;
  }

  /** Whether a bad tool could have changed anything so far. */
  matters(tool: FaultChoice | null): tool is FaultChoice {
    return tool !== null && this.source.hasUsed(tool);
  }

  /** What one cluster says for every suspect that is always there; 0 for those that come and go. */
  private row(tool: FaultChoice | null, cluster: Cluster): readonly number[] {
    const key = keyOf(tool, cluster);
    const before = this.always.get(key);
    if (before !== undefined) return before;
    const foretold = new Map<Faults, readonly Answer[]>();
    const of = (faults: Faults): readonly Answer[] => {
      let draws = foretold.get(faults);
      if (draws === undefined) {
        draws = foretell(this.source, faults, tool, cluster);
        foretold.set(faults, draws);
      }
      return draws;
    };
    const row = this.suspects.map(({ faults, faces }, s) => {
      if (faces !== null) return 0;
      return ln(likelihood(cluster.shown, { draws: of(faults), beside: (this.neighbours[s] ?? []).map(of) }));
    });
    this.always.set(key, row);
    return row;
  }

  /**
   * A fault that comes and goes: at each trial it shows its bad face with its chance, else its good one. The trials are
   * independent; within a face everything is shared as for any other suspect. So k bad of n weigh p^k·(1 − p)^(n − k).
   */
  private comesAndGoes(
    faces: Faces,
    tool: FaultChoice | null,
    asked: readonly Asked[],
    numbers: readonly number[],
  ): number {
    let sum = 0;
    const shownGood: number[] = [];
    const shownBad: number[] = [];
    for (const ofTrial of byTrial(faces, asked, numbers)) {
      const clusters = this.clusters(asked, ofTrial);
      const good = this.underFace(faces.good, tool, clusters);
      const bad = this.underFace(faces.bad, tool, clusters);
      const better = Math.max(good, bad);
      sum += ln((1 - faces.chance) * exp(good - better) + faces.chance * exp(bad - better));
      (good >= bad ? shownGood : shownBad).push(...ofTrial);
    }
    sum += this.underFace(faces.good, tool, this.clusters(asked, shownGood));
    return sum + this.underFace(faces.bad, tool, this.clusters(asked, shownBad));
  }

  /** Clusters of the same questions are always the same: put together once. */
  private clusters(asked: readonly Asked[], numbers: readonly number[]): readonly Cluster[] {
    const key = numbers.join();
    let clusters = this.clustered.get(key);
    if (clusters === undefined) {
      if (this.clustered.size >= MOST_CLUSTERED) this.clustered.clear();
      clusters = clustersOf(asked, numbers);
      this.clustered.set(key, clusters);
    }
    return clusters;
  }

  private underFace(faults: Faults, tool: FaultChoice | null, clusters: readonly Cluster[]): number {
    let sum = 0;
    for (const cluster of clusters) sum += cluster.weight * this.ofFace(faults, tool, cluster);
    return sum;
  }

  private ofFace(faults: Faults, tool: FaultChoice | null, cluster: Cluster): number {
    const key = keyOf(tool, cluster);
    let known = this.faces.get(key);
    if (known === undefined) {
      known = new Map();
      this.faces.set(key, known);
    }
    let log = known.get(faults);
    if (log === undefined) {
      log = ln(
        likelihood(cluster.shown, { draws: foretell(this.source, faults, tool, cluster), beside: [] }),
      );
      known.set(faults, log);
    }
    return log;
  }
}

function keyOf(tool: FaultChoice | null, { asks }: Cluster): string {
  return `${tool?.fault ?? ''} ${asks.join()}`;
}

/** The next milder and the next worse degree of the same fault, for each suspect. */
function neighboursOf(suspects: readonly Suspect[]): readonly (readonly Faults[])[] {
  const families = new Map<string, Suspect[]>();
  for (const suspect of suspects) {
    const family = families.get(suspect.family) ?? [];
    families.set(suspect.family, family);
    family.push(suspect);
  }
  return suspects.map(({ family, level }) =>
    (families.get(family) ?? [])
      .filter((other) => other.level === level - 1 || other.level === level + 1)
      .map(({ faults }) => faults),
  );
}

/** Questions of one trial together, for the kind of trial that a fault comes and goes by. */
function byTrial(
  { trialOf }: Faces,
  asked: readonly Asked[],
  numbers: readonly number[],
): readonly (readonly number[])[] {
  const trials = new Map<string, number[]>();
  for (const number of numbers) {
    const question: Question | undefined = asked[number]?.question;
    if (question === undefined) continue;
    // The lowest and the highest while the harness moved are two faces of one trial.
    const trial =
      question.bothFaces && trialOf === 'moved' ? `once ${number}` : String(question.trials[trialOf]);
    const same = trials.get(trial) ?? [];
    trials.set(trial, same);
    same.push(number);
  }
  return [...trials.values()];
}
