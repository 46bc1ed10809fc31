import { exp, ln } from '../../base/maths.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { AnswerSource } from './Answers.ts';
import { alike, type Cluster, clustersOf } from './clusters.ts';
import { foretell, foretellWithBadTool } from './foretell.ts';
import { likelihood, sharpest } from './likelihood.ts';
import type { Shown } from './Shown.ts';
import type { Faces, Suspect, TrialOf } from './Suspect.ts';
import type { ToolState } from './toolStates.ts';
import { byTrial } from './trials.ts';
import type { Asked } from './watchShown.ts';

type Answer = Shown['value'];
type Faults = readonly FaultChoice[];

const MOST_CLUSTERED = 2000;

/** What a cluster says of one suspect: the logarithm of its likelihood, of the best there can be, and what was foretold. */
interface Said {
  readonly log: number;
  readonly foretold: Answer | undefined;
}
const NOTHING: Said = { log: 0, foretold: undefined };

/** A cluster, and what it says of whom, as far as it has been worked out. */
interface KnownCluster {
  readonly cluster: Cluster;
  /** By suspect, by the bad tool. */
  readonly rows: Map<ToolState | null, (Said | undefined)[]>;
  /** By the faults of a face, by the bad tool. */
  readonly faces: Map<ToolState | null, Map<Faults, Said>>;
}

interface Weighed {
  readonly known: KnownCluster;
  readonly weight: number;
}

/** Clusters of one subject that showed alike, in one set-up and another. */
type Finding = readonly Weighed[];

/**
 * What evidence says for each suspect, as logarithms of likelihoods. What a cluster of repeats says of a suspect is worked
 * out once and kept until its benches change, so that a new reading costs its own work only; the worlds must have
 * answered before they are asked for.
 */
export class SuspectLikelihood {
  private readonly neighbours: readonly (readonly number[])[];
  /** Clusters by their questions. */
  private readonly known = new Map<string, KnownCluster>();
  private readonly found = new Map<string, readonly Finding[]>();

  constructor(
    private readonly suspects: readonly Suspect[],
    private readonly source: AnswerSource,
  ) {
    this.neighbours = neighboursOf(suspects);
  }

  /** For each suspect, under one state of the tools (null: all good), from the questions of these numbers. */
  logs(tool: ToolState | null, asked: readonly Asked[], numbers: readonly number[]): readonly number[] {
    const findings = this.findings(asked, numbers);
    const trials = new Map<TrialOf, readonly Trial[]>();
    return this.suspects.map(({ faces }, s) => {
      if (faces === null) return inAll(findings, (known) => this.said(s, tool, known));
      const ofKind = trials.get(faces.trialOf) ?? this.trials(faces.trialOf, asked, numbers);
      trials.set(faces.trialOf, ofKind);
      return this.comesAndGoes(faces, tool, asked, ofKind);
    });
  }

  /** Whether a bad tool could have changed anything so far. */
  matters({ bad }: ToolState): boolean {
    return bad !== null && this.source.hasUsed(bad);
  }

  /** Other benches answer for these suspects from now on. */
  forget(suspects: readonly number[]): void {
    const touched = new Set(suspects.flatMap((s) => [s, ...(this.neighbours[s] ?? [])]));
    const faces = [...touched].flatMap((s) => {
      const own = this.suspects[s]?.faces;
      return own === null || own === undefined ? [] : [own.good, own.bad];
    });
    for (const known of this.known.values()) {
      for (const row of known.rows.values()) for (const s of touched) row[s] = undefined;
      for (const logs of known.faces.values()) for (const face of faces) logs.delete(face);
    }
  }

  /** What one cluster says for a suspect that is always there. */
  private said(s: number, tool: ToolState | null, known: KnownCluster): Said {
    let row = known.rows.get(tool);
    if (row === undefined) {
      row = [];
      known.rows.set(tool, row);
    }
    let said = row[s];
    if (said === undefined) {
      const { faults } = this.suspects[s] as Suspect;
      const bad = this.withBadTool(faults, tool, known.cluster);
      if (tool !== null && bad === null) {
        said = this.said(s, null, known);
      } else {
        const neighbours = this.neighbours[s] ?? [];
        const draws = bad?.draws ?? this.withGoodTools(faults, known.cluster);
        const beside =
          bad?.beside ??
          neighbours.map((n) => this.withGoodTools((this.suspects[n] as Suspect).faults, known.cluster));
        said = saidOf(known.cluster, draws, beside);
      }
      row[s] = said;
    }
    return said;
  }

  private withGoodTools(faults: Faults, cluster: Cluster): readonly Answer[] {
    return foretell(this.source, faults, cluster);
  }

  /** Null where the tool being bad makes no difference. */
  private withBadTool(
    faults: Faults,
    tool: ToolState | null,
    cluster: Cluster,
  ): { readonly draws: readonly Answer[]; readonly beside: readonly (readonly Answer[])[] } | null {
    if (tool === null || tool.bad === null) return null;
    const draws = foretellWithBadTool(this.source, faults, tool.bad, cluster);
    if (draws === null) return null;
    const beside = (tool.beside ?? []).map(
      (degree) =>
        foretellWithBadTool(this.source, faults, degree, cluster) ?? this.withGoodTools(faults, cluster),
    );
    return { draws, beside };
  }

  /**
   * A fault that comes and goes: at each trial it shows its bad face with its chance, else its good one. The trials are
   * independent; within a face everything is shared as for any other suspect. So k bad of n weigh p^k·(1 − p)^(n − k).
   */
  private comesAndGoes(
    faces: Faces,
    tool: ToolState | null,
    asked: readonly Asked[],
    trials: readonly Trial[],
  ): number {
    let sum = 0;
    const shownGood: number[] = [];
    const shownBad: number[] = [];
    for (const { numbers, findings } of trials) {
      const good = inAll(findings, (known) => this.ofFace(faces, faces.good, tool, known));
      const bad = inAll(findings, (known) => this.ofFace(faces, faces.bad, tool, known));
      const better = Math.max(good, bad);
      sum += ln((1 - faces.chance) * exp(good - better) + faces.chance * exp(bad - better));
      (good >= bad ? shownGood : shownBad).push(...numbers);
    }
    sum += inAll(this.findings(asked, shownGood), (known) => this.ofFace(faces, faces.good, tool, known));
    return sum + inAll(this.findings(asked, shownBad), (known) => this.ofFace(faces, faces.bad, tool, known));
  }

  private trials(of: TrialOf, asked: readonly Asked[], numbers: readonly number[]): readonly Trial[] {
    return byTrial(of, asked, numbers).map((ofTrial) => ({
      numbers: ofTrial,
      findings: this.findings(asked, ofTrial),
    }));
  }

  /** The same questions always find the same: put together once. */
  private findings(asked: readonly Asked[], numbers: readonly number[]): readonly Finding[] {
    const key = numbers.join();
    let found = this.found.get(key);
    if (found === undefined) {
      if (this.found.size >= MOST_CLUSTERED) this.found.clear();
      const bySubject = new Map<string, Weighed[][]>();
      for (const cluster of clustersOf(asked, numbers)) {
        const ofSubject = bySubject.get(cluster.subject) ?? [];
        bySubject.set(cluster.subject, ofSubject);
        const finding = ofSubject.find(
          ([first]) => first !== undefined && alike(first.known.cluster.shown, cluster.shown),
        );
        const weighed = { known: this.knownOf(cluster), weight: cluster.weight };
        if (finding === undefined) ofSubject.push([weighed]);
        else finding.push(weighed);
      }
      found = [...bySubject.values()].flat();
      this.found.set(key, found);
    }
    return found;
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

  private ofFace(
    { trialOf }: Faces,
    faults: Faults,
    tool: ToolState | null,
    { cluster, faces }: KnownCluster,
  ): Said {
    let ofTool = faces.get(tool);
    if (ofTool === undefined) {
      ofTool = new Map();
      faces.set(tool, ofTool);
    }
    let said = ofTool.get(faults);
    if (said === undefined) {
      const bad = this.withBadTool(faults, tool, cluster);
      said = saidOf(cluster, bad?.draws ?? this.withGoodTools(faults, cluster), bad?.beside ?? []);
      if (trialOf === 'energised' && isTime(cluster.shown))
        said = { ...said, log: Math.max(said.log, ANY_TIME - ln(sharpest(cluster.shown))) };
      ofTool.set(faults, said);
    }
    return said;
  }
}

/**
 * A pulsed solenoid tries many times in one run. Where it comes and goes, the switch may take any time to turn between that of
 * one face and that of the other, or not turn at all while anyone waits: this much for each second of a minute.
 */
const ANY_TIME = ln(1 / 60);

/** How long the switch took is the one number that the sense state gives. */
const isTime = ({ kind, channel }: Shown): boolean => kind === 'number' && channel === 'reader-state';

/**
 * The likelihood is a share of the best there can be, so that a fact which is shown again, and was foretold alike again, can
 * count for nothing more: to have it once more is then as good as certain.
 */
function saidOf({ shown }: Cluster, draws: readonly Answer[], beside: readonly (readonly Answer[])[]): Said {
  if (draws.length === 0) return NOTHING;
  return { log: ln(likelihood(shown, { draws, beside }) / sharpest(shown)), foretold: draws[0] };
}

/**
 * What findings say together. Where other set-ups show alike, and are foretold alike, they hang on the same tolerances and
 * the same degree of the fault: all of them count as one, by their mean.
 */
function inAll(findings: readonly Finding[], saidOfCluster: (known: KnownCluster) => Said): number {
  let sum = 0;
  for (const finding of findings) {
    const [only] = finding;
    if (only !== undefined && finding.length === 1) {
      sum += only.weight * saidOfCluster(only.known).log;
      continue;
    }
    const facts: { readonly first: Answer | undefined; log: number; count: number }[] = [];
    for (const { known, weight } of finding) {
      const { log, foretold } = saidOfCluster(known);
      const fact = facts.find(({ first }) => foretoldAlike(first, foretold, known.cluster.shown));
      if (fact === undefined) {
        facts.push({ first: foretold, log: weight * log, count: 1 });
        continue;
      }
      fact.log += weight * log;
      fact.count++;
    }
    for (const { log, count } of facts) sum += log / count;
  }
  return sum;
}

/** Numbers foretold nearer than this share of themselves, or than two of the instrument's half-widths, are alike. */
const ALIKE_SHARE = 0.02;

function foretoldAlike(a: Answer | undefined, b: Answer | undefined, shown: Shown): boolean {
  if (typeof a !== 'number' || typeof b !== 'number') return a === b;
  const half = shown.kind === 'number' ? shown.half : 0;
  return Math.abs(a - b) <= Math.max(2 * half, ALIKE_SHARE * Math.abs(a));
}

/** Questions of one trial, put together. */
interface Trial {
  readonly numbers: readonly number[];
  readonly findings: readonly Finding[];
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
