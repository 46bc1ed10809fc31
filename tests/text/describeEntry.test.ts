import { describe, expect, it } from 'vitest';
import type { DriveCycle } from '../../src/sim/world/Observation.ts';
import { describeEntry } from '../../src/text/describeEntry.ts';
import { writtenByItself } from '../../src/text/entryOfItself.ts';
import type { LogEntry } from '../../src/training/sitting/LogEntry.ts';
import { bench, type TestBench } from '../support/bench.ts';

function entryOf(worked: TestBench, functionsKnown = true) {
  const entry = worked.sitting.view().log.at(-1);
  if (entry === undefined) throw new Error('nothing logged');
  return describeEntry(entry, functionsKnown);
}

const ON_SENSE = `
accept
pin in 3
meter volts-dc
lead meter-red to cavity-3-back
lead meter-black to battery-negative
key on
wait 2 s`;

describe('a log entry in words', () => {
  it('says what was measured between which points, under what conditions, and the number as displayed', () => {
    const worked = bench().does(`${ON_SENSE}\nlog`);
    const words = entryOf(worked);
    const { display } = worked.sees().meter;
    expect(words.what).toBe('Sense, cavity 3 to battery negative');
    expect(words.value).toBe(`${display.digits} V`);
    expect(words.conditions).toMatch(/^key on · reader: sense 8\.9\d V, open$/);
    expect(words.heard).toBeNull();
  });

  it('names no function before the service data was opened', () => {
    expect(entryOf(bench().does(`${ON_SENSE}\nlog`), false).what).toBe('Cavity 3 to battery negative');
  });

  it('tells the vacuum, the cap and its clamp', () => {
    const { conditions } = entryOf(
      bench().does(`${ON_SENSE}
take canister-hose off
fit plug-a on canister-hose-end
take air-hose off
fit cap-a on air-port
clamp air-port hand-tight
fit pump-hose on canister-port
clamp canister-port hand-tight
stroke full x3
wait 12 s
log`),
    );
    // The gauge's number stands beside the meter's, and is not told twice.
    expect(conditions).toMatch(/key on · reader: sense 0\.0\d V, closed · pump hose on canister port/);
    expect(conditions).not.toContain('inHg');
    expect(conditions).toContain('air port capped, hand tight');
    expect(conditions).toContain('pump hose on canister port, hand tight');
  });

  it('is of the reader where no other instrument is at work, and leaves out a gauge that is on nothing', () => {
    const words = entryOf(bench().does('accept\nkey on\nwait 2 s\nlog'));
    expect(words.what).toBe('Reader, sense at the controller');
    expect(words.value).toMatch(/^8\.9\d V, open$/);
    expect(words.conditions).toBe('key on');
    expect(entryOf(bench().does('accept\nwait 2 s\nlog')).what).toBe('Gauge, pump hose open');
  });

  it('counts the clicks of the last ten seconds, and says only them when nothing is measured', () => {
    const words = entryOf(
      bench().does(`accept
part plug
lead plain-a to battery-negative
lead plain-b to unit-2
lead jumper-far to unit-1
lead jumper-supply to battery-positive
jumper on
jumper off
jumper on
jumper off
log`),
    );
    expect(words.what).toBe('Listening at the unit');
    expect(words.value).toBe('click ×2 heard, unit fed by the jumper');
    expect(words.conditions).toContain('plug parted');
  });

  it.each([
    ['ohms', 'lead meter-red to meter-black-tip', ''],
    ['ohms', 'lead meter-black to meter-red-tip', ''],
    ['ohms', 'lead meter-red to meter-black-tip\nwait 3 s\nrelative on', 'relative'],
    ['continuity', 'lead meter-red to meter-black-tip', 'continuity'],
  ])('says the check of the leads as what it is, on %s', (which, leads, condition) => {
    const words = entryOf(bench().does(`accept\nmeter ${which}\n${leads}\nwait 3 s\nlog`));
    expect(words.what).toBe('Leads tip to tip');
    expect(words.value).toMatch(/^0\.\d+ Ω$/);
    expect(words.conditions).toContain(condition);
  });

  it('says what lies between the tips, and what lengthens a lead', () => {
    const clipped = 'accept\nmeter continuity\nlead plain-a to meter-red-tip\n';
    const alone = entryOf(bench().does(`${clipped}lead plain-b to meter-black-tip\nwait 3 s\nlog`));
    expect(alone.what).toBe("Ground lead between the meter's tips");
    const longer = entryOf(
      bench().does(
        `${clipped}lead plain-b to chassis-stud\nlead meter-black to ground-splice\nwait 3 s\nlog`,
      ),
    );
    expect(longer.what).toBe('Chassis stud through the ground lead to ground splice');
  });

  it('says of a reading that still moves that it is not settled', () => {
    const worked = bench().does(
      'accept\nlead meter-red to battery-positive\nlead meter-black to battery-negative',
    );
    worked.sitting.apply({ kind: 'set-meter', function: 'volts-dc' });
    worked.sitting.apply({ kind: 'log' });
    expect(entryOf(worked).value).toMatch(/, not settled$/);
    expect(entryOf(worked.does('wait 3 s\nlog')).value).toMatch(/^12\.\d+ V$/);
  });

  const ON_BATTERY =
    'accept\nmeter volts-dc\nlead meter-red to battery-positive\nlead meter-black to battery-negative\nwait 3 s\nlog';

  it('is of what moved since the last entry, with the other number beside it', () => {
    const worked = bench().does(`${ON_BATTERY}\nfit plug-a on pump-hose-end\nstroke full x4\nwait 3 s\nlog`);
    expect(entryOf(worked).what).toBe('Gauge, on the pump hose alone');
    expect(entryOf(worked).value).toMatch(/^2\d(\.5)? inHg$/);
    expect(entryOf(worked).conditions).toContain('meter, battery positive to battery negative');
    // A hold is read twice: what stays is the finding.
    expect(entryOf(worked.does('wait 60 s\nlog')).what).toBe('Gauge, on the pump hose alone');
    expect(entryOf(worked.does('release open\nwait 5 s\nlog')).value).toBe('0 inHg');
    expect(entryOf(worked.does('wait 2 s\nlog')).what).toBe('Battery positive to battery negative');
  });

  it('stays with the sense circuit, whose voltage is the finding even when it stays', () => {
    const words = entryOf(
      bench()
        .fault('switch-stuck-open')
        .does(
          `${ON_SENSE}\nlog
take canister-hose off
fit plug-a on canister-hose-end
fit cap-a on air-port
clamp air-port hand-tight
fit pump-hose on canister-port
clamp canister-port hand-tight
stroke full x2
wait 3 s
log`.replace('fit cap-a', 'take air-hose off\nfit cap-a'),
        ),
    );
    expect(words.what).toBe('Sense, cavity 3 to battery negative');
  });

  it('hears the clicks since the reading before, and no others', () => {
    const worked = bench().does(`${ON_BATTERY}\npart plug
lead plain-a to battery-negative
lead plain-b to unit-2
lead jumper-far to unit-1
lead jumper-supply to battery-positive
jumper on
jumper off
log`);
    expect(entryOf(worked)).toMatchObject({
      what: 'Listening at the unit',
      value: 'click heard, unit fed by the jumper',
    });
    expect(entryOf(worked.does('log')).heard).toBeNull();
  });

  it('says over range in words', () => {
    const words = entryOf(
      bench().does(`accept
part plug
meter ohms
lead meter-red to unit-3
lead meter-black to unit-2
wait 3 s
log`),
    );
    expect(words.value).toBe('OL, over range');
    expect(words.conditions).toContain('ohms');
  });

  it('reads the gauge when no lead measures', () => {
    const worked = bench().does('accept\nfit plug-a on pump-hose-end\nstroke full x2\nwait 2 s\nlog');
    const words = entryOf(worked);
    expect(words.what).toBe('Gauge, on the pump hose alone');
    const inHg = worked.sees().gauge.needleKPa / 3.386389;
    expect(inHg).toBeGreaterThan(5);
    // A needle is read, not told: to half a division.
    expect(words.value).toBe(`${Math.round(inHg * 2) / 2} inHg`);
  });

  it('tells what the meter was set to besides its function', () => {
    const words = entryOf(bench().does(`${ON_SENSE}\nrange 2\nextremes low\nwait 3 s\nlog`));
    expect(words.conditions).toMatch(/^range .* held · lowest of the recording · key on/);
  });

  it('tells the lamp, with the meter beside it and alone', () => {
    const lamp = 'lead lamp-clip to battery-negative\nlead lamp-tip to battery-positive\nwait 2 s\nlog';
    expect(entryOf(bench().does(`accept\n${lamp}`))).toMatchObject({
      what: 'Test lamp, battery negative to battery positive',
      value: 'bright',
    });
    expect(entryOf(bench().does(`${ON_SENSE}\n${lamp}`)).conditions).toContain(
      'test lamp, battery negative to battery positive, bright',
    );
  });

  it('reads the water manometer where it stands', () => {
    const words = entryOf(
      bench().does(`accept
take canister-hose off
fit plug-a on canister-hose-end
take air-hose off
fit cap-a on air-port
clamp air-port hand-tight
fit jar-hose on canister-port
clamp canister-port hand-tight
fit manometer-hose on jar-tee-a
fit pump-hose on jar-tee-b
stroke full
wait steady
log`),
    );
    expect(words.what).toBe('Water manometer on jar, tee A');
    expect(words.value).toMatch(/^[56]\.\d inH2O$/);
  });

  it('tells where smoke comes out', () => {
    const words = entryOf(
      bench().does('accept\nfit smoke-hose on jar-tee-a\nsmoke inert 3 kPa\nwait 20 s\nlog'),
    );
    expect(words.what).toBe('Smoke test');
    expect(words.value).toMatch(/^smoke at /);
  });

  it('tells of a drive what its cycles came to, and of the last that ran its numbers', () => {
    const cycle = (outcome: DriveCycle['outcome'], strokes: number): DriveCycle => ({
      miles: 30,
      outcome,
      codes: [],
      strokes,
      tripSeconds: null,
      holdSeconds: null,
      limits: { tripSeconds: 120, smallSeconds: 12, passSeconds: 45 },
      lamp: false,
    });
    const cycles = [cycle('passed', 49), cycle('passed', 51), cycle('not-run', 0)];
    const written = writtenByItself({
      about: 'drive',
      seen: { lastDrive: { id: 1, miles: 90, cycles } },
    } as unknown as LogEntry);
    expect(written?.value).toBe('monitor passed ×2, monitor did not run ×1, 51 strokes');
  });

  it('tells codes, findings and drives that wrote themselves down', () => {
    const worked = bench()
      .fault('winding-open')
      .does('accept\nlook filter\ndrive 2\nkey on\nread codes\npart plug\ndrag 3');
    const [look, drive, codes, drag] = worked.sitting.view().log.map((entry) => describeEntry(entry, true));
    expect(look).toMatchObject({ what: 'Looked at the air filter', value: 'nothing wrong to be seen' });
    expect(drive?.what).toMatch(/^Road test, 2 cycles, \d+ miles$/);
    expect(drive?.value).toMatch(/circuit fault.*P2400/);
    expect(codes?.value).toContain('P2400 stored');
    expect(drag).toMatchObject({ what: 'Drag gauge in terminal 3', value: 'the terminal grips the gauge' });
  });

  it('says when it was measured on the known-good unit', () => {
    const words = entryOf(
      bench().does(
        'accept\npart plug\ntake canister-hose off\ntake air-hose off\ntake engine-hose off\nswap known-good\nlog',
      ),
    );
    expect(words.conditions).toMatch(/^on the known-good unit/);
  });
});
