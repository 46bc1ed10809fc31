import { describe, expect, it } from 'vitest';
import { BenchAnnouncer } from '../../src/app/BenchAnnouncer.ts';
import type { MeterDisplay, Observation } from '../../src/sim/world/Observation.ts';
import { WorldBench } from '../support/worldBench.ts';

// WCAG 2.2, 4.1.3: what changes is told without a move of the focus. How often is this program's own rule: a reading when it has
// settled, two seconds apart at least, and an event once.

interface Said {
  readonly s: number;
  readonly text: string;
}

const resting = new WorldBench().meter('volts-dc').world.observe();

function showing(
  digits: string,
  unit: MeterDisplay['unit'] = 'V',
  change: Partial<Observation['meter']> = {},
) {
  const value = Number.isNaN(Number(digits)) ? null : Number(digits);
  const display: MeterDisplay = { digits, unit, value, bar: 0, settled: true };
  return { ...resting, meter: { ...resting.meter, display, ...change } };
}

/** What is said over a stretch of time, looked at sixty times a second. */
function saidOver(seconds: number, at: (s: number) => Observation): Said[] {
  const announcer = new BenchAnnouncer();
  const said: Said[] = [];
  for (let frame = 0; frame <= seconds * 60; frame++) {
    const s = frame / 60;
    const text = announcer.hear(at(s), s, 'settled');
    if (text !== null) said.push({ s, text });
  }
  return said;
}

/** Real actions at their seconds of a real bench; gives what is told. */
function work(seconds: number, bench: WorldBench, each: (s: number) => void): Said[] {
  let before = -1;
  return saidOver(seconds, (s) => {
    const whole = Math.floor(s * 4) / 4;
    if (whole !== before) each(whole);
    before = whole;
    bench.wait(1 / 60);
    return bench.world.observe();
    // The lamp in the dash has its test when the key is turned on.
  }).filter(({ text }) => !text.includes('lamp in the dash'));
}

const gaps = (said: readonly Said[]): number[] => said.slice(1).map(({ s }, i) => s - (said[i]?.s ?? 0));

describe('readings that are told', () => {
  it('come once, in words, when they have settled', () => {
    const said = saidOver(8, (s) => showing(s < 3 ? (12 + s).toFixed(2) : '12.64'));
    expect(said.map(({ text }) => text)).toEqual(['Meter shows 12.64 volts']);
    expect(said[0]?.s).toBeGreaterThanOrEqual(3.5);
    expect(said[0]?.s).toBeLessThan(3.6);
  });

  it('are two seconds apart at least, however often the display changes', () => {
    for (const period of [0.7, 1, 1.3, 2.1, 3]) {
      const said = saidOver(40, (s) => showing(Math.floor(s / period) % 2 === 0 ? '9.02' : '0.04'));
      expect(said.length, `${period} s`).toBeGreaterThan(2);
      expect(Math.min(...gaps(said)), `${period} s`).toBeGreaterThanOrEqual(2);
    }
  });

  it('say over range, and no sign that a voice cannot say', () => {
    expect(saidOver(6, () => showing('OL', 'MΩ', { function: 'ohms' })).map(({ text }) => text)).toEqual([
      'Meter shows over range',
    ]);
    for (const [digits, unit] of [
      ['0.0L', 'V'],
      ['32.4', 'Ω'],
      ['1.02', 'MΩ'],
      ['4.71', 'kΩ'],
      ['381.2', 'mA'],
      ['-0.03', 'V'],
      ['12.4', 'mV'],
      ['----', 'V'],
    ] as const) {
      const texts = saidOver(2, () => showing(digits, unit)).map(({ text }) => text);
      expect(texts.join(), digits).not.toMatch(/[ΩVA]|OL|--|\bm\b/);
      expect(texts, digits).toHaveLength(1);
    }
  });

  it('tell continuity once as it comes and once as it goes', () => {
    const touch = (s: number) => s >= 3 && s < 7;
    const said = saidOver(12, (s) =>
      showing(touch(s) ? '0.2' : 'OL', 'Ω', { function: 'continuity', tone: touch(s) }),
    );
    expect(said.map(({ text }) => text)).toEqual([
      'Meter shows over range',
      'continuity, 0.2 ohms',
      'no continuity, over range',
    ]);
    // At once: it is an answer to a touch.
    expect(said[1]?.s).toBeCloseTo(3, 1);
    expect(said[2]?.s).toBeCloseTo(7, 1);
  });

  it('wait for the digits, which are slower than the tone', () => {
    const bench = new WorldBench().meter('continuity').wait(3);
    const said = work(9, bench, (s) => {
      if (s === 2) bench.lead('meter-red', 'meter-black-tip');
      if (s === 6) bench.do({ kind: 'lift-lead', end: 'meter-red' });
    });
    expect(said.map(({ text }) => text)).toEqual([
      'Meter shows over range',
      expect.stringMatching(/^continuity, 0\.\d ohms$/),
      'no continuity, over range',
    ]);
  });

  it('do not chatter with a contact that does, and tell how it came to rest', () => {
    const on = (s: number) => s >= 2 && (s >= 8 || Math.floor(s * 10) % 2 === 0);
    const said = saidOver(14, (s) =>
      showing(on(s) ? '0.2' : 'OL', 'Ω', { function: 'continuity', tone: on(s) }),
    );
    expect(Math.min(...gaps(said))).toBeGreaterThanOrEqual(1.4);
    expect(said.length).toBeLessThanOrEqual(6);
    expect(said.at(-1)?.text).toMatch(/0\.2 ohms/);
  });
});

describe('a bench at work', () => {
  it('is silent of every stroke while it is pumped, and tells what the sense line comes to', () => {
    const bench = new WorldBench().senseWatched().pumpOn();
    const said = work(20, bench, (s) => {
      if (s >= 4 && s < 12 && s % 1 === 0) bench.do({ kind: 'stroke', depth: 1 });
    });
    expect(said.map(({ text }) => text)).toEqual([
      expect.stringMatching(/^Meter shows [89]\.\d\d volts$/),
      expect.stringMatching(/^Meter shows (0\.\d\d volts|\d+\.\d+ millivolts)$/),
    ]);
  });

  it('tells each click that a hand asks for, and not every stroke of a pump that pulses', () => {
    const bench = new WorldBench().do({ kind: 'set-key', position: 'on' });
    const asked = work(12, bench, (s) => {
      if (s >= 1 && s < 10 && s % 1.5 === 0)
        bench.do({ kind: 'command-solenoid', command: s % 3 === 0 ? 'off' : 'on' });
    });
    const drew = asked.filter(({ text }) => text.includes('drew in'));
    const dropped = asked.filter(({ text }) => text.includes('dropped back'));
    expect([drew.length, dropped.length]).toEqual([3, 3]);

    const pulsing = new WorldBench().do({ kind: 'set-key', position: 'on' });
    const said = work(30, pulsing, (s) => {
      if (s === 1) pulsing.do({ kind: 'command-solenoid', command: 'pulse' });
    });
    expect(said.length).toBeGreaterThanOrEqual(2);
    expect(said.length).toBeLessThanOrEqual(4);
    expect(said.every(({ s }) => s < 4)).toBe(true);
  });

  it('tells an event once', () => {
    const melted = { id: 1, tick: 0 as Observation['tick'], kind: 'fuse-pop', at: 'jumper' } as const;
    const said = saidOver(10, (s) => ({ ...resting, happenings: s < 2 ? [] : [melted] }));
    expect(said.filter(({ text }) => text.includes('A fuse melted.'))).toHaveLength(1);
  });
});
