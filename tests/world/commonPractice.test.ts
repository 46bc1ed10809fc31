import { describe, expect, test } from 'vitest';
import { WorldBench } from '../support/worldBench.ts';

/** Workshop rules held against the world. Common practice, no source. */
describe('common practice, no source', () => {
  test('sense: about 9 V key on, about 0 V under 5 inHg with the air port capped, back on release, three times', () => {
    const bench = new WorldBench().pumpOn().senseWatched();
    for (let trial = 0; trial < 3; trial++) {
      expect(bench.reading()).toBeGreaterThan(8.4);
      expect(bench.reading()).toBeLessThan(9.4);
      bench.stroke(0.5);
      expect(bench.inHg).toBeLessThan(5);
      expect(Math.abs(bench.reading() ?? 99)).toBeLessThan(0.1);
      bench.release();
    }
    expect(bench.reading()).toBeGreaterThan(8.4);
  });

  test('no fall with the switch stuck open, at any vacuum', () => {
    const bench = new WorldBench([{ fault: 'switch-stuck-open', severity: 0 }]).pumpOn().senseWatched();
    for (let strokes = 0; strokes < 4; strokes++) bench.stroke();
    expect(bench.inHg).toBeGreaterThan(15);
    expect(bench.reading()).toBeGreaterThan(8.4);
  });

  test('sense stays low with the switch stuck closed, with no vacuum at all', () => {
    const bench = new WorldBench([{ fault: 'switch-stuck-closed', severity: 0 }]).senseWatched();
    expect(Math.abs(bench.reading() ?? 99)).toBeLessThan(0.1);
  });

  test('no vacuum with the cap left off', () => {
    const bench = new WorldBench().pumpOn('open').senseWatched();
    for (let strokes = 0; strokes < 6; strokes++) {
      bench.stroke();
      expect(bench.inHg).toBeLessThan(0.2);
    }
    expect(bench.reading()).toBeGreaterThan(8.4);
  });

  test('a sound unit holds 15 inHg for 20 s within 1 inHg; a torn capsule does not', () => {
    const loss = (faults: ConstructorParameters<typeof WorldBench>[0]): number => {
      const bench = new WorldBench(faults).pumpOn();
      for (let strokes = 0; strokes < 12 && bench.inHg < 15; strokes++) bench.stroke();
      const before = bench.inHg;
      return before - bench.wait(20).inHg;
    };
    expect(loss([])).toBeLessThan(1);
    expect(loss([{ fault: 'capsule-torn', severity: 0 }])).toBeGreaterThan(3);
  });

  test('a clamp left loose leaks; hand tight holds', () => {
    const bench = new WorldBench().pumpOn().do({ kind: 'clamp', port: 'air-port', setting: 'loose' });
    bench.stroke().stroke();
    expect(bench.wait(5).inHg).toBeLessThan(1);
  });

  test('good loaded drops, solenoid commanded on: ground side about 0.025 V (limit 0.10), feed side about 0.17 V (limit 0.30)', () => {
    const bench = new WorldBench().pin(1).pin(2).meter('volts-dc');
    bench.do({ kind: 'set-key', position: 'on' }, { kind: 'command-solenoid', command: 'on' });
    const ground = bench.lead('meter-red', 'cavity-2-back').lead('meter-black', 'battery-negative').reading();
    expect(ground).toBeGreaterThan(0.018);
    expect(ground).toBeLessThan(0.032);
    const feed = bench.lead('meter-red', 'battery-positive').lead('meter-black', 'cavity-1-back').reading();
    expect(feed).toBeGreaterThan(0.14);
    expect(feed).toBeLessThan(0.2);
  });

  test('the unplugged feed terminal shows some 5.5 to 5.9 V that vanish when the coil loads it', () => {
    const bench = new WorldBench()
      .do({ kind: 'part-plug' }, { kind: 'set-key', position: 'on' })
      .meter('volts-dc');
    const ghost = bench.lead('meter-red', 'harness-1').lead('meter-black', 'battery-negative').reading();
    expect(ghost).toBeGreaterThan(5.5);
    expect(ghost).toBeLessThan(5.9);
    bench.do({ kind: 'lift-lead', end: 'meter-red' }, { kind: 'mate-plug' }).pin(1);
    expect(bench.lead('meter-red', 'cavity-1-back').reading()).toBeLessThan(0.05);
  });

  test('10 Ω in the shared ground: sense low reads about 0.05 V solenoid off and about 3.4 V solenoid on', () => {
    const share = Math.log(10 / 1.5) / Math.log(45 / 1.5);
    const bench = new WorldBench([{ fault: 'ground-resistance', severity: share }])
      .pumpOn()
      .senseWatched()
      .stroke();
    expect(bench.reading()).toBeCloseTo(0.05, 1);
    bench.do({ kind: 'command-solenoid', command: 'on' });
    // The vent seat is shut and the vacuum stays, so the switch is still closed.
    const on = bench.reading() ?? 0;
    expect(on).toBeGreaterThan(2.6);
    expect(on).toBeLessThan(3.6);
  });
});
