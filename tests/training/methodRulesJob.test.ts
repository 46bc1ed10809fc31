import { describe, expect, it } from 'vitest';
import { bench } from '../support/bench.ts';

function worked(script: string) {
  return bench().does(`accept\n${script}`);
}

describe('codes read before anything is cleared', () => {
  it('is kept, missed, or has no occasion', () => {
    expect(worked('key on\nread codes\nclear codes').rule('codes-recorded-first')).toBe('kept');
    expect(worked('key on\nclear codes\nread codes').rule('codes-recorded-first')).toBe('missed');
    expect(worked('key on\nread codes').rule('codes-recorded-first')).toBe('kept');
    expect(worked('key on').rule('codes-recorded-first')).toBe('no-occasion');
    expect(worked('key on\nverdict unit\nwait 2 s\nread codes').rule('codes-recorded-first')).toBe(
      'no-occasion',
    );
  });
  it('counts a new controller as a clearing', () => {
    expect(worked('verdict controller\nrenew controller').rule('codes-recorded-first')).toBe('missed');
    expect(
      worked('key on\nread codes\nkey off\nverdict controller\nrenew controller').rule(
        'codes-recorded-first',
      ),
    ).toBe('kept');
  });
});

describe("codes of one's own making", () => {
  /** Parted with the key on, the controller misses its coil. */
  const MADE = 'key on\nwait 1 s\npart plug\nwait 10 s\nkey off\nmate plug\nkey on\nwait 1 s\n';
  it('are read, told apart by that, and cleared', () => {
    const work = worked(MADE);
    expect(work.sees().reader.codes.map(({ code }) => code)).toContain('P2400');
    expect(work.does('read codes\nclear codes').rule('own-codes-cleared')).toBe('kept');
  });
  it('are missed left in, or cleared unread', () => {
    expect(worked(`${MADE}read codes`).rule('own-codes-cleared')).toBe('missed');
    expect(worked(`${MADE}clear codes`).rule('own-codes-cleared')).toBe('missed');
  });
  it('are no occasion where they have gone by themselves on a later key-on', () => {
    const work = worked(`${MADE}key off\nkey running\nwait 20 s\nkey off\nkey on\nwait 5 s\nread codes`);
    const stands = work.sees().reader.codes.some(({ code }) => code === 'P2400');
    expect(work.rule('own-codes-cleared')).toBe(stands ? 'missed' : 'no-occasion');
    expect(stands).toBe(false);
  });
  it('have no occasion with the key off, nor by what a drive finds', () => {
    expect(worked('part plug\nwait 10 s\nmate plug\nkey on\nwait 5 s').rule('own-codes-cleared')).toBe(
      'no-occasion',
    );
    const road = bench()
      .fault('capsule-torn')
      .does('accept\nkey on\nwait 1 s\nkey off\ndrive 4\nkey on\nwait 1 s');
    expect(road.sees().reader.codes.length).toBeGreaterThan(0);
    expect(road.rule('own-codes-cleared')).toBe('no-occasion');
  });
});

describe('cheap and likely first', () => {
  const BEFORE = [
    { item: 'controller', chance: 0.5 },
    { item: 'fuse', chance: 0.3 },
    { item: 'filler-cap', chance: 0.03 },
  ] as const;
  const named = (item: string, script: string) =>
    bench().evidence({ before: BEFORE }).does(`accept\n${script}\nverdict ${item}`);
  it('is kept by a look at it before the verdict', () => {
    expect(named('controller', 'pull fuse\nlook fuse').rule('cheap-checked-first')).toBe('kept');
  });
  it('is kept where the readings speak against it: history counts when its proof was seen', () => {
    const after = BEFORE.map(({ item, chance }) => ({ item, chance: item === 'fuse' ? 0.1 : chance }));
    expect(named('controller', 'key on').evidence({ after }).rule('cheap-checked-first')).toBe('kept');
  });
  it('is missed unchecked, and says of what; the unlikely need no look', () => {
    const outcome = named('controller', 'key on').ruleOutcome('cheap-checked-first');
    expect(outcome).toMatchObject({ outcome: 'missed', items: ['fuse'] });
    // Looking at a fuse that is in shows nothing of it.
    expect(named('controller', 'look fuse').rule('cheap-checked-first')).toBe('missed');
  });
  it('is missed where the known-good unit was put on the truck first', () => {
    const swapped =
      'part plug\ntake canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\ntake engine-hose off\nswap known-good\nmate plug\n';
    expect(named('controller', `${swapped}pull fuse\nlook fuse`).rule('cheap-checked-first')).toBe('missed');
  });
  it('has no occasion where the verdict is the cheaper', () => {
    expect(named('fuse', 'key on').rule('cheap-checked-first')).toBe('no-occasion');
  });
});

describe('a new unit', () => {
  const BARE =
    'part plug\ntake canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\ntake engine-hose off\n';
  const FIT = 'swap truck\nverdict unit\nrenew unit\n';
  it('is drawn down on the bench before one is fitted', () => {
    const drawn = 'swap known-good\nfit pump-hose on canister-port\nstroke full\ntake pump-hose off\n';
    expect(worked(`${BARE}${drawn}${FIT}`).rule('new-unit-tested')).toBe('kept');
  });
  it('may be measured instead', () => {
    const ohms =
      'swap known-good\nmeter ohms\nlead meter-red to unit-1\nlead meter-black to unit-2\nwait steady\nlift meter-red\nlift meter-black\n';
    expect(worked(`${BARE}${ohms}${FIT}`).rule('new-unit-tested')).toBe('kept');
  });
  it('is missed untested, or when it was only put in place', () => {
    expect(worked(`${BARE}verdict unit\nrenew unit`).rule('new-unit-tested')).toBe('missed');
    expect(worked(`${BARE}swap known-good\n${FIT}`).rule('new-unit-tested')).toBe('missed');
  });
  it('has no occasion where none is fitted', () => {
    expect(worked('verdict unit').rule('new-unit-tested')).toBe('no-occasion');
  });
});

describe('what spoils a unit', () => {
  const HOSE = 'take canister-hose off\nlook canister-hose\n';
  it('is looked for in the open hose and the filter', () => {
    expect(worked(`${HOSE}look filter\nverdict unit\nrenew unit`).rule('root-looked-for')).toBe('kept');
  });
  it('is missed in one of them, and with a plug in the hose', () => {
    expect(worked(`${HOSE}verdict unit\nrenew unit`).rule('root-looked-for')).toBe('missed');
    expect(worked('look filter\nverdict unit\nrenew unit').rule('root-looked-for')).toBe('missed');
    const plugged =
      'take canister-hose off\nfit plug-a on canister-hose-end\nlook canister-hose\nlook filter\n';
    expect(worked(`${plugged}verdict unit\nrenew unit`).rule('root-looked-for')).toBe('missed');
  });
  it('has no occasion where no unit was fitted', () => {
    expect(worked('verdict fuse\nrenew fuse').rule('root-looked-for')).toBe('no-occasion');
  });
});

describe('pending codes', () => {
  it('are read after the drive', () => {
    expect(worked('drive 1\nkey on\nread codes').rule('pending-codes-read')).toBe('kept');
  });
  it('are missed unread, or read before the last drive', () => {
    expect(worked('drive 1').rule('pending-codes-read')).toBe('missed');
    expect(worked('drive 1\nkey on\nread codes\nkey off\ndrive 1').rule('pending-codes-read')).toBe('missed');
  });
  it('have no occasion without a drive', () => {
    expect(worked('key on\nread codes').rule('pending-codes-read')).toBe('no-occasion');
    expect(worked('verdict fuse\nrenew fuse').rule('pending-codes-read')).toBe('missed');
    expect(worked('renew hand-pump').rule('pending-codes-read')).toBe('no-occasion');
  });
});
