import { describe, expect, test } from 'vitest';
import { Clamp } from '../../src/sim/components/Clamp.ts';
import { CurrentLimiter } from '../../src/sim/components/CurrentLimiter.ts';
import { Filament } from '../../src/sim/components/Filament.ts';
import { Fuse, QUICK_ELEMENT } from '../../src/sim/components/Fuse.ts';
import { copperFusing } from '../../src/sim/components/fusingCurrent.ts';
import { LimitedSource } from '../../src/sim/components/LimitedSource.ts';
import { Resistor } from '../../src/sim/components/Resistor.ts';
import { VoltageSource } from '../../src/sim/components/VoltageSource.ts';
import { Circuit } from '../../src/sim/network/Circuit.ts';
import type { Part } from '../../src/sim/network/Part.ts';
import { StateReader } from '../../src/sim/network/StateReader.ts';
import { internalOhms, openCircuitVolts } from '../../src/sim/rigs/batteryCharge.ts';

const LAMP = { volts: 12.66, amps: 0.25, joulesPerKelvin: 7.5e-5 };

/** A part across a source. Terminal a is on the source, b on the reference. */
function across<P extends Part>(volts: number, ohms: number, make: (node: number) => P) {
  const circuit = new Circuit();
  const node = circuit.node('node');
  const source = circuit.add(new VoltageSource(node, 0, volts, ohms));
  const part = circuit.add(make(node));
  circuit.compile();
  const run = (seconds: number, h: number): void => {
    for (let i = Math.round(seconds / h); i > 0; i--) expect(circuit.step(h).converged).toBe(true);
  };
  return { circuit, part, source, run, volts: () => circuit.voltage(node) };
}

describe('filament', () => {
  test('cold it is a tenth of its hot resistance; at rated volts it settles at rated current and 2293 K', () => {
    const { part, run } = across(12.66, 1e-3, (n) => new Filament(n, 0, LAMP));
    expect(part.coldOhms).toBeCloseTo(12.66 / 0.25 / 10, 9);
    run(1, 1e-4);
    expect(Math.abs(part.amps / 0.25 - 1)).toBeLessThan(1e-3);
    expect(Math.abs(part.kelvin - 2293.15)).toBeLessThan(1);
    expect(part.glow).toBeCloseTo(1, 2);
  });

  test('settles where what it takes equals what it gives off, at any voltage (closed form of the heat balance)', () => {
    // K and G from the rating: 90 % of 3.165 W over 2293.15⁴ − 293.15⁴, 10 % over 2000 K.
    const radiates = (0.9 * 3.165) / (2293.15 ** 4 - 293.15 ** 4);
    const conducts = (0.1 * 3.165) / 2000;
    for (const volts of [0.5, 2, 6, 9, 14.2]) {
      const { part, run } = across(volts, 1e-3, (n) => new Filament(n, 0, LAMP));
      run(5, 1e-3);
      const watts = part.amps * part.amps * part.ohms;
      const lost = radiates * (part.kelvin ** 4 - 293.15 ** 4) + conducts * (part.kelvin - 293.15);
      expect(Math.abs(watts / lost - 1), `${volts} V`).toBeLessThan(1e-6);
      expect(part.ohms).toBeCloseTo(part.coldOhms * (1 + 0.0045 * (part.kelvin - 293.15)), 6);
    }
  });

  test('current goes with about the root of the voltage, as lamps do (exponent 0.5 to 0.6, makers’ rule from memory)', () => {
    const at = (volts: number): number => {
      const { part, run } = across(volts, 1e-3, (n) => new Filament(n, 0, LAMP));
      run(2, 1e-3);
      return part.amps;
    };
    const exponent = Math.log(at(14) / at(11)) / Math.log(14 / 11);
    expect(exponent).toBeGreaterThan(0.5);
    expect(exponent).toBeLessThan(0.65);
  });

  test('heats as its capacity says while little is lost yet: C ΔT is the energy put in', () => {
    const { part, run, circuit } = across(12.66, 1e-3, (n) => new Filament(n, 0, LAMP));
    let joules = 0;
    for (let i = 0; i < 200; i++) {
      const before = part.ohms;
      circuit.step(5e-6);
      joules += part.amps * part.amps * before * 5e-6;
    }
    run(0, 1);
    expect(part.kelvin - 293.15).toBeGreaterThan(200);
    expect(Math.abs((7.5e-5 * (part.kelvin - 293.15)) / joules - 1)).toBeLessThan(0.01);
  });

  test('an endless step finds the same rest; a saved one goes on where it was', () => {
    const { part, circuit, run, source } = across(9, 1e-3, (n) => new Filament(n, 0, LAMP));
    // The resistance of one round is that of the last temperature, so it takes some.
    for (let round = 0; round < 20; round++) expect(circuit.solveDc().converged).toBe(true);
    const settled = part.kelvin;
    const slow = across(9, 1e-3, (n) => new Filament(n, 0, LAMP));
    slow.run(3, 1e-3);
    expect(Math.abs(slow.part.kelvin - settled)).toBeLessThan(0.1);
    const out: number[] = [];
    part.save(out);
    const copy = new Filament(1, 0, LAMP);
    copy.load(new StateReader(out));
    expect(copy.kelvin).toBe(part.kelvin);
    source.volts = 3;
    run(0.01, 1e-3);
    expect(part.kelvin).toBeLessThan(copy.kelvin - 100);
  });
});

describe('quick-acting fuse of 600 mA (gates of IEC 60127-2, standard sheet 1, from memory)', () => {
  const opens = (share: number, limit: number): number => {
    const amps = 0.6 * share;
    const { part, circuit } = across(1e4, 1e4 / amps - 0.4, (n) => new Fuse(n, 0, 0.4, 0.6, QUICK_ELEMENT));
    for (let i = 1; i * 1e-4 <= limit; i++) {
      circuit.step(1e-4);
      if (part.melted) return i * 1e-4;
    }
    return Number.POSITIVE_INFINITY;
  };

  test.each([
    { share: 2.1, least: 0, most: 1800 },
    { share: 2.75, least: 0.01, most: 2 },
    { share: 4, least: 0.003, most: 0.3 },
    { share: 10, least: 0, most: 0.02 },
  ])('$share times rating: $least to $most s', ({ share, least, most }) => {
    const seconds = opens(share, Math.min(most, 5) + 0.01);
    expect(seconds).toBeGreaterThanOrEqual(least);
    expect(seconds).toBeLessThanOrEqual(most);
  });

  test('by the closed form t = τ ln(r² / (r² − m)): 41 ms at 2.75 times rating', () => {
    const exact = 0.1 * Math.log(2.75 ** 2 / (2.75 ** 2 - 2.56));
    expect(Math.abs(opens(2.75, 1) / exact - 1)).toBeLessThan(0.01);
  });

  test('bears one and a half times rating for ever, and says when it has settled', () => {
    expect(opens(1.5, 3)).toBe(Number.POSITIVE_INFINITY);
    const { part, run } = across(1e4, 1e4 / 0.9, (n) => new Fuse(n, 0, 0.4, 0.6, QUICK_ELEMENT));
    run(0.01, 1e-3);
    expect(part.settled).toBe(false);
    run(2, 1e-3);
    expect(part.settled).toBe(true);
  });

  test('takes a new resistance in service, and is not mended by it once melted', () => {
    const { part, run } = across(1, 1, (n) => new Fuse(n, 0, 0.4, 0.6, QUICK_ELEMENT));
    part.coldOhms = 1;
    run(1e-3, 1e-3);
    expect(part.amps).toBeCloseTo(0.5, 9);
    part.melted = true;
    part.coldOhms = 0.4;
    run(1e-3, 1e-3);
    expect(part.amps).toBeLessThan(1e-8);
  });
});

describe('fusing of a copper wire', () => {
  test('Preece: about 80 A for 1 mm diameter, 57 A for 0.5 mm²', () => {
    expect(copperFusing(Math.PI / 4).ratedAmps).toBeCloseTo(80, 6);
    expect(Math.abs(copperFusing(0.5).ratedAmps - 57)).toBeLessThan(0.5);
  });

  test('Onderdonk: 1 s fuses 0.5 mm² at about 145 A from 20 °C (I = A √(log₁₀(1 + ΔT/(234+T))/33t), by hand)', () => {
    const { ratedAmps, element } = copperFusing(0.5);
    const integral = element.timeConstant * element.meltingWarmth * ratedAmps * ratedAmps;
    expect(Math.abs(Math.sqrt(integral) - 145)).toBeLessThan(1.5);
  });
});

describe('bench supply', () => {
  const loaded = (ohms: number) => {
    const circuit = new Circuit();
    const [plus, minus] = [circuit.node('plus'), circuit.node('minus')];
    const supply = circuit.add(new LimitedSource(plus, minus, 12, 0.02, 3));
    circuit.add(new Resistor(plus, minus, ohms));
    circuit.add(new Resistor(minus, 0, 1e7));
    circuit.compile();
    supply.on = true;
    expect(circuit.step(1e-4).converged).toBe(true);
    return supply;
  };

  test.each([
    [1000, 12 / 1000.02],
    [12, 12 / 12.02],
    [4, 12 / 4.02],
  ])('%s Ω: it holds its volts behind 20 mΩ', (ohms, amps) => {
    const supply = loaded(ohms);
    expect(Math.abs(supply.deliveredAmps / amps - 1)).toBeLessThan(1e-6);
    expect(supply.limiting).toBe(false);
  });

  test.each([3.9, 1, 0.001])('%s Ω: it holds 3 A', (ohms) => {
    const supply = loaded(ohms);
    expect(Math.abs(supply.deliveredAmps - 3)).toBeLessThan(2e-3);
    expect(Math.abs(supply.volts - 3 * ohms)).toBeLessThan(2e-3 * ohms);
    expect(supply.limiting).toBe(true);
  });

  test('held up from outside it takes nothing back; switched off it gives nothing', () => {
    const { part, run } = across(14.2, 0.01, (n) => new LimitedSource(n, 0, 12, 0.02, 3));
    part.on = true;
    run(1e-4, 1e-4);
    expect(Math.abs(part.deliveredAmps)).toBeLessThan(1e-5);
    part.on = false;
    run(1e-4, 1e-4);
    expect(part.deliveredAmps).toBe(0);
    const out: number[] = [];
    part.save(out);
    const copy = new LimitedSource(1, 0, 12, 0.02, 3);
    copy.load(new StateReader(out));
    expect(copy.on).toBe(false);
    expect(copy.volts).toBe(part.volts);
  });
});

describe('values taken over in service', () => {
  test('a limiter’s resistance and limit, a clamp’s threshold', () => {
    const { part, run } = across(12, 1, (n) => new CurrentLimiter(n, 0, 1, 3));
    run(1e-4, 1e-4);
    expect(part.limiting).toBe(true);
    part.limitAmps = 100;
    run(1e-4, 1e-4);
    expect(part.amps).toBeCloseTo(6, 6);
    part.ohms = 5;
    run(1e-4, 1e-4);
    expect(part.amps).toBeCloseTo(2, 6);
    const clamp = across(12, 1, (n) => new Clamp(n, 0, 20, 1));
    clamp.run(1e-4, 1e-4);
    expect(clamp.part.amps).toBe(0);
    clamp.part.volts = 4;
    clamp.run(1e-4, 1e-4);
    expect(clamp.part.amps).toBeCloseTo(4, 6);
  });
});

describe('battery by its charge', () => {
  test('stands at the rows of the table, falls all the way between them, and grows softer', () => {
    const rows = [12.66, 12.46, 12.25, 12.07, 11.9];
    [1, 0.75, 0.5, 0.25, 0].forEach((charge, i) => {
      expect(openCircuitVolts(12.66, charge)).toBeCloseTo(rows[i] as number, 9);
    });
    for (let percent = 1; percent <= 100; percent++) {
      const [less, more] = [(percent - 1) / 100, percent / 100];
      expect(openCircuitVolts(12.66, more)).toBeGreaterThan(openCircuitVolts(12.66, less));
      expect(internalOhms(0.008, more)).toBeLessThan(internalOhms(0.008, less));
    }
    expect(internalOhms(0.008, 1)).toBe(0.008);
    expect(internalOhms(0.008, 0)).toBeCloseTo(0.024, 12);
  });
});
