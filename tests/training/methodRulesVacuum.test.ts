import { describe, expect, it } from 'vitest';
import { trialsAskedAt } from '../../src/training/score/trials.ts';
import { bench } from '../support/bench.ts';

const CLOSED_END =
  'fit plug-a on pump-hose-end\nstroke full x4\nwait 62 s\nrelease open\nwait 2 s\nrelease shut\ntake plug-a off\n';
const OPEN_UP = 'take canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\n';
const CAP = 'fit cap-a on air-port\nclamp air-port hand-tight\n';
const PUMP = 'fit pump-hose on canister-port\nclamp canister-port hand-tight\n';
const SENSE =
  'pin in 3\nkey on\nmeter volts-dc\nlead meter-red to cavity-3-back\nlead meter-black to battery-negative\nwait steady\n';
const SWITCH_OHMS =
  'part plug\nmeter ohms\nlead meter-red to unit-3\nlead meter-black to unit-2\nwait steady\n';
const TRIAL = 'stroke full x2\nwait steady\nrelease open\nwait steady\nrelease shut\n';

function worked(script: string) {
  return bench().does(`accept\n${script}`);
}

describe('pump proven', () => {
  const USED = 'take engine-hose off\nfit pump-hose on engine-port\nstroke full\n';
  it('has no occasion where the pump was never used on the truck', () => {
    expect(worked('stroke full').rule('pump-proven')).toBe('no-occasion');
  });
  it('is kept where its first use is on the new part, after the verdict', () => {
    expect(worked(`verdict unit\n${CLOSED_END}${USED}`).rule('pump-proven')).toBe('kept');
  });
  it('is kept by a minute on its own closed hose', () => {
    expect(worked(CLOSED_END).rule('pump-proven')).toBe('kept');
  });
  it('is missed after half a minute', () => {
    expect(worked(`${CLOSED_END.replace('62 s', '30 s')}${USED}`).rule('pump-proven')).toBe('missed');
  });
  it('is missed with the hose left open', () => {
    expect(worked(`stroke full x4\nwait 62 s\n${USED}`).rule('pump-proven')).toBe('missed');
  });
  it('is missed when the pump had been used on the unit before', () => {
    expect(
      worked(
        `${OPEN_UP}${CAP}${PUMP}${TRIAL}take pump-hose off\n${CLOSED_END.replaceAll('plug-a', 'plug-b')}`,
      ).rule('pump-proven'),
    ).toBe('missed');
  });
  it('is missed when the pump did not hold, and kept with the renewed one', () => {
    const leaky = () => bench().fault('hand-pump-seal-leaking', 1);
    expect(leaky().does(`accept\n${CLOSED_END}${USED}`).rule('pump-proven')).toBe('missed');
    expect(leaky().does(`accept\n${CLOSED_END}renew hand-pump\n${CLOSED_END}`).rule('pump-proven')).toBe(
      'kept',
    );
  });
});

describe('the air port', () => {
  it('is capped', () => {
    expect(worked(`${OPEN_UP}${CAP}${PUMP}${TRIAL}`).rule('air-port-capped')).toBe('kept');
  });
  it('is missed without a cap', () => {
    expect(worked(`${OPEN_UP}${PUMP}stroke full x3`).rule('air-port-capped')).toBe('missed');
  });
  it('may be found open and then capped, but not opened again', () => {
    const found = `${OPEN_UP}${PUMP}stroke full\n${CAP}${TRIAL}`;
    expect(worked(found).rule('air-port-capped')).toBe('kept');
    expect(worked(`${found}take cap-a off\nstroke full`).rule('air-port-capped')).toBe('missed');
  });
  it('has no occasion without a stroke', () => {
    expect(worked(`${OPEN_UP}${CAP}`).rule('air-port-capped')).toBe('no-occasion');
  });
});

describe('clamps', () => {
  it('are hand tight', () => {
    expect(worked(`${OPEN_UP}${CAP}${PUMP}${TRIAL}`).rule('clamps-hand-tight')).toBe('kept');
  });
  it('are missed loose', () => {
    expect(worked(`${OPEN_UP}${CAP}fit pump-hose on canister-port\n${TRIAL}`).rule('clamps-hand-tight')).toBe(
      'missed',
    );
  });
  it('are missed over-tight, even if eased at once', () => {
    const forced = 'clamp canister-port over-tight\nclamp canister-port hand-tight\n';
    expect(worked(`${OPEN_UP}${CAP}${PUMP}${forced}${TRIAL}`).rule('clamps-hand-tight')).toBe('missed');
  });
});

describe('the canister hose', () => {
  it('is plugged', () => {
    expect(worked(OPEN_UP).rule('canister-hose-plugged')).toBe('kept');
  });
  it('is missed when it stays open for more than a minute', () => {
    expect(
      worked('take canister-hose off\nwait 70 s\nfit plug-a on canister-hose-end').rule(
        'canister-hose-plugged',
      ),
    ).toBe('missed');
  });
  it('is missed when something is tried before the plug is in', () => {
    expect(worked(`take canister-hose off\n${PUMP}stroke full`).rule('canister-hose-plugged')).toBe('missed');
  });
  it('has no occasion on its port', () => {
    expect(worked('take air-hose off').rule('canister-hose-plugged')).toBe('no-occasion');
  });
});

describe('the vacuum test', () => {
  const READY = `${OPEN_UP}${CAP}${PUMP}`;
  it('is done three times, by volts or through the parted unit', () => {
    expect(worked(`${READY}${SENSE}${TRIAL.repeat(3)}`).rule('vacuum-three-times')).toBe('kept');
    expect(worked(`${READY}${SWITCH_OHMS}${TRIAL.repeat(3)}`).rule('vacuum-three-times')).toBe('kept');
  });
  it('is missed twice, or in one long pull, and has no occasion unwatched', () => {
    expect(worked(`${READY}${SENSE}${TRIAL.repeat(2)}`).rule('vacuum-three-times')).toBe('missed');
    expect(worked(`${READY}${TRIAL.repeat(3)}`).rule('vacuum-three-times')).toBe('no-occasion');
    expect(worked(`${READY}${SENSE}stroke full x6\nrelease open`).rule('vacuum-three-times')).toBe('missed');
  });
  it('counts what was done, not what came of it: a stuck switch and a torn capsule keep the rule', () => {
    for (const fault of ['switch-stuck-open', 'switch-stuck-closed']) {
      expect(
        bench()
          .fault(fault)
          .does(`accept\n${READY}${SENSE}${TRIAL.repeat(3)}`)
          .rule('vacuum-three-times'),
      ).toBe('kept');
    }
    const gone = 'stroke full x3\nwait 20 s\n';
    expect(
      bench()
        .fault('capsule-torn', 0.5)
        .does(`accept\n${READY}${SENSE}${gone.repeat(3)}`)
        .rule('vacuum-three-times'),
    ).toBe('kept');
  });
  it('is missed without a cap', () => {
    expect(worked(`${OPEN_UP}${PUMP}${SENSE}${TRIAL.repeat(3)}`).rule('vacuum-three-times')).toBe('missed');
  });
  it('asks for the return to be watched', () => {
    expect(worked(`${READY}${SENSE}${TRIAL}`).rule('return-observed')).toBe('kept');
    expect(worked(`${READY}${SENSE}stroke full x2\nwait steady`).rule('return-observed')).toBe('missed');
    expect(
      worked(`${READY}${SENSE}stroke full x2\nwait steady\nmeter off\nrelease open\nwait 5 s`).rule(
        'return-observed',
      ),
    ).toBe('missed');
  });
  it('asks for the hold to be watched twenty seconds, or until nothing is left', () => {
    expect(worked(`${READY}stroke full x3\nwait 21 s\nrelease open`).rule('hold-watched')).toBe('kept');
    expect(worked(`${READY}stroke full x3\nwait 15 s\nrelease open`).rule('hold-watched')).toBe('missed');
    expect(
      worked(`${READY}stroke full x3\nwait 12 s\nstroke full\nwait 12 s\nrelease open`).rule('hold-watched'),
    ).toBe('missed');
    const torn = bench()
      .fault('capsule-torn', 0.9)
      .does(`accept\n${READY}stroke full x4\nwait 10 s\nrelease open`);
    expect(torn.rule('hold-watched')).toBe('kept');
  });
});

describe('a vacuum trial watched on the reader', () => {
  const READER = `${OPEN_UP}${CAP}${PUMP}key on\n`;
  const NOTED = 'stroke full\nwait 2 s\nlog\nrelease open\nwait 2 s\nlog\nrelease shut\n';
  it('counts where what it says was written down', () => {
    expect(worked(`${READER}${NOTED.repeat(3)}`).rule('vacuum-three-times')).toBe('kept');
    expect(worked(`${READER}${NOTED}`).rule('return-observed')).toBe('kept');
    expect(worked(`${READER}${NOTED.replaceAll('log\n', '').repeat(3)}`).rule('vacuum-three-times')).toBe(
      'no-occasion',
    );
  });
});

describe('a switch that fails at times', () => {
  const READY = `${OPEN_UP}${CAP}${PUMP}${SENSE}`;
  it('asks for nine trials at three in ten, unless one of them shows it', () => {
    // 1 - 0.7^9 = 0.96, 1 - 0.7^8 = 0.94: binomial, by hand.
    expect(trialsAskedAt(0.3)).toBe(9);
    expect(trialsAskedAt(0.6)).toBe(4);
    expect(trialsAskedAt(1)).toBe(3);
    // 0.25 of the range 0.2 to 0.6: three in ten.
    const tried = (times: number) =>
      bench()
        .fault('switch-intermittent', 0.25)
        .does(`accept\n${READY}${TRIAL.repeat(times)}`);
    const outcomes = [3, 8, 14].map((times) => {
      const work = tried(times);
      const outcome = work.ruleOutcome('vacuum-three-times');
      return { times, outcome: outcome.outcome, of: outcome.tooFew?.of ?? null };
    });
    for (const { times, outcome, of } of outcomes) {
      // Either all trials were good and nine are asked for, or one was bad and three are enough.
      if (outcome === 'missed') expect([times < 9, of]).toEqual([true, 9]);
    }
    expect(outcomes.at(-1)?.outcome).toBe('kept');
  });
});
