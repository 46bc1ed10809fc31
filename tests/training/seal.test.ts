import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { canonicalJson } from '../../src/base/hash.ts';
import { ITEMS } from '../../src/sim/devices/items.ts';
import { FAULTS } from '../../src/sim/faults/catalogue.ts';
import { fromBase64, toBase64 } from '../../src/training/scenario/base64.ts';
import { buildScenarioBundle } from '../../src/training/scenario/buildScenarioBundle.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { openSealed, type SealedScenario, sealScenario } from '../../src/training/scenario/seal.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const folder = new URL('../../scenarios/', import.meta.url);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => ({ name, text: readFileSync(new URL(name, folder), 'utf8') }));

function bundle(): readonly SealedScenario[] {
  const built = buildScenarioBundle([...files, { name: 'short.yaml', text: SCENARIO_TEXT }]);
  if (!built.ok) throw new Error(JSON.stringify(built.error));
  return built.value;
}

/** Words that would give an answer away: fault ids, items, and what stands around them. */
const TELLING = [
  ...FAULTS.map(({ id }) => id),
  ...FAULTS.map(({ mode }) => mode).filter((mode) => mode.length > 4),
  ...ITEMS.filter((item) => item.length > 4),
  'fault',
  'severity',
  'remark',
  'sense',
];

describe('a sealed scenario', () => {
  it('opens to the scenario it was made from', () => {
    for (const { name, text } of files) {
      const loaded = loadScenario(text, name);
      if (!loaded.ok) throw new Error(name);
      const opened = openSealed(sealScenario(loaded.value));
      expect(opened).toEqual({ ok: true, value: loaded.value });
    }
  });

  it('shows no fault and no item in its sealed part, neither plain nor decoded from base 64', () => {
    for (const { sealed } of bundle()) {
      const decoded = Buffer.from(sealed, 'base64').toString('latin1');
      const twice = Buffer.from(decoded, 'base64').toString('latin1');
      const backwards = [...decoded].reverse().join('');
      for (const text of [sealed, decoded, twice, backwards]) {
        for (const word of TELLING) expect(text.toLowerCase(), word).not.toContain(word);
      }
      for (const word of TELLING)
        expect(sealed).not.toContain(Buffer.from(word).toString('base64').slice(0, 6));
    }
  });

  it('shows neither fault nor remark on its card', () => {
    for (const sealed of bundle()) {
      const card = canonicalJson(sealed.card);
      const opened = openSealed(sealed);
      if (!opened.ok) throw new Error('opens');
      for (const { fault } of opened.value.faults) expect(card).not.toContain(fault);
      expect(card).not.toContain(opened.value.remark.trim().slice(0, 30));
      expect(card).not.toMatch(/"(faults|severity|done|remark|seed)"/);
    }
  });

  it('does not open when its text or its card was changed', () => {
    const [first] = bundle();
    if (first === undefined) throw new Error('one at least');
    const changed = `${first.sealed.slice(0, 40)}${first.sealed[40] === 'A' ? 'B' : 'A'}${first.sealed.slice(41)}`;
    expect(openSealed({ ...first, sealed: changed }).ok).toBe(false);
    expect(openSealed({ ...first, sealed: '***' })).toEqual({ ok: false, error: 'seal-unreadable' });
    const card = { ...first.card, contentHash: '0'.repeat(64) };
    expect(openSealed({ ...first, card }).ok).toBe(false);
  });
});

describe('the bundle of scenarios', () => {
  it('is in the order of file names, whatever the order given', () => {
    const ids = (list: readonly SealedScenario[]) => list.map(({ card }) => card.id);
    const reversed = buildScenarioBundle([...files].reverse());
    expect(reversed.ok && ids(reversed.value)).toEqual(
      files.map(({ name }) => name.replace('.yaml', '')).sort(),
    );
  });

  it('tells every problem of every file, and two files with one id', () => {
    const built = buildScenarioBundle([
      { name: 'a.yaml', text: SCENARIO_TEXT },
      { name: 'b.yaml', text: SCENARIO_TEXT },
      { name: 'c.yaml', text: 'format: 2' },
    ]);
    expect(built.ok).toBe(false);
    if (built.ok) return;
    expect(built.error.find(({ code }) => code === 'same-id')).toMatchObject({
      file: 'b.yaml',
      other: 'a.yaml',
    });
    expect(built.error.some(({ file }) => file === 'c.yaml')).toBe(true);
  });
});

describe('base 64', () => {
  // RFC 4648, section 10.
  it.each([
    ['', ''],
    ['f', 'Zg=='],
    ['fo', 'Zm8='],
    ['foo', 'Zm9v'],
    ['foob', 'Zm9vYg=='],
    ['fooba', 'Zm9vYmE='],
    ['foobar', 'Zm9vYmFy'],
  ])('%j is %j, as RFC 4648 has it', (plain, coded) => {
    expect(toBase64(Buffer.from(plain))).toBe(coded);
    expect(Buffer.from(fromBase64(coded) ?? []).toString()).toBe(plain);
  });
});
