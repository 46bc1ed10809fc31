import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { debriefing } from '../../../src/app/evidence/debriefing.ts';
import { drivesOf } from '../../../src/app/evidence/drivesOf.ts';
import { EvidenceDesk } from '../../../src/app/evidence/EvidenceDesk.ts';
import type { FromWorker, ToWorker } from '../../../src/app/evidence/messages.ts';
import { weighedBy } from '../../../src/app/evidence/weighing.ts';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import type { EvidenceTables } from '../../../src/training/evidence/EvidenceTables.ts';
import { openTables } from '../../../src/training/evidence/openTables.ts';
import { parOf } from '../../../src/training/evidence/parOf.ts';
import { weighRecord } from '../../../src/training/evidence/weighRecord.ts';
import { loadScenario } from '../../../src/training/scenario/loadScenario.ts';
import { sealScenario } from '../../../src/training/scenario/seal.ts';
import { debrief } from '../../../src/training/score/debrief.ts';
import { Sitting } from '../../../src/training/sitting/Sitting.ts';
import type { SittingAction } from '../../../src/training/sitting/SittingAction.ts';

const LONG_MS = 120_000;
const SHIPPED = new URL('../../../scenarios/ready-by-friday.yaml', import.meta.url);
const TABLES = new URL('../../../assets/evidence/shop.json', import.meta.url);

function shipped() {
  const loaded = loadScenario(readFileSync(SHIPPED, 'utf8'), 'ready-by-friday.yaml');
  if (!loaded.ok) throw new Error('the scenario does not load');
  return loaded.value;
}

const WORK: readonly (SittingAction | number)[] = [
  { kind: 'accept-job' },
  { kind: 'set-meter', function: 'volts-dc' },
  { kind: 'place-lead', end: 'meter-red', point: 'battery-positive' },
  0.35,
  { kind: 'place-lead', end: 'meter-black', point: 'battery-negative' },
  { kind: 'wait-steady' },
  { kind: 'log' },
  { kind: 'insert-pin', cavity: 3 },
  { kind: 'place-lead', end: 'meter-red', point: 'cavity-3-back' },
  { kind: 'set-key', position: 'on' },
  2.2,
  { kind: 'log' },
  { kind: 'mark-item', item: 'sense-wire', mark: 'convicted', cites: [2] },
  { kind: 'set-key', position: 'off' },
  { kind: 'give-verdict', item: 'sense-wire', mode: null, cites: [1, 2] },
  { kind: 'renew', item: 'sense-wire' },
  1,
  { kind: 'close-job' },
];

/** A worker's desk with the real engine behind it, and the page that sits the job in front. */
class WholeSitting {
  readonly scenario = shipped();
  readonly sealed = sealScenario(this.scenario);
  readonly sitting = Sitting.begin(this.scenario, 'of-the-day');
  readonly posted: FromWorker[] = [];
  private readonly waiting: (() => void)[] = [];
  private readonly desk: EvidenceDesk;
  private clockMs = 0;

  constructor(tables: EvidenceTables) {
    this.desk = new EvidenceDesk({
      load: async () => ({
        ok: true,
        value: (sealed, record) =>
          weighedBy(tables, { here: () => debriefing, fetch: async () => debriefing }, sealed, record),
      }),
      drive: drivesOf,
      post: (message) => this.posted.push(structuredClone(message)),
      // Every look at the clock takes a while, so that a slice is a turn or two.
      nowMs: () => (this.clockMs += 5),
      later: (work) => this.waiting.push(work),
    });
  }

  tell(message: ToWorker): void {
    this.desk.hear(structuredClone(message));
  }

  open(): void {
    this.tell({ kind: 'open', sealed: this.sealed, record: this.sitting.record() });
  }

  /** Does the work; after each piece of it the worker gets so many slices. */
  sit(work: readonly (SittingAction | number)[], slices: number): void {
    for (const piece of work) {
      if (typeof piece === 'number') {
        this.sitting.advanceTo(this.sitting.tick + secondsToTicks(piece));
        this.tell({ kind: 'passed', tick: this.sitting.tick });
      } else {
        const tick = this.sitting.tick;
        const done = this.sitting.apply(piece);
        if (!done.ok) throw new Error(`${piece.kind}: ${done.error}`);
        this.tell({ kind: 'acted', timed: { tick, action: piece } });
      }
      this.run(slices);
    }
  }

  run(slices: number): void {
    for (let slice = 0; slice < slices; slice++) this.waiting.shift()?.();
  }

  /** Runs until it says something of this kind; gives it. */
  until<Kind extends FromWorker['kind']>(kind: Kind): Extract<FromWorker, { kind: Kind }> {
    for (let slice = 0; slice < 100_000; slice++) {
      const said = this.posted.find((message) => message.kind === kind);
      if (said !== undefined) return said as Extract<FromWorker, { kind: Kind }>;
      if (this.waiting.length === 0) break;
      this.run(1);
    }
    throw new Error(`it came to rest without a word: ${JSON.stringify(this.posted.at(-1))}`);
  }
}

describe('the evidence desk with the real engine', () => {
  let tables: EvidenceTables;
  beforeAll(() => {
    const opened = openTables(readFileSync(TABLES, 'utf8'));
    if (!opened.ok) throw new Error(opened.error.code);
    tables = opened.value;
  });

  it('gives the debrief that the record gives alone, to the last digit, however the work was cut', {
    timeout: LONG_MS,
  }, async () => {
    const whole = new WholeSitting(tables);
    await Promise.resolve();
    whole.open();
    whole.sit(WORK, 7);
    const record = whole.sitting.record();
    whole.tell({ kind: 'debrief', id: 1, record });
    const { result } = whole.until('debriefed');
    const facts = weighRecord(whole.scenario, record, tables);
    if (!facts.ok) throw new Error(facts.error.code);
    const alone = debrief(whole.scenario, record, facts.value, parOf(whole.scenario, tables));
    expect(result).toEqual(alone);
    expect(result.ok && result.value.score.total).toBeGreaterThan(0);

    // Opened in the middle of it, as after a reload, it says the same.
    const half = new WholeSitting(tables);
    await Promise.resolve();
    half.sit(WORK.slice(0, 9), 0);
    const resumed = new WholeSitting(tables);
    await Promise.resolve();
    resumed.tell({ kind: 'open', sealed: half.sealed, record: half.sitting.record() });
    resumed.until('ready');
    resumed.tell({ kind: 'debrief', id: 2, record });
    expect(resumed.until('debriefed').result).toEqual(result);
  });

  it('says nothing before the job is closed that tells what is wrong', { timeout: LONG_MS }, async () => {
    const whole = new WholeSitting(tables);
    await Promise.resolve();
    whole.tell({ kind: 'drive', id: 1, sealed: whole.sealed, seed: 'of-the-day', record: null });
    whole.open();
    whole.sit(WORK.slice(0, 12), 3);
    whole.tell({ kind: 'advise', id: 1 });
    expect(whole.until('advice').advice.kind).toBeTypeOf('string');
    const said = JSON.stringify(whole.posted);
    for (const { fault } of whole.scenario.faults) {
      expect(fault).toContain('sense');
      expect(said).not.toContain(fault);
    }
    expect(said).not.toContain('sense-wire');
    expect(whole.posted.map(({ kind }) => kind)).toEqual(['driven', 'ready', 'advice']);
  });
});
