import { readFileSync } from 'node:fs';
import type { EvidenceTables } from '../../src/training/evidence/EvidenceTables.ts';
import { casesOf, keyOfFaults } from '../../src/training/evidence/OutcomeTable.ts';
import { openTables } from '../../src/training/evidence/openTables.ts';
import { TestEvidence } from '../../src/training/evidence/TestEvidence.ts';

/** The tables kept with the program, cut down to a few suspects so that a sitting is weighed in seconds. */
export function tablesOfFew(names: ReadonlySet<string>): EvidenceTables {
  const opened = openTables(
    readFileSync(new URL('../../assets/evidence/shop.json', import.meta.url), 'utf8'),
  );
  if (!opened.ok) throw new Error(opened.error.code);
  const all = opened.value;
  const suspects = all.suspects.filter(({ id }) => names.has(id));
  if (suspects.length !== names.size) throw new Error('a suspect is not in the catalogue');
  const places = new Map(casesOf(all.suspects).map(({ faults }, row) => [keyOfFaults(faults), row]));
  const rows = casesOf(suspects).map(({ faults }) => places.get(keyOfFaults(faults)) ?? -1);
  const { table } = all.evidence;
  const outcomes = table.outcomes.map((ofTest) => rows.map((row) => ofTest[row] ?? []));
  return {
    ...all,
    suspects,
    evidence: new TestEvidence(suspects, { tests: table.tests, outcomes }),
    complaintsFor: (drives) => {
      const complaints = all.complaintsFor(drives);
      return complaints.filter((_, s) => names.has(all.suspects[s]?.id ?? ''));
    },
  };
}
