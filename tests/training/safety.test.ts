import { describe, expect, it } from 'vitest';
import { bench } from '../support/bench.ts';

/** Breaches of a job with this work in it. */
function breaches(script: string): string[] {
  const facts = bench().does(`accept\n${script}\nverdict unit\nclose`).debrief();
  return facts.safety.map(({ breach, grade }) => `${grade} ${breach}`);
}

const JUMPER =
  'part plug\nlead plain-a to battery-negative\nlead plain-b to unit-2\nlead jumper-far to unit-1\nlead jumper-supply to battery-positive\n';

describe('safety', () => {
  it('finds nothing in proper work', () => {
    expect(breaches(`${JUMPER}jumper on\njumper off`)).toEqual([]);
    expect(
      breaches(
        'take canister-hose off\nfit plug-a on canister-hose-end\nfit pump-hose on canister-port\nstroke full x2',
      ),
    ).toEqual([]);
  });

  it('finds a source without a fuse', () => {
    expect(breaches('part plug\nlead plain-a to battery-positive\nlead plain-b to unit-1')).toEqual([
      'serious unfused-source',
    ]);
    expect(breaches('part plug\nlead plain-a to battery-negative\nlead plain-b to unit-1')).toEqual([]);
  });

  it('finds 12 V on the sense wire, through the jumper only while it is switched on', () => {
    const wired = 'pin in 3\nlead jumper-far to cavity-3-back\nlead jumper-supply to battery-positive\n';
    expect(breaches(wired)).toEqual([]);
    expect(breaches(`${wired}jumper on`)).toEqual(['serious supply-on-sense-mated']);
    expect(breaches(`${wired}jumper on\njumper off\njumper on`)).toHaveLength(2);
  });

  it('finds too much vacuum on the canister side, and not a little of it', () => {
    const onHose = 'take canister-hose off\nfit pump-hose on canister-hose-end\n';
    expect(breaches(`${onHose}stroke 0.3`)).toEqual([]);
    expect(breaches(`${onHose}stroke full x50\nstroke full x50\nstroke full x50`)).toEqual([
      'serious too-much-vacuum-on-canister',
    ]);
  });

  it('finds the unit drawn above its rating', () => {
    const onUnit =
      'take canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\nfit cap-a on air-port\nclamp air-port hand-tight\nfit pump-hose on canister-port\nclamp canister-port hand-tight\n';
    expect(breaches(`${onUnit}stroke full x4`)).toEqual([]);
    expect(breaches(`${onUnit}stroke full x9`)).toEqual(['minor over-rated-vacuum']);
  });

  it('finds the jumper worked beside an open vapour line, once for each time it was left open', () => {
    const clicks = 'jumper on\njumper off\n'.repeat(2);
    expect(breaches(`take canister-hose off\n${JUMPER}${clicks}`)).toEqual(['serious spark-at-open-vapour']);
    expect(breaches(`take canister-hose off\nfit plug-a on canister-hose-end\n${JUMPER}${clicks}`)).toEqual(
      [],
    );
    const twice = `take canister-hose off\n${JUMPER}${clicks}fit plug-a on canister-hose-end\ntake plug-a off\n${clicks}`;
    expect(breaches(twice)).toHaveLength(2);
  });

  it('finds contact made by a tip at a unit that was not aired, and not by the switch or at an aired one', () => {
    const live = `${JUMPER}jumper on\n`.replace('lead jumper-far to unit-1\n', '');
    const byTip = 'lead jumper-far to unit-1\nlift jumper-far\n';
    expect(breaches(`${live}${byTip}`)).toEqual([
      'minor spark-at-unaired-unit',
      'minor spark-at-unaired-unit',
    ]);
    const plugged = 'take canister-hose off\nfit plug-a on canister-hose-end\n';
    expect(breaches(`${plugged}wait 40 s\n${live}${byTip}`)).toEqual([]);
    expect(breaches(`${JUMPER}jumper on\njumper off`)).toEqual([]);
  });

  it('lets deliberate tests on the parted harness half pass', () => {
    const bridge = 'part plug\nkey on\nlead plain-a to harness-3\nlead plain-b to harness-2\nwait 5 s\n';
    expect(breaches(bridge)).toEqual([]);
    const lamp =
      'part plug\nkey on\nlead lamp-clip to battery-negative\nlead lamp-tip to harness-1\nsolenoid on\n';
    expect(breaches(lamp)).toEqual([]);
    // The same lamp on the mated sense wire is none of these: see below.
  });

  it('finds the canister drawn too far through the unit, whose vent is open at rest', () => {
    const through = 'take air-hose off\nfit pump-hose on air-port\nclamp air-port hand-tight\n';
    expect(breaches(`${through}stroke 0.3`)).toEqual([]);
    expect(breaches(`${through}${'stroke full x50\n'.repeat(4)}`)).toContain(
      'serious too-much-vacuum-on-canister',
    );
  });

  it('finds a plain lead on the bench supply only while that is switched on', () => {
    const wired = 'part plug\nlead plain-a to supply-positive\nlead plain-b to unit-1\n';
    expect(breaches(wired)).toEqual([]);
    expect(breaches(`${wired}supply on`)).toEqual(['serious unfused-source']);
  });

  it('finds the test lamp on the sense wire of the mated plug, and lets the parted feed be lit', () => {
    const lamp = 'lead lamp-clip to battery-negative\nlead lamp-tip to ';
    expect(breaches(`pin in 3\n${lamp}cavity-3-back`)).toEqual(['minor lamp-on-sense-mated']);
    expect(breaches(`part plug\n${lamp}harness-1`)).toEqual([]);
  });

  it('finds a tip slipped across two cavities of the mated plug, once for each slip', () => {
    expect(breaches('lead meter-red to slip-2-3')).toEqual(['minor slipped-probe']);
    expect(breaches('lead meter-red to slip-2-3\nlift meter-red\nlead meter-red to slip-1-2')).toHaveLength(
      2,
    );
    expect(breaches('part plug\nlead meter-red to slip-2-3')).toEqual([]);
  });

  it('finds too much smoke pressure on the canister side, not on the unit alone', () => {
    const onHose = 'take canister-hose off\nfit smoke-hose on canister-hose-end\n';
    expect(breaches(`${onHose}smoke inert 3 kPa\nwait 5 min`)).toEqual([]);
    expect(breaches(`${onHose}smoke inert 6 kPa\nwait 5 min`)).toEqual([
      'serious too-much-pressure-on-canister',
    ]);
    const alone =
      'take canister-hose off\nfit plug-a on canister-hose-end\nfit cap-a on canister-port\nclamp canister-port hand-tight\ntake air-hose off\nfit smoke-hose on air-port\nclamp air-port hand-tight\n';
    expect(breaches(`${alone}smoke inert 6 kPa\nwait 30 s`)).toEqual([]);
  });

  it('finds smoke blown with shop air', () => {
    const onHose = 'take canister-hose off\nfit smoke-hose on canister-hose-end\n';
    expect(breaches(`${onHose}smoke shop-air 2 kPa\nwait 5 s`)).toEqual(['serious smoke-with-shop-air']);
  });

  it('finds the canister drawn too far through the jar as well', () => {
    const onJar =
      'take canister-hose off\nfit jar-hose on canister-hose-end\nfit pump-hose on jar-tee-a\nfit cap-a on jar-tee-b\n';
    expect(breaches(`${onJar}stroke full x50\nstroke full x50\nstroke full x50\nstroke full x50`)).toEqual([
      'serious too-much-vacuum-on-canister',
    ]);
  });
});
