import { err, ok, type Result } from '../../base/Result.ts';
import { rigNamed } from '../../sim/rigs/rigs.ts';
import { testMinutes } from '../../sim/rigs/standardTests/testMinutes.ts';
import type { DrivesBefore } from '../../sim/world/WorldPort.ts';
import { bookMinutes } from '../sitting/book.ts';
import type { Complaint } from './complaint.ts';
import type { EvidenceTables } from './EvidenceTables.ts';
import { KEPT_FORMAT, type KeptComplaints, rigMark } from './KeptTables.ts';
import { casesOf, testsForTable } from './OutcomeTable.ts';
import { suspects } from './suspects.ts';
import { TestEvidence } from './TestEvidence.ts';
import { readKept, unpackComplaints, unpackTest } from './unpackTables.ts';

/** The kept text is not of this version of the rig, or damaged. */
export type TablesProblem = { readonly code: 'tables-unreadable' | 'tables-of-other-rig' };

/** Opens the tables kept with the program. */
export function openTables(text: string): Result<EvidenceTables, TablesProblem> {
  const kept = readKept(text);
  if (kept === null) return err({ code: 'tables-unreadable' });
  const { environment, groups } = kept;
  const rig = rigNamed(environment.rig);
  const all = suspects(rig);
  const tests = testsForTable(rig.tests);
  const ofThisRig = kept.format === KEPT_FORMAT && kept.rig === rigMark(all, tests, environment);
  if (!ofThisRig) return err({ code: 'tables-of-other-rig' });
  const outcomes = tests.map(({ id }, t) => {
    const test = kept.tests[t];
    const cases = test?.id === id ? unpackTest(test) : null;
    return cases?.length === casesOf(all).length ? cases : null;
  });
  const complaints = kept.complaints.map(unpackComplaints);
  const whole =
    outcomes.every((one) => one !== null) &&
    complaints.length > 0 &&
    complaints.every((one) => one?.length === all.length);
  if (!whole) return err({ code: 'tables-unreadable' });
  return ok({
    rig,
    environment,
    suspects: all,
    tests,
    minutes: tests.map((test) => testMinutes(test, bookMinutes)),
    evidence: new TestEvidence(all, { tests: tests.map(({ id }) => id), outcomes }),
    groupOf: (item) => (Object.hasOwn(groups, item) ? (groups[item] ?? [item]) : [item]),
    complaintsFor: (drives) => complaints[nearest(kept.complaints, drives)] as readonly Complaint[],
  });
}

/** The kept drives nearest to these: of the same fuelling where there are any, then by the number of cycles. */
function nearest(kept: readonly KeptComplaints[], { cycles, refuelled }: DrivesBefore): number {
  let best = 0;
  let least = Number.POSITIVE_INFINITY;
  for (const [i, { drives }] of kept.entries()) {
    const far = Math.abs(drives.cycles - cycles) + (drives.refuelled === refuelled ? 0 : 1000);
    if (far >= least) continue;
    best = i;
    least = far;
  }
  return best;
}
