import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ticksToSeconds } from '../../src/base/ticks.ts';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { debrief } from '../../src/training/score/debrief.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { SittingAction } from '../../src/training/sitting/SittingAction.ts';
import { EASY_PAR, madeUpEvidence } from '../support/evidenceFacts.ts';

const text = readFileSync(new URL('../../scenarios/first-minutes.yaml', import.meta.url), 'utf8');
const loaded = loadScenario(text, 'first-minutes.yaml');
if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
const scenario: Scenario = loaded.value;

/** What each step asks a hand to do, as its `how` says it and in that order. */
const HANDS: readonly (readonly [step: string, work: string])[] = [
  ['meter-on', 'meter volts-dc'],
  ['black-lead', 'lead meter-black to battery-negative'],
  ['red-lead', 'lead meter-red to battery-positive\nwait 3 s'],
  ['log-battery', 'log'],
  ['part-plug', 'part plug'],
  ['ground-lead', 'lead plain-b to unit-2\nlead plain-a to battery-negative'],
  ['jumper-leads', 'lead jumper-far to unit-1\nlead jumper-supply to battery-positive'],
  [
    'clicks',
    'jumper on\nwait 1 s\njumper off\njumper on\nwait 1 s\njumper off\njumper on\nwait 1 s\njumper off',
  ],
  ['mate-plug', 'lift jumper-supply\nlift jumper-far\nlift plain-a\nlift plain-b\nmate plug\nwiggle plug'],
  [
    'hoses-off',
    'take canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\nfit plug-b on air-hose-end',
  ],
  [
    'cap-and-pump',
    'fit cap-a on air-port\nclamp air-port hand-tight\nfit pump-hose on canister-port\nclamp canister-port hand-tight',
  ],
  ['sense-rest', 'pin in 3\nlead meter-red to cavity-3-back\nkey on\nwait 3 s'],
  ['draw', 'stroke full x2\nwait 3 s'],
  ['let-off', 'release open\nwait 4 s\nkey off'],
];

function work(sitting: Sitting, lines: string): void {
  const parsed = parseActions(lines);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.error));
  const run = runActions(sitting, parsed.value);
  if (!run.ok) throw new Error(`${run.error.text}: ${run.error.refusal}`);
}

function begun(of: Scenario = scenario): Sitting {
  const sitting = Sitting.begin(of);
  work(sitting, 'accept');
  return sitting;
}

const stepAt = (sitting: Sitting): string | undefined => scenario.steps[sitting.view().step]?.id;

describe('the first minutes', () => {
  test('have few and short steps, on a sound truck, with the cautions of every job', () => {
    expect(scenario.mode).toBe('introduction');
    expect(scenario.steps.length).toBeGreaterThanOrEqual(10);
    expect(scenario.steps.length).toBeLessThanOrEqual(14);
    for (const { id, say, how } of scenario.steps) {
      expect(say.length, id).toBeLessThanOrEqual(260);
      expect(how.length, id).toBeLessThanOrEqual(200);
    }
    expect(scenario.faults).toEqual([]);
    expect(scenario.workOrder.codes).toEqual([]);
    const firstDay = readFileSync(
      new URL('../../scenarios/first-day-on-the-bench.yaml', import.meta.url),
      'utf8',
    );
    const job = loadScenario(firstDay, 'first-day-on-the-bench.yaml');
    expect(job.ok && job.value.workOrder.cautions).toEqual(scenario.workOrder.cautions);
  });

  test('are gone through step by step by doing what each step says, nothing passed over', () => {
    expect(HANDS.map(([step]) => step)).toEqual(scenario.steps.map(({ id }) => id));
    const sitting = begun();
    for (const [step, lines] of HANDS) {
      expect(stepAt(sitting)).toBe(step);
      const before = sitting.stillToDo();
      expect(Object.keys(before ?? {}).length, step).toBeGreaterThan(0);
      work(sitting, lines);
      expect(stepAt(sitting), `${step} is done`).not.toBe(step);
    }
    expect(sitting.view().step).toBe(scenario.steps.length);
    expect(sitting.view().passedOver).toEqual([]);
    expect(sitting.stillToDo()).toBeNull();
    // The hand's own second for each action, and the waits: room for reading in five minutes of a newcomer.
    expect(ticksToSeconds(sitting.tick)).toBeLessThan(120);
  });

  test('wait at each step until the last thing it asks for is done', () => {
    for (const [step, lines] of HANDS) {
      const sitting = begun();
      for (const [earlier, done] of HANDS) {
        if (earlier === step) break;
        work(sitting, done);
      }
      // Everything but its last line, or but the wait and the line before it.
      const kept = lines.replace(/\n?[^\n]*(\nwait[^\n]*)?$/, '');
      if (kept !== '') work(sitting, kept);
      expect(stepAt(sitting), step).toBe(step);
    }
  });

  test('show what good looks like: 12.6 V, three clicks, 9 V that fall to nothing and come back', () => {
    const sitting = begun();
    const volts = (): number | null => sitting.observe().meter.display.value;
    const readings: Record<string, number | null> = {};
    for (const [step, lines] of HANDS) {
      work(sitting, step === 'let-off' ? 'release open\nwait 4 s' : lines);
      readings[step] = volts();
    }
    expect(readings['red-lead']).toBeGreaterThan(12.4);
    expect(readings['red-lead']).toBeLessThan(12.8);
    expect(readings['sense-rest']).toBeGreaterThan(8.4);
    expect(readings['draw']).toBeLessThan(0.3);
    expect(readings['let-off']).toBeCloseTo(readings['sense-rest'] ?? Number.NaN, 1);
  });

  test('teach no breach of safety: the same hands on the same truck as a job break nothing', () => {
    const asJob: Scenario = { ...scenario, mode: 'practice' };
    const sitting = begun(asJob);
    for (const [, lines] of HANDS) work(sitting, lines);
    work(sitting, 'verdict nothing-wrong\nclose');
    const facts = debrief(asJob, sitting.record(), madeUpEvidence(sitting.view(), { weight: 1 }), EASY_PAR);
    if (!facts.ok) throw new Error(JSON.stringify(facts.error));
    expect(facts.value.safety).toEqual([]);
    const missed = facts.value.rules.filter(({ outcome }) => outcome === 'missed').map(({ rule }) => rule);
    // What five minutes leave out, and the walkthrough of a whole job adds.
    const LEFT_FOR_THE_JOB = [
      'meter-proven-again',
      'pump-proven',
      'supply-and-ground-loaded',
      'vacuum-three-times',
      'hold-watched',
      'bench-restored',
      'pins-removed',
      'cheap-checked-first',
    ];
    expect(missed.filter((rule) => !LEFT_FOR_THE_JOB.includes(rule))).toEqual([]);
  });
});

describe('an introduction', () => {
  test('may be left at any time, and then stands still', () => {
    for (const lines of ['', 'meter volts-dc', 'skip\nskip\nskip']) {
      const sitting = begun();
      if (lines !== '') work(sitting, lines);
      expect(sitting.apply({ kind: 'close-job' }).ok).toBe(true);
      expect(sitting.view().phase).toBe('closed');
      expect(sitting.apply({ kind: 'part-plug' })).toEqual({ ok: false, error: 'job-is-closed' });
      const again = Sitting.resume(scenario, sitting.record());
      expect(again.ok && again.value.view().phase).toBe('closed');
    }
    // A job is not: its verdict comes first.
    const job = begun({ ...scenario, mode: 'walkthrough' });
    expect(job.apply({ kind: 'close-job' })).toEqual({ ok: false, error: 'verdict-needed-first' });
  });

  test('has nothing of a job in it: no verdict, no marks, no coach, no parts, no road', () => {
    const sitting = begun();
    const ofAJob: readonly SittingAction[] = [
      { kind: 'give-verdict', item: 'unit', mode: null, cites: [] },
      { kind: 'mark-item', item: 'unit', mark: 'cleared', cites: [] },
      { kind: 'ask-coach', depth: 'question' },
      { kind: 'renew', item: 'unit' },
      { kind: 'renew', item: 'hand-pump' },
      { kind: 'road-test', cycles: 1 },
    ];
    for (const action of ofAJob) {
      expect(sitting.apply(action), action.kind).toEqual({ ok: false, error: 'not-in-introduction' });
    }
  });
});
