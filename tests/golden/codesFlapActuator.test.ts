import { readFileSync, writeFileSync } from 'node:fs';
import { beforeAll, expect, test } from 'vitest';
import { type CodeRow, codeTable, DRIVES } from '../../src/cli/codeTable.ts';
import { FLAP_ACTUATOR } from '../../src/sim/rigs/flapActuator/flapActuator.ts';
import { cliCodes } from '../../src/text/cliCodes.ts';

/** The table of codes of the flap actuator's controller, pinned as that of the first rig is; renew it with GOLDEN=renew. */
const file = new URL('./codes-flap-actuator.txt', import.meta.url);

let rows: readonly CodeRow[] = [];
beforeAll(() => {
  rows = codeTable(FLAP_ACTUATOR.faults, FLAP_ACTUATOR.id);
  if (process.env.GOLDEN === 'renew') writeFileSync(file, printed());
});

function printed(): string {
  return `${cliCodes.table(rows, DRIVES).join('\n')}\n`;
}

test('the table is the one that was agreed, with every fault of the rig in it', () => {
  expect(printed()).toBe(readFileSync(file, 'utf8'));
  expect(new Set(rows.map(({ fault }) => fault))).toEqual(new Set(FLAP_ACTUATOR.faults.map(({ id }) => id)));
});

// What the controller sees, and which code stands for it: SAE J2012 / ISO 15031-6 texts, from memory.
test.each([
  ['winding-open', 'P2008'],
  ['ground-open', 'P2008'],
  ['fuse-blown', 'P2009'],
  ['driver-dead', 'P2009'],
  ['feed-to-battery', 'P2010'],
  ['moisture-2-3', 'P2014'],
  ['position-switch-stuck-closed', 'P2016'],
  ['lever-spring-broken', 'P2016'],
  ['sense-to-ground', 'P2016'],
  ['sense-to-battery', 'P2017'],
  ['lever-binding', 'P2004'],
  ['position-switch-stuck-open', 'P2004'],
  ['engine-hose-pinched', 'P2004'],
  ['filter-clogged', 'P2006'],
  ['air-hose-blocked', 'P2006'],
] as const)('%s: %s, stored, with the lamp', (fault, code) => {
  const row = rows.find((one) => one.fault === fault && one.stored.includes(code));
  expect(row?.lampMiles ?? null).not.toBeNull();
});
