import type { ItemId } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import { TOOL_OF_ITEM } from '../../sim/rigs/standardTests/toolsOf.ts';
import { proofsFor, toolsProvenBy } from '../evidence/toolProofs.ts';
import { Beliefs } from './Beliefs.ts';
import { type LearnersBench, standardTest } from './LearnersBench.ts';
import type { Note } from './Note.ts';
import { badToolOf } from './toolProofs.ts';

/** A learner who thinks while it works: beliefs, and hands that may or may not prove their tools first. */
export class Technician {
  beliefs: Beliefs;
  /** Tests done, by name. */
  readonly done = new Set<StandardTestId>();

  constructor(readonly bench: LearnersBench) {
    this.beliefs = Beliefs.afterOrder(bench);
  }

  /** A truck that was mended comes back with codes: another job, with the tools that were proven. */
  beginAgain(codes: readonly string[]): void {
    this.beliefs = Beliefs.afterCodes(this.bench.tables, codes);
    for (const test of this.done) if (!this.isProof(test)) this.done.delete(test);
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
    this.proveFor(id);
    return this.work(id);
  }

  /** Proves every tool that a test rests on and that is not proven yet. */
  proveFor(id: StandardTestId): void {
    for (const proof of proofsFor(standardTest(this.bench.tables.rig, id)))
      if (!this.done.has(proof)) this.prove(proof);
  }

  /** Proves the tools of a test again; whether one of them was bad. */
  proveAgain(id: StandardTestId): boolean {
    return proofsFor(standardTest(this.bench.tables.rig, id))
      .map((proof) => this.prove(proof))
      .some((bad) => bad);
  }

  /** Proves a tool; where it is bad it is renewed, proven once more, and what was read with it is struck out. */
  prove(proof: StandardTestId): boolean {
    this.proveFor(proof);
    const notes = this.bench.test(proof);
    this.done.add(proof);
    const bad = badToolOf(this.bench.tables, proof, notes);
    if (bad === null || this.bench.see().renewed.includes(bad)) {
      this.beliefs.hear(notes);
      return false;
    }
    this.replace(bad);
    this.beliefs.hear(this.bench.test(proof));
    this.done.add(proof);
    return true;
  }

  /** Puts a good tool in the place of one that is in doubt, and strikes out what was read with that. */
  replace(tool: ItemId): void {
    this.bench.do({ kind: 'renew', item: tool });
    this.beliefs.forget((test) => this.restsOn(test, tool));
    for (const test of this.done) if (this.restsOn(test, tool)) this.done.delete(test);
  }

  /** Whether the rig has this test. */
  has(id: StandardTestId): boolean {
    return this.bench.tables.rig.tests.some((test) => test.id === id);
  }

  private isProof(test: StandardTestId): boolean {
    return toolsProvenBy(standardTest(this.bench.tables.rig, test)).length > 0;
  }

  /** Whether what a test shows rests on a tool. */
  private restsOn(test: StandardTestId, tool: ItemId): boolean {
    return standardTest(this.bench.tables.rig, test).needs.some((need) => TOOL_OF_ITEM[tool] === need);
  }
}
