import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { DriveOutcomes } from '../../../src/sim/world/driveCycle.ts';
import { hashOfContent } from '../../../src/training/scenario/hashOfContent.ts';
import { sealScenario } from '../../../src/training/scenario/seal.ts';
import type { SittingRecord } from '../../../src/training/sitting/SittingRecord.ts';
import { bench } from '../../support/bench.ts';

const { contentHash: _, ...rest } = bench().fault('switch-stuck-open').scenario;
const content = { ...rest, drives: { cycles: 6, refuelled: false } };
const sealed = sealScenario({ ...content, contentHash: hashOfContent(content) });

/** A copy of the program that has driven nothing yet. */
async function freshProgram() {
  vi.resetModules();
  const { openJob } = await import('../../../src/app/openJob.ts');
  const { drivesOf } = await import('../../../src/app/evidence/drivesOf.ts');
  const { learnOutcomes, outcomesOf } = await import('../../../src/sim/world/driveCycle.ts');
  const open = (record?: SittingRecord) => {
    const opened = openJob(sealed, record, () => 'of-the-day');
    if (!opened.ok) throw new Error(opened.error.code);
    return opened.value.sitting;
  };
  const drive = (record: SittingRecord | null): DriveOutcomes =>
    drivesOf({ kind: 'drive', id: 1, sealed, seed: 'of-the-day', record });
  return { open, drive, learnOutcomes, outcomesOf };
}

/** As it comes from one copy of the program to another. */
const sent = <T>(value: T): T => structuredClone(value);

const FRESH_PROGRAM_MS = 30_000;

describe('drives worked out in another copy of the program', { timeout: FRESH_PROGRAM_MS }, () => {
  let alone: string;
  let outcomes: DriveOutcomes;
  let worker: Awaited<ReturnType<typeof freshProgram>>;
  beforeAll(async () => {
    worker = await freshProgram();
    outcomes = sent(worker.drive(null));
    alone = worker.open().record().endHash;
  }, FRESH_PROGRAM_MS);

  it('open the job in the same state to the last bit', async () => {
    expect(outcomes.length).toBeGreaterThan(0);
    const page = await freshProgram();
    page.learnOutcomes(outcomes);
    expect(page.open().record().endHash).toBe(alone);
  });

  it('are all that the page needs: it works none out itself', async () => {
    const page = await freshProgram();
    // What was learnt is what counts: an outcome that is not true shows at once.
    page.learnOutcomes(outcomes.map(([state, facts]) => [state, { ...facts, faces: [true, true, true] }]));
    expect(page.open().record().endHash).not.toBe(alone);
  });

  it('cover a road test that is about to be driven', async () => {
    const sitting = worker.open();
    sitting.apply({ kind: 'accept-job' });
    const about: SittingRecord = {
      ...sitting.record(),
      actions: [...sitting.record().actions, { tick: 0, action: { kind: 'road-test', cycles: 3 } }],
    };
    const driven = sent(worker.drive(about));
    const page = await freshProgram();
    page.learnOutcomes(driven);
    const onPage = page.open();
    onPage.apply({ kind: 'accept-job' });
    const asked = page.outcomesOf(() => onPage.apply({ kind: 'road-test', cycles: 3 }));
    const known = driven.map(([state]) => state);
    expect(asked.length).toBeGreaterThan(0);
    for (const [state] of asked) expect(known).toContain(state);
    sitting.apply({ kind: 'road-test', cycles: 3 });
    expect(onPage.record().endHash).toBe(sitting.record().endHash);
  });

  it('of what cannot be opened are none, and nothing is thrown', () => {
    const record = worker.open().record();
    const other = { ...record.scenario, contentHash: '0'.repeat(64) };
    expect(worker.drive({ ...record, scenario: other })).toEqual([]);
  });
});
