import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { ITEMS } from '../../src/sim/devices/items.ts';
import * as places from '../../src/sim/devices/places.ts';
import { FAULTS } from '../../src/sim/faults/catalogue.ts';
import { REFUSALS } from '../../src/sim/world/Action.ts';
import { HAPPENING_KINDS } from '../../src/sim/world/Observation.ts';
import { catalogue } from '../../src/text/en/catalogue.ts';
import { has } from '../../src/text/translate.ts';
import { RULE_IDS } from '../../src/training/scenario/ruleIds.ts';
import { SAFETY_IDS } from '../../src/training/score/ruleIds.ts';
import { SITTING_REFUSALS } from '../../src/training/sitting/SittingAction.ts';

/** Every sentence of the catalogue with its key. */
function sentences(node: object, path = ''): [string, string][] {
  return Object.entries(node).flatMap(([key, value]) =>
    typeof value === 'string'
      ? [[path + key, value] as [string, string]]
      : sentences(value, `${path}${key}.`),
  );
}

describe('every id has its words', () => {
  const needed: readonly [string, readonly (string | number)[]][] = [
    ['points', places.LEAD_POINTS],
    ['ends', places.LEAD_ENDS],
    ['sites', places.AIR_SITES],
    ['fittings', places.FITTINGS],
    ['clamps', places.CLAMP_SETTINGS],
    ['key', places.KEY_POSITIONS],
    ['meterFunctions', places.METER_FUNCTIONS],
    ['solenoid', places.SOLENOID_COMMANDS],
    ['functions', places.CAVITIES],
    ['items', [...ITEMS, 'nothing-wrong']],
    ['faults', FAULTS.map(({ id }) => id)],
    ['itemModes', FAULTS.map(({ item, mode }) => `${item}.${mode}`)],
    ['refusals', [...REFUSALS, ...SITTING_REFUSALS]],
    ['happenings', HAPPENING_KINDS],
    ['happeningSentences', HAPPENING_KINDS],
    ['safety', SAFETY_IDS],
  ];
  for (const [area, ids] of needed) {
    it(area, () => expect(ids.filter((id) => !has(`${area}.${id}`))).toEqual([]));
  }

  it('rules, with title and why', () => {
    const missing = RULE_IDS.filter((id) => !has(`rules.${id}.title`) || !has(`rules.${id}.why`));
    expect(missing).toEqual([]);
  });

  it('codes that the scenarios store', () => {
    const files = readdirSync('scenarios').filter((name) => name.endsWith('.yaml'));
    const codes = files.flatMap((name) =>
      [...readFileSync(`scenarios/${name}`, 'utf8').matchAll(/code: "?([PBCU][0-9A-F]{4})/g)].map(
        (m) => m[1],
      ),
    );
    expect(codes.length).toBeGreaterThan(0);
    expect(codes.filter((code) => !has(`codes.${code}`))).toEqual([]);
  });

  it('and an id that does not exist has none', () => expect(has('refusals.no-such-refusal')).toBe(false));
});

describe('the sentences', () => {
  const all = sentences(catalogue);

  it('are never empty', () => expect(all.filter(([, text]) => text.trim() === '')).toEqual([]));

  it('of refusals, rules and safety end with a full stop', () => {
    const whole = all.filter(([key]) => /^(refusals|safety|happeningSentences)\.|\.why$/.test(key));
    expect(whole.length).toBeGreaterThan(40);
    expect(whole.filter(([, text]) => !text.endsWith('.'))).toEqual([]);
  });

  it('have plural forms in pairs', () => {
    const ones = all.filter(([key]) => key.endsWith('_one')).map(([key]) => key.replace(/_one$/, '_other'));
    const keys = new Set(all.map(([key]) => key));
    expect(ones.filter((key) => !keys.has(key))).toEqual([]);
  });
});

describe('generic code texts', () => {
  // Source: public lists of SAE J2012 / ISO 15031-6 texts; the deciding words of each.
  const published: readonly [string, RegExp][] = [
    ['P0442', /leak detected.*small leak/],
    ['P0455', /leak detected.*large leak/],
    ['P0456', /leak detected.*very small leak/],
    ['P2400', /leak detection pump control circuit\/open/],
    ['P2401', /leak detection pump control circuit low/],
    ['P2402', /leak detection pump control circuit high/],
    ['P2404', /leak detection pump sense circuit range\/performance/],
    ['P2405', /leak detection pump sense circuit low/],
    ['P2406', /leak detection pump sense circuit high/],
    ['P2407', /leak detection pump sense circuit intermittent\/erratic/],
  ];
  for (const [code, words] of published) {
    it(code, () => expect(catalogue.codes[code as keyof typeof catalogue.codes]).toMatch(words));
  }
});
