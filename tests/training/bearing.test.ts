import { describe, expect, it } from 'vitest';
import { bench, type TestBench } from '../support/bench.ts';

/** Points for a right verdict that cites the last entry: 25 when it bears on the item, a fifth of them when it does not. */
function verdictPoints(worked: TestBench, item: string): number | undefined {
  const entry = worked.sitting.view().log.at(-1)?.id;
  const { score, verdict } = worked.does(`verdict ${item} cites ${entry}\nclose`).debrief();
  expect(verdict.right).toBe(true);
  return score.parts.find(({ part }) => part === 'verdict')?.points;
}

const JAR = `accept
pin in 3
meter volts-dc
lead meter-red to cavity-3-back
lead meter-black to battery-negative
key on
take canister-hose off
fit plug-a on canister-hose-end
take air-hose off
fit cap-a on air-port
clamp air-port hand-tight
fit jar-hose on canister-port
clamp canister-port hand-tight
fit manometer-hose on jar-tee-a
fit pump-hose on jar-tee-b
`;

describe('what bears on a verdict', () => {
  it('a dirty filter that was seen, not a clean hose', () => {
    const dirty = (place: string) => bench().fault('filter-clogged').does(`accept\nlook ${place}`);
    expect(verdictPoints(dirty('filter'), 'filter')).toBe(25);
    expect(verdictPoints(dirty('engine-hose'), 'filter')).toBe(5);
  });

  it('a slack terminal that was felt', () => {
    const felt = (cavity: number) =>
      bench().fault('terminal-2-spread').does(`accept\npart plug\ndrag ${cavity}`);
    expect(verdictPoints(felt(2), 'plug')).toBe(25);
    expect(verdictPoints(felt(1), 'plug')).toBe(5);
  });

  it('smoke where it comes out', () => {
    const smoked = (wait: string) =>
      bench()
        .fault('filler-cap-leaking', 1)
        .does(
          `accept\ntake canister-hose off\nfit smoke-hose on canister-hose-end\nsmoke inert 3 kPa\nwait ${wait}\nlog`,
        );
    expect(verdictPoints(smoked('8 min'), 'filler-cap')).toBe(25);
  });

  it('what a drive showed', () => {
    expect(verdictPoints(bench().fault('filler-cap-leaking', 1).does('accept\ndrive 4'), 'filler-cap')).toBe(
      25,
    );
  });

  it('the sense voltage at a column where a good switch is still closed, not the same reading at rest', () => {
    const worked = bench().fault('differential-collapsed').does(JAR);
    const sense = () => worked.sees().reader.senseVolts ?? 0;
    for (let i = 0; i < 60 && sense() > 2; i++) worked.does('stroke 0.08\nwait 1 s');
    expect(sense()).toBeLessThan(2);
    worked.does('bleed 0.3');
    for (let i = 0; i < 200 && sense() < 6; i++) worked.does('wait 0.2 s');
    worked.does('bleed 0\nwait steady\nlog');
    // Reset is 7.6 ± 0.8 inH2O on a good unit (this rig's service data): 2.2 kPa is above it.
    expect(worked.sees().manometer.kPa).toBeGreaterThan(2.2);
    expect(verdictPoints(worked, 'unit')).toBe(25);
    const atRest = bench().fault('differential-collapsed').does(`${JAR}wait steady\nlog`);
    expect(verdictPoints(atRest, 'unit')).toBe(5);
  });
});
