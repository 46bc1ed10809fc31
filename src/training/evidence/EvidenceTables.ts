import type { RigDefinition } from '../../sim/rigs/RigDefinition.ts';
import type { StandardTest } from '../../sim/rigs/standardTests/StandardTest.ts';
import type { DrivesBefore } from '../../sim/world/WorldPort.ts';
import type { Complaint } from './complaint.ts';
import type { Environment } from './environment.ts';
import type { Suspect } from './Suspect.ts';
import type { TestEvidence } from './TestEvidence.ts';

/** What is worked out once for a version of the rig and an environment, and kept with the program. */
export interface EvidenceTables {
  readonly rig: RigDefinition;
  readonly environment: Environment;
  readonly suspects: readonly Suspect[];
  /** The tests of the table, in its order, with their minutes by the book. */
  readonly tests: readonly StandardTest[];
  readonly minutes: readonly number[];
  readonly evidence: TestEvidence;
  /** Items that no test of the table tells from this one, itself first. */
  readonly groupOf: (item: string) => readonly string[];
  /** What these drives make of every suspect, in the suspects' order; the nearest kept number of cycles stands for others. */
  readonly complaintsFor: (drives: DrivesBefore) => readonly Complaint[];
}
