import { describe, expect, it } from 'vitest';
import { secondsToTicks } from '../../../src/base/ticks.ts';
import { FLAP_ACTUATOR } from '../../../src/sim/rigs/flapActuator/flapActuator.ts';
import { createWorld, type World } from '../../../src/sim/world/World.ts';
import type { FaultChoice } from '../../../src/sim/world/WorldPort.ts';

const ROOM_PA = 101_325;
const { parameters: P } = FLAP_ACTUATOR;

function flap(faults: readonly FaultChoice[] = [], seed = 'physics'): World {
  return createWorld({ rig: 'flap-actuator', seed, faults, ambientC: 20, altitudeM: 0, fuelLevel: 0.5 });
}

function wait(world: World, seconds: number): void {
  world.advanceTo(world.tick + secondsToTicks(seconds));
}

/** Hand pump on the air port, which leads into the can while the solenoid rests. */
function pumpOnCan(world: World): World {
  for (const action of [
    { kind: 'take-off', item: 'air-hose' },
    { kind: 'fit', item: 'pump-hose', site: 'air-port' },
    { kind: 'clamp', port: 'air-port', setting: 'hand-tight' },
  ] as const)
    expect(world.apply(action).ok).toBe(true);
  return world;
}

function stroke(world: World, depth: number): void {
  world.apply({ kind: 'stroke', depth });
  wait(world, 1);
}

describe('the flap in the balance of its forces', () => {
  it('stands where pressure times area holds preload and spring, within tolerance: A·dp = F + k·x', () => {
    const world = pumpOnCan(flap());
    const seen: { readonly kPa: number; readonly travel: number }[] = [];
    for (let n = 0; n < 40; n++) {
      stroke(world, 0.2);
      const { canKPa, diaphragmTravel } = world.inside();
      if (diaphragmTravel > 0.05 && diaphragmTravel < 0.95)
        seen.push({ kPa: canKPa, travel: diaphragmTravel });
    }
    expect(seen.length).toBeGreaterThan(4);
    for (const { kPa, travel } of seen) {
      const newton = kPa * 1000 * P.diaphragmM2;
      const held = P.diaphragmPreloadN + P.diaphragmNPerM * P.diaphragmTravelM * travel;
      // Preload and rate to 3 % each, travel to 2 %.
      expect(Math.abs(newton / held - 1)).toBeLessThan(0.06);
    }
    // And along one actuator the line is straight: slopes between points agree.
    const slope = (i: number, j: number): number => {
      const [a, b] = [seen[i], seen[j]];
      return a && b ? (b.kPa - a.kPa) / (b.travel - a.travel) : Number.NaN;
    };
    const whole = slope(0, seen.length - 1);
    for (let i = 1; i < seen.length; i++) expect(slope(0, i) / whole).toBeCloseTo(1, 3);
  });

  it('a can is drawn by the pump as Boyle has it: isothermal volumes of pump, hose and can', () => {
    // Before the flap lifts the volumes stand still: p2 = p1·V/(V + stroke), the cylinder shut off again each time.
    const world = pumpOnCan(flap());
    wait(world, 1);
    const pressures: number[] = [ROOM_PA];
    for (let n = 0; n < 2; n++) {
      stroke(world, 1);
      if (world.inside().diaphragmTravel > 0) break;
      pressures.push(ROOM_PA - world.inside().canKPa * 1000);
    }
    expect(pressures.length).toBeGreaterThan(1);
    const volume = P.pumpHoseM3 + P.driveChamberM3 + P.airPassageM3;
    const expected = (ROOM_PA * volume) / (volume + P.pumpStrokeM3);
    // Volumes to 5 %, and the check valve's cracking pressure is left.
    expect(Math.abs((pressures[1] as number) / expected - 1)).toBeLessThan(0.012);
  });

  it('fills through its valve as a choked bore fills a vessel: dp/dt = C·rho0·p0·R·T/V (ISO 6358)', () => {
    // Drawn far past full travel, then let go to the room through the 1 mm valve alone: choked below 52.8 % of the room.
    const world = flap();
    for (const action of [
      { kind: 'take-off', item: 'engine-hose' },
      { kind: 'fit', item: 'pump-hose', site: 'engine-port' },
      { kind: 'clamp', port: 'engine-port', setting: 'hand-tight' },
      { kind: 'take-off', item: 'air-hose' },
      { kind: 'set-key', position: 'on' },
      { kind: 'command-solenoid', command: 'on' },
    ] as const)
      expect(world.apply(action).ok).toBe(true);
    wait(world, 0.5);
    for (let n = 0; n < 14; n++) stroke(world, 1);
    const before = world.inside();
    expect(before.canKPa).toBeGreaterThan(0.55 * 101.325);
    expect(before.diaphragmTravel).toBeCloseTo(1, 6);
    world.apply({ kind: 'command-solenoid', command: 'off' });
    // Let the plunger come off its seat, then time 40 ms of filling while it is choked and the diaphragm at its stop.
    while (world.inside().plunger !== 'rest') wait(world, 0.002);
    const from = world.inside().canKPa;
    wait(world, 0.04);
    const rose = (from - world.inside().canKPa) * 1000;
    const area = (Math.PI / 4) * P.solenoidValveM * P.solenoidValveM;
    // Flow of a choked sharp bore: Cd·A·p0·sqrt(k/(R·T))·(2/(k+1))^((k+1)/(2(k-1))); the program takes its C for the same bore.
    const [k, gas, kelvin, discharge] = [1.4, 287, 293.15, 0.62];
    const perArea = ROOM_PA * Math.sqrt(k / (gas * kelvin)) * (2 / (k + 1)) ** ((k + 1) / (2 * (k - 1)));
    const kgPerS = discharge * area * perArea;
    const volume = P.driveChamberM3 - P.diaphragmM2 * P.diaphragmTravelM + P.airPassageM3 * 0;
    const expected = (kgPerS * gas * kelvin * 0.04) / volume;
    expect(rose / expected).toBeGreaterThan(0.85);
    expect(rose / expected).toBeLessThan(1.15);
  });
});

describe('the position switch', () => {
  it('closes near the end of the lever and opens again on the way back, and bounces as any contact', () => {
    const world = pumpOnCan(flap());
    expect(world.inside().vacuumSwitch).toBe('open');
    let closedAt = 0;
    for (let n = 0; n < 60 && closedAt === 0; n++) {
      stroke(world, 0.1);
      if (world.inside().vacuumSwitch === 'closed') closedAt = world.inside().diaphragmTravel;
    }
    expect(closedAt).toBeGreaterThan(0.9);
    world.apply({ kind: 'release', open: true });
    wait(world, 1);
    expect(world.inside().vacuumSwitch).toBe('open');
    expect(world.inside().diaphragmTravel).toBe(0);
  });

  it('a broken return spring leaves the flap hanging drawn, and the switch closed at rest', () => {
    const world = flap([{ fault: 'lever-spring-broken', severity: 0 }]);
    wait(world, 0.5);
    expect(world.inside()).toMatchObject({ diaphragmTravel: 1, vacuumSwitch: 'closed' });
  });

  it('a lever that stops short never comes to its switch, however much vacuum draws it', () => {
    const world = pumpOnCan(flap([{ fault: 'lever-binding', severity: 0.5 }]));
    for (let n = 0; n < 12; n++) stroke(world, 1);
    expect(world.inside().canKPa).toBeGreaterThan(50);
    expect(world.inside().diaphragmTravel).toBeCloseTo(0.515, 6);
    expect(world.inside().vacuumSwitch).toBe('open');
  });

  it('a torn diaphragm leaks into the can from the room', () => {
    const world = pumpOnCan(flap([{ fault: 'diaphragm-torn', severity: 0 }]));
    for (let n = 0; n < 6; n++) stroke(world, 1);
    const drawn = world.inside().canKPa;
    wait(world, 10);
    expect(world.inside().canKPa).toBeLessThan(drawn / 2);
  });
});
