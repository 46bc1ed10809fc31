import { exp, ln } from '../../base/maths.ts';
import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { AnswerSource } from './Answers.ts';
import { type Cluster, clustersOf } from './clusters.ts';
import { foretell, meanForetold } from './foretell.ts';
import { likelihood } from './likelihood.ts';
import type { Question } from './Question.ts';
import type { Shown } from './Shown.ts';
import type { Faces, Suspect } from './Suspect.ts';
import type { Asked } from './watchShown.ts';

type Answer = Shown['value'];

/** Logarithms of what the evidence says for each suspect under one state of the tools. */
export function logLikelihoods(
  suspects: readonly Suspect[],
  source: AnswerSource,
  tool: FaultChoice | null,
  asked: readonly Asked[],
  numbers: readonly number[],
): number[] {
  const clusters = clustersOf(asked, numbers);
  const foretold = rememberedForetelling(source, tool);
  const neighbours = neighboursOf(suspects);
  return suspects.map((suspect, s) => {
    if (suspect.faces !== null) return comesAndGoes(suspect.faces, asked, numbers, foretold);
    let sum = 0;
    for (const cluster of clusters) {
      const draws = foretold(suspect.faults, cluster);
      const beside = (neighbours[s] ?? []).map((faults) => foretold(faults, cluster));
      sum += ln(likelihood(cluster.shown, { draws, cell: cellOf(draws, beside) }));
    }
    return sum;
  });
}

type Foretelling = (faults: readonly FaultChoice[], cluster: Cluster) => readonly Answer[];

/** Suspects share worlds, and neighbours are asked again: each answer is put together once. */
function rememberedForetelling(source: AnswerSource, tool: FaultChoice | null): Foretelling {
  const known = new Map<Cluster, Map<readonly FaultChoice[], readonly Answer[]>>();
  return (faults, cluster) => {
    let ofCluster = known.get(cluster);
    if (ofCluster === undefined) {
      ofCluster = new Map();
      known.set(cluster, ofCluster);
    }
    const before = ofCluster.get(faults);
    if (before !== undefined) return before;
    const answers = foretell(source, faults, tool, cluster);
    ofCluster.set(faults, answers);
    return answers;
  };
}

/** The next milder and the next worse degree of the same fault, for each suspect. */
function neighboursOf(suspects: readonly Suspect[]): (readonly (readonly FaultChoice[])[])[] {
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

/** Degrees lie anywhere between the levels taken: half the way to the farther neighbour is one suspect's own ground. */
function cellOf(draws: readonly Answer[], beside: readonly (readonly Answer[])[]): number {
  const mean = meanForetold(draws);
  if (mean === null) return 0;
  let cell = 0;
  for (const other of beside) {
    const there = meanForetold(other);
    if (there !== null) cell = Math.max(cell, Math.abs(there - mean) / 2);
  }
  return cell;
}

/**
 * A fault that comes and goes: at each trial it shows its bad face with its chance, else its good one. The trials are
 * independent; within a face everything is shared as for any other suspect. So k bad of n weigh p^k·(1 − p)^(n − k).
 */
function comesAndGoes(
  faces: Faces,
  asked: readonly Asked[],
  numbers: readonly number[],
  foretold: Foretelling,
): number {
  const trials = new Map<string, number[]>();
  for (const number of numbers) {
    const question = asked[number]?.question;
    if (question === undefined) continue;
    const trial = trialOf(question, faces, number);
    const same = trials.get(trial) ?? [];
    trials.set(trial, same);
    same.push(number);
  }
  let sum = 0;
  const shownGood: number[] = [];
  const shownBad: number[] = [];
  for (const ofTrial of trials.values()) {
    const clusters = clustersOf(asked, ofTrial);
    const good = underFace(faces.good, clusters, foretold);
    const bad = underFace(faces.bad, clusters, foretold);
    const better = Math.max(good, bad);
    const mixture = (1 - faces.chance) * exp(good - better) + faces.chance * exp(bad - better);
    sum += ln(mixture);
    (good >= bad ? shownGood : shownBad).push(...ofTrial);
  }
  sum += underFace(faces.good, clustersOf(asked, shownGood), foretold);
  return sum + underFace(faces.bad, clustersOf(asked, shownBad), foretold);
}

function trialOf({ trials, bothFaces }: Question, { trialOf: kind }: Faces, number: number): string {
  return bothFaces && kind === 'moved' ? `once ${number}` : String(trials[kind]);
}

function underFace(
  faults: readonly FaultChoice[],
  clusters: readonly Cluster[],
  foretold: Foretelling,
): number {
  let sum = 0;
  for (const cluster of clusters) {
    sum += ln(likelihood(cluster.shown, { draws: foretold(faults, cluster), cell: 0 }));
  }
  return sum;
}
