import { describe, expect, it } from 'vitest';
import { bench } from '../support/bench.ts';

const JUMPER =
  'part plug\nlead plain-a to battery-negative\nlead plain-b to unit-2\nlead jumper-far to unit-1\nlead jumper-supply to battery-positive\n';
const CLICK = 'jumper on\njumper off\n';

function worked(script: string) {
  return bench().does(`accept\n${script}`);
}

describe('the click', () => {
  it('is tried three times by the jumper', () => {
    expect(worked(`${JUMPER}${CLICK.repeat(3)}`).rule('click-three-times')).toBe('kept');
    expect(worked(`${JUMPER}${CLICK.repeat(2)}`).rule('click-three-times')).toBe('missed');
  });
  it('is tried three times by the reader, or by a few seconds of pulses', () => {
    expect(worked(`key on\n${'solenoid on\nsolenoid off\n'.repeat(3)}`).rule('click-three-times')).toBe(
      'kept',
    );
    expect(worked('key on\nsolenoid pulse\nwait 4 s\nsolenoid off').rule('click-three-times')).toBe('kept');
    expect(worked('key on\nsolenoid pulse\nsolenoid off').rule('click-three-times')).toBe('missed');
  });
  it('counts trials, not luck: with an open winding three silent trials keep the rule', () => {
    expect(
      bench()
        .fault('winding-open')
        .does(`accept\n${JUMPER}${CLICK.repeat(3)}`)
        .rule('click-three-times'),
    ).toBe('kept');
  });
  it('is told as too few where it was tried, but less than three times', () => {
    const twice = worked(`${JUMPER}${CLICK.repeat(2)}verdict unit\nclose`).debrief();
    const outcome = twice.rules.find(({ rule }) => rule === 'click-three-times');
    expect(outcome).toMatchObject({ outcome: 'missed', ticks: [], tooFew: { of: 3 } });
    expect(outcome?.tooFew?.ticks).toHaveLength(2);
  });
  it('is tried either way round, and three clicks count however the unit was fed', () => {
    const turned = JUMPER.replace('plain-b to unit-2', 'plain-b to unit-1').replace(
      'far to unit-1',
      'far to unit-2',
    );
    expect(worked(`${turned}${CLICK.repeat(3)}`).rule('click-three-times')).toBe('kept');
    const byLead = 'lift jumper-supply\nlead jumper-supply to battery-positive\nwait 1 s\n';
    expect(worked(`${JUMPER}jumper on\n${byLead.repeat(3)}`).rule('click-three-times')).toBe('kept');
  });
  it('is no trial without a ground lead', () => {
    expect(worked(`${JUMPER}lift plain-b\n${CLICK.repeat(3)}`).rule('click-three-times')).toBe('no-occasion');
  });
  it('must come before the verdict', () => {
    const late = bench()
      .withPar({ tests: ['jumper-clicks'] })
      .does(`accept\nverdict unit\n${JUMPER}${CLICK.repeat(3)}`);
    expect(late.rule('click-three-times')).toBe('missed');
  });
});

describe('the jumper', () => {
  it('is short and switched', () => {
    expect(worked(`${JUMPER}${CLICK}`).rule('jumper-short-and-fused')).toBe('kept');
  });
  it('is missed for more than ten seconds', () => {
    expect(worked(`${JUMPER}jumper on\nwait 11 s\njumper off`).rule('jumper-short-and-fused')).toBe('missed');
  });
  it('is missed when it is made by a tip instead of its switch', () => {
    expect(
      worked(`part plug\nlead jumper-supply to battery-positive\njumper on\nlead jumper-far to unit-1`).rule(
        'jumper-short-and-fused',
      ),
    ).toBe('missed');
  });
  it('is missed into the harness', () => {
    expect(
      worked(
        'pin in 1\nlead jumper-far to cavity-1-back\nlead jumper-supply to battery-positive\njumper on\njumper off',
      ).rule('jumper-short-and-fused'),
    ).toBe('missed');
  });
  it('has no occasion unused', () => {
    expect(worked(JUMPER).rule('jumper-short-and-fused')).toBe('no-occasion');
  });
});
