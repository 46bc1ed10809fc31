import { describe, expect, it } from 'vitest';
import { describeEntry } from '../../src/text/describeEntry.ts';
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
    expect(words.conditions).toBe('key on · no vacuum');
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
    expect(conditions).toMatch(/key on · 1[45]\.\d inHg/);
    expect(conditions).toContain('air port capped, hand tight');
    expect(conditions).toContain('pump hose on canister port, hand tight');
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
    expect(words.value).toBe('click ×2 heard');
    expect(words.conditions).toContain('plug parted');
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
    expect(words.value).toBe(`${inHg.toFixed(1)} inHg`);
  });
});
