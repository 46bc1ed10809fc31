import { describe, expect, test } from 'vitest';
import { AirBench } from './AirBench.ts';

/** Air steps taken while something is done. */
function steps(bench: AirBench, work: () => void): number {
  const { air } = bench.world;
  const step = air.step.bind(air);
  let count = 0;
  air.step = (h) => {
    count++;
    return step(h);
  };
  work();
  air.step = step;
  return count;
}

describe('air costs what happens in it', () => {
  test('a quarter of an hour in which nothing moves takes three steps at the most, gauges read all the while', () => {
    const bench = new AirBench().wait(1);
    expect(steps(bench, () => bench.wait(900))).toBeLessThanOrEqual(3);
    const held = new AirBench().pumpOn().drawTo(15).wait(10);
    expect(steps(held, () => held.wait(900))).toBeLessThanOrEqual(3);
    expect(held.inHg).toBeGreaterThan(14.9);
  });

  test('a leak-down of two minutes takes fewer than 90 steps, and is followed in between', () => {
    const bench = new AirBench([{ fault: 'capsule-torn', severity: 0 }]).pumpOn().stroke().stroke();
    let last = bench.inHg;
    let moves = 0;
    const taken = steps(bench, () => {
      for (let n = 0; n < 1200; n++) {
        const now = bench.wait(0.1).inHg;
        expect(now).toBeLessThanOrEqual(last + 0.05);
        if (now < last) moves++;
        last = now;
      }
    });
    expect(taken).toBeLessThan(90);
    expect(moves).toBeGreaterThan(60); // of some 75 in which it leaks down
    expect(last).toBeLessThan(0.01);
  });

  test('a stroke takes fewer than 120 steps, a pulse on the running truck fewer than 130', () => {
    const stroked = new AirBench().pumpOn();
    expect(steps(stroked, () => stroked.stroke().wait(1))).toBeLessThan(120);
    const pulsed = new AirBench().do({ kind: 'set-key', position: 'running' }).wait(5);
    pulsed.solenoid('pulse').wait(2);
    expect(steps(pulsed, () => pulsed.wait(10))).toBeLessThan(20 * 130);
  });

  test('reading the needle between two stops of the air agrees with stopping there', () => {
    const through = new AirBench([{ fault: 'capsule-torn', severity: 0 }]).pumpOn().stroke().stroke();
    const stopping = new AirBench([{ fault: 'capsule-torn', severity: 0 }]).pumpOn().stroke().stroke();
    for (let n = 0; n < 70; n++) {
      stopping.do({ kind: 'set-bleed', openness: (n % 2) + 0.5 > 1 ? 1 : 0.5 }); // far away; but it stops the air here
      expect(Math.abs(through.wait(0.13).inHg - stopping.wait(0.13).inHg)).toBeLessThan(0.05);
    }
  });
});
