import { exp, ln } from '../../base/maths.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { AnswerSource } from './Answers.ts';
import { type Cluster, clustersOf } from './clusters.ts';
import { foretell, foretellWithBadTool } from './foretell.ts';
import { likelihood } from './likelihood.ts';
import type { Shown } from './Shown.ts';
import type { Faces, Suspect, TrialOf } from './Suspect.ts';
import { byTrial } from './trials.ts';
import type { Asked } from './watchShown.ts';

type Answer = Shown['value'];
type Faults = readonly FaultChoice[];

const MOST_CLUSTERED = 2000;

/** A cluster, and what it says of whom, as far as it has been worked out. */
interface KnownCluster {
  readonly cluster: Cluster;
  /** Logarithms by suspect (NaN until worked out), by the bad tool. */
  readonly rows: Map<FaultChoice | null, Float64Array>;
  /** Logarithms by the faults of a face, by the bad tool. */
  readonly faces: Map<FaultChoice | null, Map<Faults, number>>;
}

interface Weighed {
  readonly known: KnownCluster;
  readonly weight: number;
}

/**
 * What evidence says for each suspect, as logarithms of likelihoods. What a cluster of repeats says of a suspect is worked
 * out once and kept until its benches change, so that a new reading costs its own work only; the worlds must have
 * answered before they are asked for.
 */
export class SuspectLikelihood {
  private readonly neighbours: readonly (readonly number[])[];
  /** Clusters by their questions. */
  private readonly known = new Map<string, KnownCluster>();
  private readonly clustered = new Map<string, readonly Weighed[]>();

  constructor(
    private readonly suspects: readonly Suspect[],
    private readonly source: AnswerSource,
  ) {
    this.neighbours = neighboursOf(suspects);
  }

  /** For each suspect, under one state of the tools, from the questions of these numbers. */
  logs(tool: FaultChoice | null, asked: readonly Asked[], numbers: readonly number[]): Float64Array {
    const sums = new Float64Array(this.suspects.length);
    for (const { known, weight } of this.clusters(asked, numbers)) {
      const row = this.row(tool, known);
      for (let s = 0; s < sums.length; s++) sums[s] = (sums[s] as number) + weight * (row[s] as number);
    }
    const trials = new Map<TrialOf, readonly Trial[]>();
    for (const [s, { faces }] of this.suspects.entries()) {
      if (faces === null) continue;
      const ofKind = trials.get(faces.trialOf) ?? this.trials(faces.trialOf, asked, numbers);
      trials.set(faces.trialOf, ofKind);
      sums[s] = this.comesAndGoes(faces, tool, asked, ofKind);
    }
    return sums;
  }

  /** Whether a bad tool could have changed anything so far. */
  matters(tool: FaultChoice | null): tool is FaultChoice {
    return tool !== null && this.source.hasUsed(tool);
  }

  /** Other benches answer for these suspects from now on. */
  forget(suspects: readonly number[]): void {
    const touched = new Set(suspects.flatMap((s) => [s, ...(this.neighbours[s] ?? [])]));
    const faces = [...touched].flatMap((s) => {
      const own = this.suspects[s]?.faces;
      return own === null || own === undefined ? [] : [own.good, own.bad];
    });
    for (const known of this.known.values()) {
      for (const row of known.rows.values()) for (const s of touched) row[s] = Number.NaN;
      for (const logs of known.faces.values()) for (const face of faces) logs.delete(face);
    }
  }

  /** What one cluster says for every suspect that is always there; 0 for those that come and go. */
  private row(tool: FaultChoice | null, known: KnownCluster): Float64Array {
    let row = known.rows.get(tool);
    if (row === undefined) {
      row = new Float64Array(this.suspects.length).fill(Number.NaN);
      known.rows.set(tool, row);
    }
    const foretold = new Map<number, readonly Answer[]>();
    for (let s = 0; s < row.length; s++) {
      if (Number.isNaN(row[s])) row[s] = this.log(s, tool, known, foretold);
    }
    return row;
  }

  private log(
    s: number,
    tool: FaultChoice | null,
    known: KnownCluster,
    foretold: Map<number, readonly Answer[]>,
  ): number {
    const { cluster } = known;
    const suspect = this.suspects[s] as Suspect;
    if (suspect.faces !== null) return 0;
    const good = (of: number): readonly Answer[] => {
      let draws = foretold.get(of);
      if (draws === undefined) {
        draws = foretell(this.source, (this.suspects[of] as Suspect).faults, cluster);
        foretold.set(of, draws);
      }
      return draws;
    };
    const neighbours = this.neighbours[s] ?? [];
    if (tool === null) return ln(likelihood(cluster.shown, { draws: good(s), beside: neighbours.map(good) }));
    const bad = foretellWithBadTool(this.source, suspect.faults, tool, cluster);
    if (bad === null) {
      const ofGood = known.rows.get(null)?.[s] ?? Number.NaN;
      return Number.isNaN(ofGood) ? this.log(s, null, known, foretold) : ofGood;
    }
    const beside = neighbours.map(
      (n) => foretellWithBadTool(this.source, (this.suspects[n] as Suspect).faults, tool, cluster) ?? good(n),
    );
    return ln(likelihood(cluster.shown, { draws: bad, beside }));
  }

  /**
   * A fault that comes and goes: at each trial it shows its bad face with its chance, else its good one. The trials are
   * independent; within a face everything is shared as for any other suspect. So k bad of n weigh p^k·(1 − p)^(n − k).
   */
  private comesAndGoes(
    faces: Faces,
    tool: FaultChoice | null,
    asked: readonly Asked[],
    trials: readonly Trial[],
  ): number {
    let sum = 0;
    const shownGood: number[] = [];
    const shownBad: number[] = [];
    for (const { numbers, clusters } of trials) {
      const good = this.underFace(faces.good, tool, clusters);
      const bad = this.underFace(faces.bad, tool, clusters);
      const better = Math.max(good, bad);
      sum += ln((1 - faces.chance) * exp(good - better) + faces.chance * exp(bad - better));
      (good >= bad ? shownGood : shownBad).push(...numbers);
    }
    sum += this.underFace(faces.good, tool, this.clusters(asked, shownGood));
    return sum + this.underFace(faces.bad, tool, this.clusters(asked, shownBad));
  }

  private trials(of: TrialOf, asked: readonly Asked[], numbers: readonly number[]): readonly Trial[] {
    return byTrial(of, asked, numbers).map((ofTrial) => ({
      numbers: ofTrial,
      clusters: this.clusters(asked, ofTrial),
    }));
  }

  /** Clusters of the same questions are always the same: put together once. */
  private clusters(asked: readonly Asked[], numbers: readonly number[]): readonly Weighed[] {
    const key = numbers.join();
    let clusters = this.clustered.get(key);
    if (clusters === undefined) {
      if (this.clustered.size >= MOST_CLUSTERED) this.clustered.clear();
      clusters = clustersOf(asked, numbers).map((cluster) => ({
        known: this.knownOf(cluster),
        weight: cluster.weight,
      }));
      this.clustered.set(key, clusters);
    }
    return clusters;
  }

  private knownOf(cluster: Cluster): KnownCluster {
    const key = cluster.asks.join();
    let known = this.known.get(key);
    if (known === undefined) {
      known = { cluster, rows: new Map(), faces: new Map() };
      this.known.set(key, known);
    }
    return known;
  }

  private underFace(faults: Faults, tool: FaultChoice | null, clusters: readonly Weighed[]): number {
    let sum = 0;
    for (const { known, weight } of clusters) sum += weight * this.ofFace(faults, tool, known);
    return sum;
  }

  private ofFace(faults: Faults, tool: FaultChoice | null, { cluster, faces }: KnownCluster): number {
    let logs = faces.get(tool);
    if (logs === undefined) {
      logs = new Map();
      faces.set(tool, logs);
    }
    let log = logs.get(faults);
    if (log === undefined) {
      const bad = tool === null ? null : foretellWithBadTool(this.source, faults, tool, cluster);
      const draws = bad ?? foretell(this.source, faults, cluster);
      log = ln(likelihood(cluster.shown, { draws, beside: [] }));
      logs.set(faults, log);
    }
    return log;
  }
}

/** Questions of one trial, put together. */
interface Trial {
  readonly numbers: readonly number[];
  readonly clusters: readonly Weighed[];
}

/** The next milder and the next worse degree of the same fault, for each suspect. */
function neighboursOf(suspects: readonly Suspect[]): readonly (readonly number[])[] {
  const families = new Map<string, number[]>();
  for (const [s, { family }] of suspects.entries()) {
    const ofFamily = families.get(family) ?? [];
    families.set(family, ofFamily);
    ofFamily.push(s);
  }
  return suspects.map(({ family, level }) =>
    (families.get(family) ?? []).filter((other) => {
      const there = suspects[other]?.level;
      return there === level - 1 || there === level + 1;
    }),
  );
}
