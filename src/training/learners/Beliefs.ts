import type { ItemId } from '../../sim/devices/items.ts';
import type { StandardTestId } from '../../sim/rigs/standardTests/testIds.ts';
import type { DrivesBefore } from '../../sim/world/WorldPort.ts';
import { codesWord } from '../evidence/answer.ts';
import { priorOf } from '../evidence/complaint.ts';
import type { EvidenceTables } from '../evidence/EvidenceTables.ts';
import { Posterior } from '../evidence/Posterior.ts';
import type { LearnersBench } from './LearnersBench.ts';
import { carriedBy, type Note } from './Note.ts';
import { logsOf, weighed } from './tableEvidence.ts';

/** The drive after a repair. */
const SHORT_DRIVES: DrivesBefore = { cycles: 4, refuelled: false };

/**
 * What a learner makes of the work order and of what was taken down, by the printed tables. It takes its tools for good:
 * a reading of a bad one misleads it until it finds out and strikes out what it read with it.
 */
export class Beliefs {
  /** Chances of the suspects after the complaint, and now. */
  readonly prior: readonly number[];
  chances: readonly number[];
  private kept: readonly Note[] = [];

  private constructor(
    readonly tables: EvidenceTables,
    codes: readonly string[],
    drives: DrivesBefore,
    renewed: readonly ItemId[] = [],
  ) {
    this.prior = priorOf(tables.suspects, tables.complaintsFor(drives), codesWord(codes), renewed);
    this.chances = this.prior;
  }

  /** After reading a work order. */
  static afterOrder({ tables, card, drives }: LearnersBench): Beliefs {
    const codes = card.workOrder.codes.map(({ code }) => code);
    return new Beliefs(tables, codes, drives, card.workOrder.renewed);
  }

  /** After a short drive on which codes came back. */
  static afterCodes(tables: EvidenceTables, codes: readonly string[]): Beliefs {
    return new Beliefs(tables, codes, SHORT_DRIVES);
  }

  /** Takes notes into account. */
  hear(notes: readonly Note[]): void {
    this.kept = [...this.kept, ...notes];
    this.weigh();
  }

  /** Strikes out what these tests have shown. */
  forget(isOf: (test: StandardTestId) => boolean): void {
    this.kept = this.kept.filter(({ test }) => !isOf(test));
    this.weigh();
  }

  get posterior(): Posterior {
    return this.posteriorOf(this.chances);
  }

  posteriorOf(chances: readonly number[]): Posterior {
    return new Posterior(this.tables.suspects, [], chances, []);
  }

  /** What each log entry carries of what is believed. */
  byEntry(): ReadonlyMap<number, readonly Note[]> {
    const entries = [...new Set(this.kept.map(({ entry }) => entry))];
    return new Map(entries.map((entry) => [entry, carriedBy(entry, this.kept)]));
  }

  private weigh(): void {
    this.chances = weighed(this.prior, logsOf(this.tables, this.kept));
  }
}
