import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { Beliefs } from './Beliefs.ts';
import { type LearnersBench, standardTest } from './LearnersBench.ts';
import type { Note } from './Note.ts';
import { badToolOf, CURRENT_PROOF, CURRENT_TESTS, PROOFS } from './toolProofs.ts';

/** A learner who thinks while it works: beliefs, and hands that may or may not prove their tools first. */
export class Technician {
  readonly beliefs: Beliefs;
  /** Tests done, by name. */
  readonly done = new Set<StandardTestId>();

  constructor(readonly bench: LearnersBench) {
    this.beliefs = new Beliefs(bench.tables, bench.card);
  }

  /** Does a test and makes up its mind. */
  work(id: StandardTestId): readonly Note[] {
    const notes = this.bench.test(id);
    this.done.add(id);
    this.beliefs.hear(notes);
    return notes;
  }

  /** Proves every tool of a test that is not proven yet, then does it. */
  workProven(id: StandardTestId): readonly Note[] {
    for (const proof of this.proofsFor(id)) if (!this.done.has(proof)) this.prove(proof);
    return this.work(id);
  }

  /** Proves the tools of a test again; whether one of them was bad. */
  proveAgain(id: StandardTestId): boolean {
    return this.proofsFor(id)
      .map((proof) => this.prove(proof))
      .some((bad) => bad);
  }

  /** Proves a tool; where it is bad it is renewed, proven once more, and what was read with it is struck out. */
  prove(proof: StandardTestId): boolean {
    for (const before of this.proofsFor(proof)) if (!this.done.has(before)) this.prove(before);
    const notes = this.bench.test(proof);
    this.done.add(proof);
    const bad = badToolOf(this.bench.tables, proof, notes);
    if (bad === null || this.bench.see().renewed.includes(bad)) {
      this.beliefs.hear(notes);
      return false;
    }
    this.bench.do({ kind: 'renew', item: bad });
    this.beliefs.forget((test) => restsOn(test, proof));
    for (const test of this.done) if (restsOn(test, proof)) this.done.delete(test);
    this.beliefs.hear(this.bench.test(proof));
    this.done.add(proof);
    return true;
  }

  private proofsFor(id: StandardTestId): readonly StandardTestId[] {
    const { needs } = standardTest(id);
    const proofs = needs.flatMap((tool) => PROOFS[tool] ?? []);
    const all = CURRENT_TESTS.includes(id) ? [...proofs, CURRENT_PROOF] : proofs;
    return all.includes(id) ? all.slice(0, all.indexOf(id)) : all;
  }
}

/** Whether what a test shows rests on what this proof proves. */
function restsOn(test: StandardTestId, proof: StandardTestId): boolean {
  if (proof === CURRENT_PROOF) return CURRENT_TESTS.includes(test);
  return standardTest(test).needs.some((tool) => PROOFS[tool]?.includes(proof));
}
