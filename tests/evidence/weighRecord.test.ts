import { describe, expect, it } from 'vitest';
import { Random } from '../../src/base/Random.ts';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import type { FaultChoice } from '../../src/sim/world/WorldPort.ts';
import type { EvidenceFacts } from '../../src/training/evidence/EvidenceFacts.ts';
import { SittingEvidence } from '../../src/training/evidence/SittingEvidence.ts';
import { weighRecord } from '../../src/training/evidence/weighRecord.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { SittingRecord } from '../../src/training/sitting/SittingRecord.ts';
import { tablesOfFew } from '../coach/fewSuspects.ts';
import { sitGolden } from '../support/goldenJobs.ts';

const tables = tablesOfFew(
  new Set([
    'nothing-wrong',
    'fuse-blown',
    'winding-open',
    'feed-open',
    'driver-dead',
    'plunger-stuck',
    'plunger-sticky/0.5',
    'switch-stuck-open',
    'sense-open',
    'capsule-torn/0',
    'capsule-torn/0.5',
    'canister-hose-split/0.5',
    'feed-resistance/0.5',
    'feed-resistance/1',
  ]),
);
const { scenario } = sitGolden('silent-on-command.lucky-guess.txt');

/** Sits a scenario by lines of an action file. */
function sit(lines: string, faults: readonly FaultChoice[] = scenario.faults): [Scenario, SittingRecord] {
  const own = { ...scenario, faults };
  const parsed = parseActions(lines);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  const sitting = Sitting.begin(own);
  const run = runActions(sitting, parsed.value);
  if (!run.ok) throw new Error(JSON.stringify(run.error));
  return [own, sitting.record()];
}

const JOB = `
accept
key on
read codes
meter volts-dc
lead meter-red to battery-positive
lead meter-black to battery-negative
wait steady
log "Battery"
solenoid on
wait 1 s
solenoid off
wait 1 s
mark plug cleared cites 2
solenoid on
wait 1 s
log "Nothing heard"
pin in 1
lead meter-red to cavity-1-back
wait steady
log "Feed at the plug"
mark unit cleared cites 4
lead meter-red to fuse-in
wait steady
log "Before the fuse"
lead meter-red to fuse-out
wait steady
log "Behind the fuse"
mark fuse convicted cites 5 6
mark sense-wire cleared cites 2
solenoid off
key off
pull fuse
look fuse
verdict fuse melted cites 5 6 7
wait 3 s
fit fuse
key on
wait 2 s
key off
close
`;
const [, record] = sit(JOB);

function weighed(own: Scenario, of: SittingRecord): EvidenceFacts {
  const facts = weighRecord(own, of, tables);
  if (!facts.ok) throw new Error(JSON.stringify(facts.error));
  return facts.value;
}

describe('a record weighed', () => {
  const facts = weighed(scenario, record);

  it('has a step for the complaint and for every log entry before the verdict, of all items and tools', () => {
    expect(facts.steps.map(({ entry }) => entry)).toEqual([0, 1, 2, 3, 4, 5, 6, 7]);
    for (const { items, tools } of facts.steps) {
      expect(items).toHaveLength(18);
      expect(items[0]?.item).toBe('unit');
      expect(items.at(-1)?.item).toBe('nothing-wrong');
      expect(tools.map(({ item }) => item)).toContain('hand-pump');
      for (const { chance } of [...items, ...tools]) {
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1 + 1e-9);
      }
      // Single faults only here: the items share out the whole.
      expect(items.reduce((sum, { chance }) => sum + chance, 0)).toBeCloseTo(1, 9);
    }
    const ticks = facts.steps.map(({ tick }) => tick);
    expect([...ticks].sort((a, b) => a - b)).toEqual(ticks);
  });

  it('tells how far the verdict is carried', () => {
    expect(facts.verdict).toMatchObject({ named: 'fuse', mode: 'melted', group: ['fuse'], leads: true });
    expect(facts.verdict.shown).toBeGreaterThan(0.99);
    expect(facts.verdict.weight).toBeGreaterThan(0.9);
    const fuse = facts.steps[0]?.items.find(({ item }) => item === 'fuse');
    expect(facts.verdict.prior).toBe(fuse?.chance);
    expect(facts.settling).toBeNull();
  });

  it('judges each board mark by what had been shown when it was made', () => {
    const judged = facts.marks.map(({ item, mark, judgement }) => `${item} ${mark} ${judgement}`);
    expect(judged).toContain('fuse convicted carried');
    // A click that does not come says nothing of the sense wire.
    expect(judged).toContain('sense-wire cleared wrong-test');
    expect(facts.marks.map(({ item }) => item)).toEqual(['plug', 'unit', 'fuse', 'sense-wire']);
    const unit = facts.marks.find(({ item }) => item === 'unit');
    const after4 = facts.steps[4]?.items.find(({ item }) => item === 'unit');
    expect(unit?.shown).toBeCloseTo(after4?.chance ?? Number.NaN, 2);
  });

  it('a verdict that cites too little or nothing is carried no further', () => {
    const bare = weighed(...sit(JOB.replace('fuse melted cites 5 6 7', 'fuse melted')));
    expect(bare.verdict.cited).toBe(bare.verdict.prior);
    expect(bare.verdict.weight).toBeLessThan(0.1);
    expect(bare.verdict.shown).toBe(facts.verdict.shown);
    const battery = weighed(...sit(JOB.replace('cites 5 6 7', 'cites 2')));
    expect(battery.verdict.weight).toBeLessThan(0.1);
  });

  it('what comes after the verdict is no evidence for it', () => {
    const [, short] = sit(JOB.replace(/wait 3 s[\s\S]*close/, 'close'));
    expect(weighed(scenario, short)).toEqual(facts);
  });

  it('where doubt is left, names a test that has not been done', () => {
    const early = weighed(...sit(`${JOB.slice(0, JOB.indexOf('pin in 1'))}verdict fuse cites 3\nclose\n`));
    expect(early.settling?.bits).toBeGreaterThan(0.1);
    expect(early.settling?.minutes).toBeGreaterThan(0);
    expect(early.settling?.test).not.toBe('meter-on-battery');
  });

  it('is refused without a verdict, and where the record is of another job', () => {
    const open = weighRecord(scenario, sit('accept\nkey on\nread codes\n')[1], tables);
    expect(open).toEqual({ ok: false, error: { code: 'job-not-closed' } });
    const other = weighRecord(scenario, { ...record, endHash: '0'.repeat(64) }, tables);
    expect(other).toEqual({ ok: false, error: { code: 'end-differs' } });
  });
});

describe('a sitting weighed while it goes on', () => {
  /** Tells the evidence of a sitting bit by bit, and lets it work now and then, as chance has it. */
  function alongside(seed: string): EvidenceFacts {
    const random = Random.of(seed, 'slices');
    // It begins with the first few actions done already, as after a reload.
    const done = Math.floor(random.next() * 8);
    const first = record.actions[done]?.tick ?? 0;
    const replica = Sitting.begin(scenario);
    for (const { tick, action } of record.actions.slice(0, done)) {
      replica.advanceTo(tick);
      replica.apply(action);
    }
    replica.advanceTo(Math.max(first, replica.tick));
    const begun = SittingEvidence.begin(scenario, replica.record(), tables);
    if (!begun.ok) throw new Error(begun.error.code);
    const evidence = begun.value;
    let now = replica.tick;
    for (const timed of record.actions.slice(done)) {
      while (random.next() < 0.5 && now < timed.tick) {
        now += Math.floor(random.next() * (timed.tick - now));
        evidence.passed(now);
        evidence.work(Math.floor(random.next() * 40));
        if (random.next() < 0.2 && evidence.settled) evidence.posterior();
      }
      evidence.acted(timed);
      now = timed.tick;
      if (random.next() < 0.4) evidence.work(Math.floor(random.next() * 200));
      if (random.next() < 0.1) while (evidence.work(3) > 0);
    }
    expect(evidence.phase).toBe('closed');
    while (evidence.work(1 + Math.floor(random.next() * 50)) > 0);
    expect(evidence.settled).toBe(true);
    return evidence.facts();
  }

  const atOneGo = weighed(scenario, record);

  it.each(['a', 'b', 'c', 'd'])(
    'comes to the same facts to the last digit, however it was cut (%s)',
    (seed) => {
      expect(alongside(seed)).toEqual(atOneGo);
    },
  );

  it('has little to do at a log entry when the benches are in step', () => {
    const begun = SittingEvidence.begin(scenario, { ...record, ...sit('accept\n')[1] }, tables);
    if (!begun.ok) throw new Error(begun.error.code);
    const evidence = begun.value;
    for (const timed of record.actions.slice(1)) {
      evidence.passed(timed.tick);
      while (evidence.work(100) > 0);
      expect(evidence.settled).toBe(true);
      evidence.acted(timed);
      if (timed.action.kind !== 'log') continue;
      expect(evidence.settled).toBe(false);
      // Each bench answers what was asked at the entry; then the chances are known, whatever is taken up anew.
      let turns = 0;
      while (!evidence.settled) turns += evidence.work(1);
      expect(turns).toBeLessThan(300);
      expect(evidence.posterior().suspects).toHaveLength(tables.suspects.length);
    }
  });

  it('two truths that showed the same are given the same facts', () => {
    // The hose is split and its charcoal lies in it, but nobody has looked or drawn a vacuum.
    const hidden = ['charcoal-in-hose', 'canister-hose-split'].map((fault) => ({ fault, severity: 1 }));
    expect(weighed(...sit(JOB, [...scenario.faults, ...hidden]))).toEqual(atOneGo);
    expect(weighed(...sit(JOB, hidden.slice(0, 1)))).not.toEqual(atOneGo);
  });
});
