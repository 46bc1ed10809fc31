import { describe, expect, it } from 'vitest';
import { bench } from '../support/bench.ts';

const BATTERY =
  'meter volts-dc\nlead meter-red to battery-positive\nlead meter-black to battery-negative\nwait steady\nlog\n';
const SENSE =
  'pin in 3\nkey on\nmeter volts-dc\nlead meter-red to cavity-3-back\nlead meter-black to battery-negative\nwait steady\n';

function worked(script: string) {
  return bench().does(`accept\n${script}`);
}

describe('key off for the plug', () => {
  it('has no occasion while the plug is left alone', () => {
    expect(worked('key on').rule('key-off-for-plug')).toBe('no-occasion');
  });
  it('is kept with the key off', () => {
    expect(worked('key on\nkey off\npart plug\nmate plug\nkey on').rule('key-off-for-plug')).toBe('kept');
  });
  it('is missed with the key on, parting or mating', () => {
    expect(worked('key on\npart plug').rule('key-off-for-plug')).toBe('missed');
    expect(worked('part plug\nkey on\nmate plug').rule('key-off-for-plug')).toBe('missed');
  });
  it('is missed by fitting a new unit with the key on', () => {
    expect(worked('key on\nverdict unit\nrenew unit').rule('key-off-for-plug')).toBe('missed');
    expect(worked('verdict unit\nrenew unit').rule('key-off-for-plug')).toBe('kept');
  });
});

describe('back-probing', () => {
  it('is kept through a pin', () => {
    expect(worked(SENSE).rule('back-probed-with-pins')).toBe('kept');
  });
  it('is missed by a tip in the face of a terminal', () => {
    expect(worked('part plug\nlead meter-red to front-3').rule('back-probed-with-pins')).toBe('missed');
  });
  it('is missed through the insulation of a wire', () => {
    expect(worked('lead meter-red to wire-3').rule('back-probed-with-pins')).toBe('missed');
  });
  it('is kept by the matched test pin on the parted harness half', () => {
    expect(worked('part plug\nlead meter-red to harness-3').rule('back-probed-with-pins')).toBe('kept');
  });
  it('has no occasion at the battery or on the unit half', () => {
    expect(worked(`${BATTERY}part plug\nlead meter-red to unit-1`).rule('back-probed-with-pins')).toBe(
      'no-occasion',
    );
  });
  it('asks for the pins back', () => {
    expect(worked('pin in 3\npin out 3').rule('pins-removed')).toBe('kept');
    expect(worked('pin in 3\npin in 2\npin out 3').rule('pins-removed')).toBe('missed');
    expect(worked('key on').rule('pins-removed')).toBe('no-occasion');
  });
});

describe('the bench', () => {
  it('is restored when everything stands as it stood', () => {
    expect(worked('pin in 3\npin out 3\npull fuse\nfit fuse').rule('bench-restored')).toBe('kept');
  });
  it.each([
    'pin in 3',
    'part plug',
    'pull fuse',
    'take air-hose off',
    'lead plain-a to chassis-stud',
    'clamp air-port loose',
    'pin in 1\npin out 1\nkey on',
  ])('is not restored after: %s', (left) => {
    expect(worked(left).rule('bench-restored')).toBe('missed');
  });
  it('is not restored with the hoses on but their clamps loose', () => {
    expect(worked('take air-hose off\nfit air-hose on air-port').rule('bench-restored')).toBe('missed');
  });
  it('has no occasion untouched', () => {
    expect(worked('key on\nkey off').rule('bench-restored')).toBe('no-occasion');
  });
});

describe('the lock of the plug', () => {
  it('is checked by moving the plug, or by looking at it, after it was mated', () => {
    expect(worked('part plug\nmate plug\nwiggle plug').rule('lock-checked')).toBe('kept');
    expect(worked('part plug\nmate plug\nlook plug').rule('lock-checked')).toBe('kept');
  });
  it('is missed unchecked, or checked before the last mating', () => {
    expect(worked('part plug\nmate plug').rule('lock-checked')).toBe('missed');
    expect(worked('part plug\nmate plug\nwiggle plug\npart plug\nmate plug').rule('lock-checked')).toBe(
      'missed',
    );
  });
  it('has no occasion while the plug stays on', () => {
    expect(worked('wiggle plug').rule('lock-checked')).toBe('no-occasion');
  });
});
