import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { debriefing } from '../../../src/app/evidence/debriefing.ts';
import { weighedBy } from '../../../src/app/evidence/weighing.ts';
import { keepFacts, markOf } from '../../../src/app/facts/keptFacts.ts';
import { readFacts } from '../../../src/app/facts/readFacts.ts';
import { parseActions } from '../../../src/cli/parseActions.ts';
import { runActions } from '../../../src/cli/runActions.ts';
import { openTables } from '../../../src/training/evidence/openTables.ts';
import { loadScenario } from '../../../src/training/scenario/loadScenario.ts';
import { sealScenario } from '../../../src/training/scenario/seal.ts';
import type { DebriefFacts } from '../../../src/training/score/DebriefFacts.ts';
import { Sitting } from '../../../src/training/sitting/Sitting.ts';
import type { SittingRecord } from '../../../src/training/sitting/SittingRecord.ts';

const at = (path: string): string => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const PROGRAM = 'evidenceWorker-abc.js debriefing-abc.js shop-abc.json';

/** A whole job, weighed as the worker does it. */
function weighedJob(): { readonly facts: DebriefFacts; readonly record: SittingRecord } {
  const scenario = loadScenario(at('scenarios/ready-by-friday.yaml'), 'ready-by-friday.yaml');
  const lines = parseActions(at('tests/golden/actions/ready-by-friday.full.txt'));
  const tables = openTables(at('assets/evidence/shop.json'));
  if (!scenario.ok || !lines.ok || !tables.ok) throw new Error('the shipped files are sound');
  const sitting = Sitting.begin(scenario.value);
  const done = runActions(sitting, lines.value);
  if (!done.ok) throw new Error(done.error.text);
  const record = sitting.record();
  const parts = { here: () => debriefing, fetch: async () => debriefing };
  const weighed = weighedBy(tables.value, parts, sealScenario(scenario.value), record);
  while (!weighed.settled) weighed.work(10_000);
  const made = weighed.debrief(record);
  if (!made.ok) throw new Error(made.error.code);
  return { facts: made.value, record };
}

const { facts, record } = weighedJob();
const kept = keepFacts(facts, record, PROGRAM);
/** As the browser gives it back. */
const stored = structuredClone(kept);

describe('what a finished job was worth, kept beside its record', () => {
  it('comes back as it was worked out, to the last digit', () => {
    expect(readFacts(stored, record, PROGRAM)).toEqual(JSON.parse(JSON.stringify(facts)));
  });

  it('does not mind what score the record claims', () => {
    expect(readFacts(stored, { ...record, claimedScore: 12 }, PROGRAM)).not.toBeNull();
  });

  it('is worked out anew when program, tables, scenario or record are others', () => {
    expect(readFacts(stored, record, PROGRAM.replace('abc.json', 'abd.json'))).toBeNull();
    const scenario = { ...record.scenario, contentHash: '0'.repeat(64) };
    expect(readFacts(stored, { ...record, scenario }, PROGRAM)).toBeNull();
    expect(readFacts(stored, { ...record, endTick: record.endTick + 1 }, PROGRAM)).toBeNull();
    expect(readFacts(stored, { ...record, actions: record.actions.slice(1) }, PROGRAM)).toBeNull();
  });

  it('is worked out anew when it is damaged, or not there', () => {
    const bytes = kept.bytes.slice();
    bytes[1000] = (bytes[1000] ?? 0) ^ 1;
    expect(readFacts({ ...kept, bytes }, record, PROGRAM)).toBeNull();
    expect(readFacts({ ...kept, bytes: kept.bytes.slice(0, -1) }, record, PROGRAM)).toBeNull();
    for (const nothing of [undefined, null, 'facts', {}, { ...kept, bytes: 'text' }]) {
      expect(readFacts(nothing, record, PROGRAM)).toBeNull();
    }
  });

  it('is worked out anew when a program of the same name wrote it in another form', () => {
    const { trace: _trace, ...without } = facts;
    expect(readFacts(keepFacts(without as DebriefFacts, record, PROGRAM), record, PROGRAM)).toBeNull();
    const score = { ...facts.score, total: 120 };
    expect(readFacts(keepFacts({ ...facts, score }, record, PROGRAM), record, PROGRAM)).toBeNull();
  });

  it('does not lie open in what the browser keeps', () => {
    const text = new TextDecoder('latin1').decode(kept.bytes);
    for (const word of ['sense', 'truth', 'fault', 'verdict']) expect(text).not.toContain(word);
    expect(JSON.stringify(facts)).toContain('truth');
    expect(kept.mark).toBe(markOf(record, PROGRAM));
  });
});
