import { readFileSync, writeFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { type CodeRow, codeTable, type Degree, DRIVES } from '../../src/cli/codeTable.ts';
import { TOOL_ITEMS } from '../../src/sim/devices/items.ts';
import { isRootCause, PUMP_FAULTS } from '../../src/sim/faults/catalogue.ts';
import { cliCodes } from '../../src/text/cliCodes.ts';

/**
 * What every fault of the catalogue makes the controller notice. The file pins the whole table as it is printed: a row that moves is a
 * change of version and wants its reason in the commit; then renew the file with GOLDEN=renew. The tests below it say by hand what
 * each family must give, and hold whatever the file says.
 */
const file = new URL('./codes.txt', import.meta.url);

let rows: readonly CodeRow[] = [];
beforeAll(() => {
  rows = codeTable();
  if (process.env.GOLDEN === 'renew') writeFileSync(file, printed());
});

function printed(): string {
  return `${cliCodes.table(rows, DRIVES).join('\n')}\n`;
}

function row(fault: string, degree: Degree): CodeRow {
  const found = rows.find((one) => one.fault === fault && one.degree === degree);
  if (found === undefined) throw new Error(`no row for ${fault} ${degree}`);
  return found;
}

test('the table is the one that was agreed', () => {
  expect(printed()).toBe(readFileSync(file, 'utf8'));
});

test('every fault of the catalogue is in it', () => {
  expect(new Set(rows.map(({ fault }) => fault))).toEqual(new Set(PUMP_FAULTS.map(({ id }) => id)));
});

describe('what each family must give', () => {
  // The left column: what the controller sees. Which code stands for it: SAE J2012 / ISO 15031-6 texts.
  test.each([
    // Feed: open, low when commanded on, high when commanded off.
    ['winding-open', 'only', 'P2400'],
    ['feed-open', 'only', 'P2400'],
    ['ground-open', 'only', 'P2400'],
    ['feed-to-ground', 'worst', 'P2401'],
    ['fuse-blown', 'only', 'P2401'],
    ['driver-dead', 'only', 'P2401'],
    ['feed-to-battery', 'only', 'P2402'],
    ['driver-stuck-on', 'only', 'P2402'],
    // Sense: in between, closed with no vacuum, high.
    ['switch-resistance', 'worst', 'P2404'],
    ['ground-resistance', 'middle', 'P2404'],
    ['moisture-2-3', 'middle', 'P2404'],
    ['switch-stuck-closed', 'only', 'P2405'],
    ['sense-to-ground', 'mild', 'P2405'],
    ['sense-to-ground', 'worst', 'P2405'],
    ['pull-up-lost', 'only', 'P2405'],
    ['sense-to-battery', 'mild', 'P2406'],
    ['sense-to-battery', 'worst', 'P2406'],
    ['terminal-3-spread', 'worst', 'P2407'],
    // Never drawn down.
    ['switch-stuck-open', 'only', 'P0455'],
    ['sense-open', 'only', 'P0455'],
    ['plunger-stuck', 'only', 'P0455'],
    ['plunger-stuck-drawn', 'only', 'P0455'],
    ['vent-stuck-open', 'only', 'P0455'],
    ['trip-high', 'mild', 'P0455'],
    ['feed-resistance', 'worst', 'P0455'],
    ['canister-hose-off', 'only', 'P0455'],
    ['filler-cap-leaking', 'worst', 'P0455'],
    ['tank-seal-leaking', 'worst', 'P0455'],
    // Held too short.
    ['capsule-torn', 'middle', 'P0456'],
    ['capsule-torn', 'worst', 'P0442'],
    ['differential-collapsed', 'middle', 'P0456'],
    // Something else pulls vacuum; no reset after venting.
    ['purge-valve-passing', 'worst', 'P0441'],
    ['vent-stuck-shut', 'only', 'P0446'],
    ['vent-bleed-blocked', 'only', 'P0446'],
    ['air-hose-blocked', 'worst', 'P0446'],
  ] as const)('%s (%s): %s, stored, with the lamp', (fault, degree, code) => {
    const { stored, lampMiles } = row(fault, degree);
    expect(stored).toContain(code);
    expect(lampMiles).not.toBeNull();
  });

  test('a capsule torn 0.5 mm gives a very small leak with perfect hoses', () => {
    expect(row('capsule-torn', 'middle').severity?.value).toBeCloseTo(0.5e-3, 9);
    expect(row('capsule-torn', 'middle').stored).toEqual(['P0456']);
  });

  test('an open sense wire and a switch that never closes look alike to the controller', () => {
    const { fault: _a, item: _b, ...wire } = row('sense-open', 'only');
    const { fault: _c, item: _d, ...contact } = row('switch-stuck-open', 'only');
    expect(wire).toEqual(contact);
  });

  test('a collapsed differential looks like a leak that is not there: drawn down as quickly as ever', () => {
    const sound = row('meter-lead-open', 'only').courses[0];
    for (const degree of ['mild', 'middle'] as const) {
      expect(row('differential-collapsed', degree).courses[0]?.strokes).toBe(sound?.strokes);
    }
  });

  test('leaks get worse in order: longer to draw down, shorter to hold', () => {
    for (const fault of [
      'capsule-torn',
      'body-cracked',
      'canister-hose-split',
      'tank-seal-leaking',
      'vent-seat-leaking',
    ]) {
      const courses = (['mild', 'middle', 'worst'] as const).map((degree) => row(fault, degree).courses[0]);
      const strokes = courses.map((course) => course?.strokes ?? 0);
      expect(
        [...strokes].sort((a, b) => a - b),
        fault,
      ).toEqual(strokes);
      const holds = courses.map((course) => course?.holdSeconds ?? 0);
      expect(
        [...holds].sort((a, b) => b - a),
        fault,
      ).toEqual(holds);
    }
  });
});

describe('bench only', () => {
  test('is what leaves the lamp out and no code behind, and the table says so', () => {
    for (const { benchOnly, stored, seen, lampMiles, fault } of rows) {
      expect(benchOnly, fault).toBe(stored.length + seen.length === 0);
      if (benchOnly) expect(lampMiles, fault).toBeNull();
    }
  });

  test('tools and root causes by themselves never set a code', () => {
    const still = rows.filter(({ fault, item }) => TOOL_ITEMS.includes(item) || isRootCause(fault));
    expect(still.length).toBeGreaterThan(8);
    expect(still.filter(({ benchOnly }) => !benchOnly)).toEqual([]);
  });

  test('a torn capsule inside the leak limit, a coil with shorted turns and a weak battery are found on the bench alone', () => {
    for (const [fault, degree] of [
      ['capsule-torn', 'mild'],
      ['turns-shorted', 'middle'],
      ['battery-weak', 'worst'],
      ['ground-resistance', 'mild'],
    ] as const) {
      expect(row(fault, degree).benchOnly, fault).toBe(true);
    }
  });
});
