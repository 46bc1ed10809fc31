import { describe, expect, it } from 'vitest';
import { chamberAir, chamberAirShort, describeInside, onPort } from '../../src/text/describeInside.ts';
import { describeInstruments } from '../../src/text/describeInstruments.ts';
import { WorldBench } from '../support/worldBench.ts';

describe('the inside in words', () => {
  const bench = new WorldBench();
  const inside = bench.world.inside();

  it('tells every moving part and both circuits of a sound unit at rest', () => {
    expect(describeInside(inside)).toBe(
      'Cut-away of the unit. Solenoid plunger at rest: the drive chamber is joined to the air passage. Pump diaphragm down on its spring. Inlet check shut. Outlet check shut. Vent seat open: the canister passage is joined to the air passage. Delay check shut: only the bleed joins it. Vacuum switch open. Coil current 0.00 A. Sense voltage 0.00 V.',
    );
  });

  it('tells parts that have moved', () => {
    const words = describeInside({
      ...inside,
      plunger: 'seated',
      ventSeat: 'shut',
      vacuumSwitch: 'closed',
      diaphragmTravel: 0.404,
      coilAmps: 0.3912,
    });
    for (const said of [
      'joined to engine vacuum',
      'the canister side is on its own',
      'sense is joined to ground',
      '40 % drawn up',
      '0.39 A',
    ])
      expect(words).toContain(said);
  });

  it('tells air below, at and above the room', () => {
    expect(chamberAir(50.8)).toBe('15.00 inHg (50.8 kPa)');
    expect(chamberAir(0.001)).toBe('as the room');
    expect(chamberAir(-3.5)).toBe('14.1 inH2O (3.50 kPa) above the room');
    expect([50.8, 2.5, 0, -3.5].map(chamberAirShort)).toEqual(['15.0', '0.74', '0', '+1.03']);
  });

  it('tells what is on a port', () => {
    const sites = bench.world.observe().sites;
    expect(onPort({ sites }, 'canister-port')).toBe('canister hose');
    expect(onPort({ sites: { ...sites, 'canister-port': null } }, 'canister-port')).toBe('open to the room');
  });
});

describe("the learner's instruments in words", () => {
  const said = (seen: Parameters<typeof describeInstruments>[0]): Readonly<Record<string, string>> =>
    Object.fromEntries(describeInstruments(seen).map(({ name, says }) => [name, says]));

  it('leave out what is not there to be read', () => {
    const words = said(new WorldBench().world.observe());
    expect(words).toEqual({
      Meter: 'meter off',
      Gauge: '0 inHg',
      Key: 'off',
      Plug: 'mated',
      'Solenoid command': 'off',
    });
  });

  it('say where the meter stands, and what the reader makes of sense', () => {
    const bench = new WorldBench();
    bench.world.apply({ kind: 'set-key', position: 'on' });
    bench.world.apply({ kind: 'set-meter', function: 'volts-dc' });
    bench.world.apply({ kind: 'place-lead', end: 'meter-red', point: 'battery-positive' });
    bench.world.apply({ kind: 'place-lead', end: 'meter-black', point: 'battery-negative' });
    bench.world.advanceTo(100_000);
    const words = said(bench.world.observe());
    expect(words['Meter']).toMatch(/^12\.\d\d V, battery positive to battery negative$/);
    expect(words['Reader says']).toBe('open');
  });
});
