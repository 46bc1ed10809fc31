import { keptTables } from '../../src/cli/keptTables.ts';
import type { EvidenceFacts } from '../../src/training/evidence/EvidenceFacts.ts';
import { parOf } from '../../src/training/evidence/parOf.ts';
import { weighRecord } from '../../src/training/evidence/weighRecord.ts';
import type { DebriefFacts } from '../../src/training/score/DebriefFacts.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { type SatGolden, sitGolden } from './goldenJobs.ts';

/** A golden job with what its evidence was worth, by every suspect's own bench, and its score. */
export interface WeighedGolden extends SatGolden {
  readonly evidence: EvidenceFacts;
  readonly facts: DebriefFacts;
}

const weighed = new Map<string, WeighedGolden>();

/** Sits and weighs a golden job, once for all tests of a file: it takes some seconds. Errors: throws with the problem. */
export function weighedGolden(name: string): WeighedGolden {
  const known = weighed.get(name);
  if (known !== undefined) return known;
  const one = weighSat(sitGolden(name));
  weighed.set(name, one);
  return one;
}

/** Weighs a closed sitting. Errors: throws with the problem's code. */
export function weighSat(sat: SatGolden): WeighedGolden {
  const tables = keptTables(sat.scenario.rig);
  if (!tables.ok) throw new Error(tables.error);
  const evidence = weighRecord(sat.scenario, sat.record, tables.value);
  if (!evidence.ok) throw new Error(`${sat.scenario.id}: ${evidence.error.code}`);
  const facts = debrief(sat.scenario, sat.record, evidence.value, parOf(sat.scenario, tables.value));
  if (!facts.ok) throw new Error(`${sat.scenario.id}: ${facts.error.code}`);
  return { ...sat, evidence: evidence.value, facts: facts.value };
}
