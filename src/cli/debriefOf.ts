import { err, ok, type Result } from '../base/Result.ts';
import { replayProblemText } from '../text/cli.ts';
import type { EvidenceTables } from '../training/evidence/EvidenceTables.ts';
import { parOf } from '../training/evidence/parOf.ts';
import { weighRecord } from '../training/evidence/weighRecord.ts';
import type { Scenario } from '../training/scenario/Scenario.ts';
import type { DebriefFacts } from '../training/score/DebriefFacts.ts';
import { debrief } from '../training/score/debrief.ts';
import type { SittingRecord } from '../training/sitting/SittingRecord.ts';

/** A record that cannot be scored: its problem's code, and the sentence that says so. */
export interface NotScored {
  readonly code: string;
  readonly says: string;
}

/** Weighs a closed record and scores it. Takes some seconds, more for a long job. Errors: see `replay`, or no verdict. */
export function debriefOf(
  scenario: Scenario,
  record: SittingRecord,
  tables: EvidenceTables,
): Result<DebriefFacts, NotScored> {
  const evidence = weighRecord(scenario, record, tables);
  if (!evidence.ok) return err({ code: evidence.error.code, says: replayProblemText(evidence.error) });
  const facts = debrief(scenario, record, evidence.value, parOf(scenario, tables));
  return facts.ok ? ok(facts.value) : err({ code: facts.error.code, says: replayProblemText(facts.error) });
}
