import { describe, expect, it } from 'vitest';
import { bench } from '../support/bench.ts';

const BATTERY =
  'meter volts-dc\nlead meter-red to battery-positive\nlead meter-black to battery-negative\nwait steady\nlog\n';
const OPEN_UP = 'take canister-hose off\nfit plug-a on canister-hose-end\ntake air-hose off\n';
const CAP = 'fit cap-a on air-port\nclamp air-port hand-tight\n';
const PUMP = 'fit pump-hose on canister-port\nclamp canister-port hand-tight\n';
const SENSE =
  'pin in 3\nkey on\nmeter volts-dc\nlead meter-red to cavity-3-back\nlead meter-black to battery-negative\nwait steady\n';
const SWITCH_OHMS =
  'part plug\nmeter ohms\nlead meter-red to unit-3\nlead meter-black to unit-2\nwait steady\n';
const JUMPER =
  'part plug\nlead plain-a to battery-negative\nlead plain-b to unit-2\nlead jumper-far to unit-1\nlead jumper-supply to battery-positive\n';

function worked(script: string) {
  return bench().does(`accept\n${script}`);
}

describe('meter proven', () => {
  it('is kept by a settled reading of the battery before anything else', () => {
    expect(
      worked(`${BATTERY}pin in 3\nkey on\nlead meter-red to cavity-3-back\nwait steady\nlog`).rule(
        'meter-proven',
      ),
    ).toBe('kept');
  });
  it('is kept on the low impedance position as well, and by a first try that was logged too soon', () => {
    expect(worked(`${BATTERY.replace('volts-dc', 'volts-low-z')}log`).rule('meter-proven')).toBe('kept');
    const early = worked('lead meter-red to battery-positive\nlead meter-black to battery-negative');
    early.sitting.apply({ kind: 'set-meter', function: 'volts-dc' });
    early.sitting.apply({ kind: 'log' });
    expect(early.does('wait steady\nlog').rule('meter-proven')).toBe('kept');
  });
  it('is missed when it was never done', () => {
    expect(worked(`${SENSE}log`).rule('meter-proven')).toBe('missed');
  });
  it('is missed when another reading was logged first', () => {
    expect(
      worked(`${SENSE}log\nlead meter-red to battery-positive\nwait steady\nlog`).rule('meter-proven'),
    ).toBe('missed');
  });
  it('is missed when the battery was only touched, not read: the lead is open', () => {
    expect(bench().fault('meter-lead-open').does(`accept\n${BATTERY}`).rule('meter-proven')).toBe('missed');
  });
  it('has no occasion where the meter was not used before the verdict', () => {
    expect(worked(`verdict unit\n${BATTERY}`).rule('meter-proven')).toBe('no-occasion');
  });
  it('is missed when it came after the verdict', () => {
    const atBattery = 'lead meter-red to battery-positive\nwait steady\nlog\n';
    const late = worked(`${SENSE}verdict unit\n${atBattery}`);
    expect(late.rule('meter-proven')).toBe('missed');
  });
});

describe('ohms on a dead circuit', () => {
  it('is kept on the parted unit', () => {
    expect(worked(SWITCH_OHMS).rule('ohms-on-dead-circuit')).toBe('kept');
  });
  it('is missed on the wires with the key on', () => {
    expect(worked(`${SENSE}meter ohms`).rule('ohms-on-dead-circuit')).toBe('missed');
  });
  it('is missed across the battery', () => {
    expect(worked(BATTERY.replace('volts-dc', 'ohms')).rule('ohms-on-dead-circuit')).toBe('missed');
  });
  it('is missed on the coil while the jumper feeds it', () => {
    expect(
      worked(
        `${JUMPER}meter ohms\nlead meter-red to unit-1\nlead meter-black to unit-2\njumper on\njumper off`,
      ).rule('ohms-on-dead-circuit'),
    ).toBe('missed');
  });
  it('has no occasion with the tips on one another', () => {
    expect(worked('meter ohms\nlead meter-red to meter-black-tip').rule('ohms-on-dead-circuit')).toBe(
      'no-occasion',
    );
  });
});

describe('supply and ground loaded', () => {
  const PINS = 'pin in 1\npin in 2\nkey on\nmeter volts-dc\nlead meter-black to battery-negative\n';
  const BOTH = 'lead meter-red to cavity-1-back\nwait steady\nlead meter-red to cavity-2-back\nwait steady\n';
  it('is kept with the solenoid carrying its current', () => {
    expect(worked(`${PINS}solenoid on\n${BOTH}`).rule('supply-and-ground-loaded')).toBe('kept');
  });
  it('is missed unloaded, and with one side only', () => {
    expect(worked(`${PINS}${BOTH}`).rule('supply-and-ground-loaded')).toBe('missed');
    expect(
      worked(`${PINS}solenoid on\nlead meter-red to cavity-1-back\nwait steady`).rule(
        'supply-and-ground-loaded',
      ),
    ).toBe('missed');
  });
  it('has its occasion in a verdict on a wire', () => {
    expect(worked('verdict ground-wire').rule('supply-and-ground-loaded')).toBe('missed');
    expect(worked('verdict unit').rule('supply-and-ground-loaded')).toBe('no-occasion');
  });
});

describe('meter proven once more', () => {
  const ON_SENSE = SENSE.replace('meter volts-dc\n', '').replace(
    'lead meter-black to battery-negative\n',
    '',
  );
  const AT_BATTERY = 'lead meter-red to battery-positive\nwait steady\n';
  const broken = () => bench().fault('sense-open').does(`accept\n${BATTERY}${ON_SENSE}log\n`);
  it('is kept by going back to the battery after nothing was read where volts should be', () => {
    expect(broken().does(AT_BATTERY).rule('meter-proven-again')).toBe('kept');
  });
  it('is kept tip to tip in ohms as well', () => {
    expect(
      broken().does('meter ohms\nlead meter-red to meter-black-tip\nwait steady').rule('meter-proven-again'),
    ).toBe('kept');
  });
  it('is missed when it was not done, or after the verdict', () => {
    expect(broken().rule('meter-proven-again')).toBe('missed');
    expect(broken().does(`verdict sense-wire\n${AT_BATTERY}`).rule('meter-proven-again')).toBe('missed');
  });
  it('is missed when the second proof fails too: it was the lead', () => {
    const lead = bench().fault('meter-lead-open').does(`accept\n${BATTERY}${ON_SENSE}log\n${AT_BATTERY}`);
    expect(lead.rule('meter-proven-again')).toBe('missed');
  });
  it('takes an open coil for a surprise, and no switch at rest', () => {
    const coil = `${BATTERY}part plug\nmeter ohms\nlead meter-red to unit-1\nlead meter-black to unit-2\nwait steady\nlog`;
    expect(bench().fault('winding-open').does(`accept\n${coil}`).rule('meter-proven-again')).toBe('missed');
    expect(worked(coil).rule('meter-proven-again')).toBe('no-occasion');
    expect(worked(`${BATTERY}${SWITCH_OHMS}log`).rule('meter-proven-again')).toBe('no-occasion');
  });
  it('has no occasion where the circuit reads what it should, or vacuum closes the switch', () => {
    expect(worked(`${BATTERY}${ON_SENSE}log`).rule('meter-proven-again')).toBe('no-occasion');
    const drawn = `${BATTERY}${ON_SENSE}${OPEN_UP}${CAP}${PUMP}stroke full\nwait steady\nlog`;
    expect(worked(drawn).rule('meter-proven-again')).toBe('no-occasion');
  });
});

describe("the leads' own resistance", () => {
  const AT_TIPS = 'lead meter-red to meter-black-tip\nwait steady\n';
  const TOGETHER = `meter ohms\n${AT_TIPS}`;
  const ON_WIRE =
    'part plug\nlead meter-red to harness-2\nlead meter-black to ground-splice\nwait steady\nlog\n';
  it('is written down before a low reading', () => {
    expect(worked(`${TOGETHER}log\nlift meter-red\n${ON_WIRE}`).rule('leads-noted')).toBe('kept');
  });
  it('may be taken as zero instead', () => {
    expect(worked(`${TOGETHER}relative on\nlift meter-red\n${ON_WIRE}`).rule('leads-noted')).toBe('kept');
  });
  it('is missed when it was only looked at, or noted after', () => {
    expect(worked(`${TOGETHER}lift meter-red\n${ON_WIRE}`).rule('leads-noted')).toBe('missed');
    expect(worked(`meter ohms\n${ON_WIRE}lift meter-black\n${AT_TIPS}log`).rule('leads-noted')).toBe(
      'missed',
    );
  });
  it('has no occasion on high ohms, nor in volts', () => {
    const coil =
      'part plug\nmeter ohms\nlead meter-red to unit-1\nlead meter-black to unit-2\nwait steady\nlog\n';
    expect(worked(coil).rule('leads-noted')).toBe('no-occasion');
    expect(worked(`${BATTERY}`).rule('leads-noted')).toBe('no-occasion');
  });
});
