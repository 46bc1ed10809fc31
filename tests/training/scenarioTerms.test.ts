import { describe, expect, it } from 'vitest';
import { scenarioProblemLine } from '../../src/text/cli.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { seedOfSitting, seedPolicyOf } from '../../src/training/scenario/seedPolicy.ts';
import { replay } from '../../src/training/sitting/replay.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

/** What is wrong with a text, as "line code path". */
const problems = (text: string): string[] => {
  const loaded = loadScenario(text, 'terms.yaml');
  return loaded.ok ? [] : loaded.error.map(({ line, code, path }) => `${line} ${code} ${path}`);
};
const sentences = (text: string): string => {
  const loaded = loadScenario(text, 'terms.yaml');
  return loaded.ok ? '' : loaded.error.map(scenarioProblemLine).join('\n');
};
const loads = (text: string): Scenario => {
  const loaded = loadScenario(text, 'terms.yaml');
  if (!loaded.ok) throw new Error(sentences(text));
  return loaded.value;
};
const LAST = SCENARIO_TEXT.split('\n').length;

describe('keys that are left out', () => {
  it('leave the content as it was without them', () => {
    const keys = Object.keys(loads(SCENARIO_TEXT));
    for (const key of ['weights', 'limits', 'tools', 'rulesOn']) expect(keys).not.toContain(key);
  });
});

describe('weights', () => {
  const weights = (written: string): string => `${SCENARIO_TEXT}weights: ${written}\n`;

  it('are read', () => {
    const given = { verdict: 20, evidence: 40, method: 20, economy: 10, repair: 10 };
    expect(loads(weights(JSON.stringify(given))).weights).toEqual(given);
  });

  it('must make a hundred; the fix says how many are missing', () => {
    const text = weights('{ verdict: 20, evidence: 40, method: 20, economy: 10, repair: 7 }');
    expect(problems(text)).toEqual([`${LAST} weights-sum weights`]);
    expect(sentences(text)).toContain('make 97 together, and must make 100. Give 3 more to one of them');
  });

  it('name every part, none beyond its bounds, whole numbers only', () => {
    expect(problems(weights('{ verdict: 50, evidence: 50 }')).map((line) => line.split(' ')[1])).toEqual([
      'missing-key',
      'missing-key',
      'missing-key',
    ]);
    expect(
      problems(weights('{ verdict: 61, evidence: 9, method: 10.5, economy: -1, repair: 20.5 }')).map((line) =>
        line.split(' ').slice(1).join(' '),
      ),
    ).toEqual([
      'number-too-large weights.verdict',
      'number-too-small weights.evidence',
      'not-a-whole-number weights.method',
      'number-too-small weights.economy',
      'not-a-whole-number weights.repair',
    ]);
  });

  it('have no place in an introduction', () => {
    const text = weights('{ verdict: 20, evidence: 40, method: 20, economy: 10, repair: 10 }').replace(
      'mode: practice',
      'mode: introduction',
    );
    expect(problems(text)).toContain(`${LAST} not-in-introduction weights`);
  });
});

describe('limits', () => {
  const limits = (written: string): string => `${SCENARIO_TEXT}limits: ${written}\n`;

  it('are read, one or both', () => {
    expect(loads(limits('{ minutes: 90, dollars: 400 }')).limits).toEqual({ minutes: 90, dollars: 400 });
    expect(loads(limits('{ dollars: 0 }')).limits).toEqual({ dollars: 0 });
  });

  it('limit something, in whole numbers within bounds', () => {
    expect(problems(limits('{}'))).toEqual([`${LAST} limits-empty limits`]);
    expect(sentences(limits('{}'))).toContain('Add "minutes:", "dollars:" or both');
    expect(problems(limits('{ minutes: 9, dollars: 5001 }'))).toEqual([
      `${LAST} number-too-small limits.minutes`,
      `${LAST} number-too-large limits.dollars`,
    ]);
    expect(problems(limits('{ minutes: 20.5 }'))).toEqual([`${LAST} not-a-whole-number limits.minutes`]);
  });

  it('have no place in an introduction', () => {
    const text = limits('{ minutes: 90 }').replace('mode: practice', 'mode: introduction');
    expect(problems(text)).toContain(`${LAST} not-in-introduction limits`);
  });
});

describe('tools at hand', () => {
  const tools = (written: string, more = ''): string => `${SCENARIO_TEXT}tools: ${written}\n${more}`;

  it('are read as they are listed', () => {
    expect(loads(tools('[reader, meter]')).tools).toEqual(['reader', 'meter']);
  });

  it('are words of the list, each once, one at least', () => {
    expect(problems(tools('[]'))).toEqual([`${LAST} list-too-short tools`]);
    expect(problems(tools('[meter, oscilloscope, meter]'))).toEqual([
      `${LAST} not-one-of tools[1]`,
      `${LAST} tool-twice tools[2]`,
    ]);
  });

  it('make it possible to keep what is turned on, and to do every step', () => {
    const asked = tools('[meter, hand-pump]').replace('off: []', 'off: []\n  on: [hold-watched]');
    expect(problems(asked).map((line) => line.split(' ').slice(1).join(' '))).toEqual([
      'rule-needs-tool rules.on[0]',
    ]);
    expect(sentences(asked)).toContain('Add to "tools:": caps-and-plugs');
    const done = (condition: string): string =>
      tools(
        '[meter]',
        `walkthrough:\n  - { id: one, say: Do it., how: Like so., done: ${condition} }\n`,
      ).replace('mode: practice', 'mode: walkthrough');
    expect(problems(done('{ meter-on: ohms, key: on }'))).toEqual([]);
    for (const [condition, tool] of [
      ['{ solenoid: on }', 'reader'],
      ['{ fitted: [{ item: cap-a, site: air-port }] }', 'caps-and-plugs'],
      ['{ fitted: [{ item: pump-hose, site: jar-tee-a }] }', 'hand-pump, jar'],
      ['{ leads-on: [{ end: lamp-tip, point: supply-positive }] }', 'test-lamp, bench-supply'],
      ['{ unit: known-good }', 'known-good-unit'],
    ] as const) {
      expect(sentences(done(condition)), condition).toContain(`Add to "tools:": ${tool};`);
    }
    // What is wrong in other ways is told of as that, and nothing is thrown.
    expect(problems(done('{ leads-on: [{ end: __proto__, point: constructor }] }'))).toHaveLength(2);
  });
});

describe('rules on and off', () => {
  const rules = (written: string): string => SCENARIO_TEXT.replace('off: []', written);

  it('are read; a file that turns none on is as it was', () => {
    expect(loads(rules('off: []\n  on: [pump-proven]')).rulesOn).toEqual(['pump-proven']);
    expect(loads(SCENARIO_TEXT).contentHash).toBe(loads(rules('off: []')).contentHash);
  });

  it('are one or the other, and only duties are turned on', () => {
    expect(problems(rules('off: [pump-proven]\n  on: [pump-proven]'))[0]).toMatch(
      /rule-on-and-off rules.on\[0\]/,
    );
    expect(problems(rules('off: []\n  on: [own-codes-cleared]'))[0]).toMatch(/not-one-of rules.on\[0\]/);
  });
});

describe('parts already renewed', () => {
  const renewed = (written: string): string =>
    SCENARIO_TEXT.replace('  codes:\n', `  renewed: ${written}\n  codes:\n`);

  it('are read into the work order, which the learner sees', () => {
    expect(loads(renewed('[filler-cap, unit]')).workOrder.renewed).toEqual(['filler-cap', 'unit']);
    expect(Object.keys(loads(SCENARIO_TEXT).workOrder)).not.toContain('renewed');
  });

  it('are parts of the truck, each once, and none in an introduction', () => {
    expect(
      problems(renewed('[hand-pump, unit, unit]')).map((line) => line.split(' ').slice(1).join(' ')),
    ).toEqual(['not-one-of work-order.renewed[0]', 'renewed-twice work-order.renewed[2]']);
    // A filler cap is nothing that the flap actuator has.
    expect(problems(renewed('[filler-cap]').replace('level: 1', 'level: 1\nrig: flap-actuator'))).toContain(
      '17 part-of-other-rig work-order.renewed[0]',
    );
    expect(problems(renewed('[unit]').replace('mode: practice', 'mode: introduction'))).toContain(
      '16 not-in-introduction work-order.renewed',
    );
  });
});

describe('the policy of the seed', () => {
  const seed = (written: string): string => SCENARIO_TEXT.replace('seed: short-job', `seed: ${written}`);

  it('is left to the mode by a plain word, whose content stays as it was', () => {
    expect(Object.keys(loads(SCENARIO_TEXT))).not.toContain('seedPolicy');
    expect(seedPolicyOf(loads(SCENARIO_TEXT))).toBe('by-seat');
    expect(loads(seed('{ word: short-job, policy: fixed }'))).toMatchObject({
      seed: 'short-job',
      seedPolicy: 'fixed',
    });
  });

  it('says which truck a sitting has', () => {
    const own = () => 'my-own';
    expect(seedOfSitting(loads(seed('{ word: yard, policy: fixed }')), own)).toBe('yard');
    expect(seedOfSitting(loads(seed('{ word: yard, policy: by-seat }')), own)).toBe('my-own');
  });

  it('is kept to by a record, or it is not believed', () => {
    const fixed = loads(seed('{ word: yard, policy: fixed }'));
    const made = (word: string) => replay(fixed, Sitting.begin(fixed, word).record());
    expect(made('yard').ok).toBe(true);
    expect(made('an-easier-one')).toEqual({ ok: false, error: { code: 'wrong-seed' } });
  });

  it('is one of two, and fixed where steps speak of numbers', () => {
    expect(problems(seed('{ word: yard, policy: mine }'))).toEqual(['25 not-one-of seed.policy']);
    expect(
      problems(seed('{ word: yard, policy: by-seat }').replace('mode: practice', 'mode: walkthrough')),
    ).toContain('25 seed-not-by-seat seed.policy');
  });
});
