import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { Random } from '../../src/base/Random.ts';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { parseActions } from '../../src/cli/parseActions.ts';
import { runActions } from '../../src/cli/runActions.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { MAX_STRIP_SAMPLES } from '../../src/training/sitting/Recorder.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { SittingRecord } from '../../src/training/sitting/SittingRecord.ts';
import { bench } from '../support/bench.ts';

const VACUUM = `accept
take canister-hose off
take air-hose off
fit cap-a on air-port
clamp air-port hand-tight
fit pump-hose on canister-port
clamp canister-port hand-tight
pin in 3
meter volts-dc
lead meter-red to cavity-3-back
lead meter-black to battery-negative
key on
stroke full x3
wait 3.37 s
log "Under vacuum"
solenoid pulse
wait 2.2 s
release open
wait 1.21 s
log "After"
`;

describe('the phases of a sitting', () => {
  it('go from the work order to the closed job, and refuse what has no place yet', () => {
    const { sitting } = bench();
    expect(sitting.apply({ kind: 'set-key', position: 'on' })).toEqual({
      ok: false,
      error: 'job-not-accepted',
    });
    expect(sitting.apply({ kind: 'accept-job' }).ok).toBe(true);
    expect(sitting.apply({ kind: 'accept-job' })).toEqual({ ok: false, error: 'job-already-accepted' });
    expect(sitting.apply({ kind: 'close-job' })).toEqual({ ok: false, error: 'verdict-needed-first' });
    expect(sitting.apply({ kind: 'give-verdict', item: 'unit', mode: null, cites: [1] })).toEqual({
      ok: false,
      error: 'no-such-entry',
    });
    expect(sitting.apply({ kind: 'log' }).ok).toBe(true);
    const nine = Array.from({ length: 9 }, () => 1);
    expect(sitting.apply({ kind: 'give-verdict', item: 'unit', mode: null, cites: nine })).toEqual({
      ok: false,
      error: 'too-many-citations',
    });
    expect(sitting.apply({ kind: 'annotate', entry: 1, text: 'x'.repeat(281) })).toEqual({
      ok: false,
      error: 'text-too-long',
    });
    expect(sitting.apply({ kind: 'give-verdict', item: 'unit', mode: null, cites: [1] }).ok).toBe(true);
    expect(sitting.apply({ kind: 'give-verdict', item: 'fuse', mode: null, cites: [] })).toEqual({
      ok: false,
      error: 'verdict-already-given',
    });
    expect(sitting.view().verdict).toMatchObject({ item: 'unit', cites: [1] });
    expect(sitting.apply({ kind: 'close-job' }).ok).toBe(true);
    expect(sitting.apply({ kind: 'log' })).toEqual({ ok: false, error: 'job-is-closed' });
    expect(sitting.view().phase).toBe('closed');
  });

  it('let only tools be renewed before the verdict', () => {
    const { sitting } = bench().does('accept');
    for (const item of ['unit', 'fuse', 'sense-wire'] as const) {
      expect(sitting.apply({ kind: 'renew', item })).toEqual({ ok: false, error: 'verdict-needed-first' });
    }
    expect(sitting.apply({ kind: 'renew', item: 'hand-pump' }).ok).toBe(true);
    expect(sitting.apply({ kind: 'renew', item: 'meter-leads' }).ok).toBe(true);
    expect(sitting.apply({ kind: 'give-verdict', item: 'fuse', mode: null, cites: [] }).ok).toBe(true);
    expect(sitting.apply({ kind: 'renew', item: 'fuse' }).ok).toBe(true);
    expect(sitting.view().renewed.map(({ item }) => item)).toEqual(['hand-pump', 'meter-leads', 'fuse']);
  });

  it('stop the clock when the job is closed', () => {
    const { sitting } = bench().does('accept\nverdict nothing-wrong\nclose');
    const { tick } = sitting;
    sitting.advanceTo(tick + 20_000);
    expect(sitting.tick).toBe(tick);
  });
});

describe('a log entry', () => {
  it('holds what was heard and how the gauge swung in the ten seconds before, and nothing older', () => {
    const work = bench().does(`accept
key on
solenoid on
solenoid off
solenoid on
wait 11 s
solenoid off
log`);
    const [entry] = work.sitting.view().log;
    expect(entry?.heard).toEqual({ clicksOn: 0, clicksOff: 1, by: 'command' });
    const swung = bench().does(
      'accept\nfit plug-a on pump-hose-end\nstroke full x2\nrelease open\nwait 4 s\nlog',
    );
    const swing = swung.sitting.view().log[0]?.gaugeSwing;
    expect(swing?.lowKPa).toBeLessThan(0.5);
    expect(swing?.highKPa).toBeGreaterThan(25);
    swung.does('wait 11 s\nlog');
    expect(swung.sitting.view().log[1]?.gaugeSwing.highKPa).toBeLessThan(0.5);
  });

  it('keeps its number and takes a note', () => {
    const { sitting } = bench().does('accept\nlog\nlog "Second"\nnote 1 "First"');
    expect(sitting.view().log.map(({ id, note }) => [id, note])).toEqual([
      [1, 'First'],
      [2, 'Second'],
    ]);
  });
});

describe('how time is cut', () => {
  /** Does a record's actions, with time cut at random ticks on the way. */
  function resit(record: SittingRecord, cuts: Random): Sitting {
    const again = Sitting.begin(bench().fault('capsule-torn', 0.4).scenario, record.seed);
    const to = (tick: number): void => {
      while (again.tick < tick) {
        const step = 1 + Math.floor(cuts.next() * cuts.next() * 30_000);
        again.advanceTo(Math.min(again.tick + step, tick));
        again.view();
      }
    };
    for (const { tick, action } of record.actions) {
      to(tick);
      const done = again.apply(action);
      if (!done.ok) throw new Error(done.error);
    }
    to(record.endTick);
    return again;
  }

  it('changes neither log nor strip nor world', () => {
    const { sitting } = bench().fault('capsule-torn', 0.4).does(VACUUM);
    const record = sitting.record();
    for (let run = 0; run < 6; run++) {
      const again = resit(record, Random.of('cuts', `${run}`));
      expect(again.record()).toEqual(record);
      expect(again.view()).toEqual(sitting.view());
    }
  });
});

describe('resuming a sitting', () => {
  it('goes on exactly where the record stops', () => {
    const whole = bench().fault('plunger-sticky', 0.5).does(VACUUM);
    const record = JSON.parse(JSON.stringify(whole.sitting.record())) as SittingRecord;
    const resumed = Sitting.resume(whole.scenario, record);
    if (!resumed.ok) throw new Error(JSON.stringify(resumed.error));
    expect(resumed.value.view()).toEqual(whole.sitting.view());
    const more = parseActions('release shut\nstroke full x2\nsolenoid on\nwait 2 s\nlog "Later"');
    if (!more.ok) throw new Error('reads');
    runActions(whole.sitting, more.value);
    runActions(resumed.value, more.value);
    expect(resumed.value.view()).toEqual(whole.sitting.view());
    expect(resumed.value.record()).toEqual(whole.sitting.record());
  });
});

describe('the view', () => {
  it('is the same object until something changes, and an old one stays as it was', () => {
    const { sitting } = bench().does('accept');
    const first = sitting.view();
    expect(sitting.view()).toBe(first);
    const { length } = first.strip;
    sitting.advanceTo(sitting.tick + secondsToTicks(5));
    expect(sitting.view()).not.toBe(first);
    expect(first.strip.length).toBe(length);
    expect(sitting.view().strip.length).toBeGreaterThan(length);
  });

  it('keeps the strip short by thinning it evenly, however long the job', () => {
    const { sitting } = bench().does('accept\nwait 20 min');
    const { strip } = sitting.view();
    expect(strip.length).toBeLessThanOrEqual(MAX_STRIP_SAMPLES);
    expect(strip.length).toBeGreaterThan(MAX_STRIP_SAMPLES / 3);
    const gaps = new Set(strip.slice(1).map(({ tick }, index) => tick - (strip[index]?.tick ?? 0)));
    expect(gaps.size).toBe(1);
    expect(strip.at(-1)?.tick).toBeGreaterThan(sitting.tick - secondsToTicks(2));
  });

  it('shows nothing of the fault', () => {
    const view = JSON.stringify(bench().fault('switch-stuck-open').sitting.view());
    expect(view).not.toMatch(/stuck|fault|severity/i);
  });
});

describe('the walkthrough', () => {
  const text = readFileSync(new URL('../../scenarios/first-day-on-the-bench.yaml', import.meta.url), 'utf8');
  const loaded = loadScenario(text, 'first-day-on-the-bench.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  const scenario = loaded.value;
  const script = readFileSync(
    new URL('../golden/actions/first-day-on-the-bench.full.txt', import.meta.url),
    'utf8',
  );

  it('takes its steps one by one as the work is done, and is through at the end', () => {
    const lines = parseActions(script);
    if (!lines.ok) throw new Error('reads');
    const sitting = Sitting.begin(scenario);
    let last = 0;
    const run = runActions(sitting, lines.value, () => {
      const { step } = sitting.view();
      expect(step).toBeGreaterThanOrEqual(last);
      last = step;
    });
    expect(run.ok).toBe(true);
    expect(scenario.steps[last]?.id).toBeUndefined();
    expect(last).toBe(scenario.steps.length);
    expect(sitting.view().passedOver).toEqual([]);
  });

  const at = (sitting: Sitting): string | undefined => scenario.steps[sitting.view().step]?.id;
  const index = (id: string): number => scenario.steps.findIndex((step) => step.id === id);
  const sat = (work: string): Sitting => {
    const lines = parseActions(work);
    if (!lines.ok) throw new Error(JSON.stringify(lines.error));
    const sitting = Sitting.begin(scenario);
    const run = runActions(sitting, lines.value);
    if (!run.ok) throw new Error(run.error.text);
    return sitting;
  };

  it('goes on behind a milestone that is met, and calls what it went past passed over', () => {
    const sitting = sat('accept\nkey on\nread codes\nverdict unit vacuum-switch');
    expect(at(sitting)).toBe('key-off');
    expect(sitting.view().passedOver[0]).toBe(index('ask-coach'));
    expect(sitting.view().passedOver.at(-1)).toBe(index('clear-feed'));
    sitting.apply({ kind: 'set-key', position: 'off' });
    sitting.apply({ kind: 'part-plug' });
    sitting.apply({ kind: 'renew', item: 'unit' });
    expect(at(sitting)).toBe('mate-new');
    expect(sitting.view().passedOver).not.toContain(index('key-off'));
  });

  it('goes past the verdict when another one was given, and says that it was not done', () => {
    for (const other of ['verdict unit', 'verdict fuse', 'verdict unit capsule']) {
      const sitting = sat(`accept\n${other}`);
      expect(at(sitting)).toBe('key-off');
      expect(sitting.view().passedOver.at(-1)).toBe(index('verdict'));
    }
  });

  it('counts a question to the coach from the step that asks for it', () => {
    const early = sat('accept\ncoach question\nkey on\nread codes\nkey off');
    expect(at(early)).toBe('ask-coach');
    expect(early.apply({ kind: 'ask-coach', depth: 'test' }).ok).toBe(true);
    expect(at(early)).toBe('meter-on-battery');
  });

  it('goes past a step that is skipped, and a replay does the same', () => {
    const sitting = sat('accept\nskip\nskip');
    expect(at(sitting)).toBe('meter-on-battery');
    expect(sitting.view().passedOver).toEqual([1, 2]);
    const again = Sitting.resume(scenario, sitting.record());
    if (!again.ok) throw new Error(again.error.code);
    expect(again.value.view()).toEqual(sitting.view());
  });

  it('has no step to skip once all are done, nor in a job without steps', () => {
    const practice = bench().does('accept').sitting;
    expect(practice.apply({ kind: 'skip-step' })).toEqual({ ok: false, error: 'no-step-to-skip' });
    const sitting = sat('accept');
    // Skipping may bring steps whose condition holds already; those need no skip.
    for (let n = 0; n < scenario.steps.length && sitting.view().step < scenario.steps.length; n++)
      sitting.apply({ kind: 'skip-step' });
    expect(sitting.view().step).toBe(scenario.steps.length);
    expect(sitting.apply({ kind: 'skip-step' })).toEqual({ ok: false, error: 'no-step-to-skip' });
  });

  it('takes a lever that has shut itself again: what counts is that the needle came home', () => {
    const work = script.replaceAll(/^release open$/gm, 'release open\nwait 3 s\nrelease shut');
    const lines = parseActions(work);
    if (!lines.ok) throw new Error('reads');
    const sitting = Sitting.begin(scenario);
    for (const line of lines.value) runActions(sitting, [line]);
    expect(sitting.view().passedOver).toEqual([]);
    expect(sitting.view().step).toBe(scenario.steps.length);
  });

  it('waits at a step that is not done: no cap, no vacuum, no further', () => {
    const withoutCap =
      script
        .replace('fit cap-a on air-port\nclamp air-port hand-tight\n', '')
        .split('\nmark sense-wire')[0] ?? '';
    const lines = parseActions(withoutCap);
    if (!lines.ok) throw new Error('reads');
    const sitting = Sitting.begin(scenario);
    expect(runActions(sitting, lines.value).ok).toBe(true);
    expect(scenario.steps[sitting.view().step]?.id).toBe('cap-air');
  });
});
