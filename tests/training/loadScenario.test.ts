import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { ScenarioProblem } from '../../src/training/scenario/ScenarioProblem.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

function problemsOf(text: string): readonly ScenarioProblem[] {
  const loaded = loadScenario(text, 'job.yaml');
  return loaded.ok ? [] : loaded.error;
}

/** The one problem, as code, line and path. */
function brief(text: string): string[] {
  return problemsOf(text).map(({ code, line, path }) => `${line} ${code} ${path}`);
}

const lineOf = (text: string, part: string): number => text.slice(0, text.indexOf(part)).split('\n').length;

describe('a scenario file', () => {
  it('loads', () => {
    const loaded = loadScenario(SCENARIO_TEXT, 'job.yaml');
    expect(loaded.ok && loaded.value.faults).toEqual([{ fault: 'capsule-torn', severity: 0.5 }]);
    expect(loaded.ok && loaded.value.bench.altitudeM).toBe(0);
  });

  it('says what comes and goes with the harness, what stands behind a fault, and what was driven', () => {
    const loaded = loadScenario(
      SCENARIO_TEXT.replace('cycles: 0', 'cycles: 6').replace(
        'rules:',
        '    root: fuel-in-canister\n  - fault: fuel-in-canister\n  - fault: sense-open\n    when-moved: true\nrules:',
      ),
      'job.yaml',
    );
    expect(loaded.ok && loaded.value.faults).toEqual([
      { fault: 'capsule-torn', severity: 0.5, root: 'fuel-in-canister' },
      { fault: 'fuel-in-canister', severity: 0 },
      { fault: 'sense-open', severity: 0, whenMoved: true },
    ]);
    expect(loaded.ok && loaded.value.drives).toEqual({ cycles: 6, refuelled: false });
  });

  it('has a hash of its content, not of its layout', () => {
    const plain = loadScenario(SCENARIO_TEXT, 'a.yaml');
    const commented = loadScenario(
      `# by hand\n${SCENARIO_TEXT.replace('title: A short job', "title:   'A short job'")}`,
      'b.yaml',
    );
    const changed = loadScenario(SCENARIO_TEXT.replace('severity: 0.5', 'severity: 0.6'), 'a.yaml');
    if (!plain.ok || !commented.ok || !changed.ok) throw new Error('all three load');
    expect(commented.value.contentHash).toBe(plain.value.contentHash);
    expect(changed.value.contentHash).not.toBe(plain.value.contentHash);
  });

  it('reports every problem at once, each with its line', () => {
    const text = SCENARIO_TEXT.replace('level: 1', 'level: 7')
      .replace('    - code: P0456', '    - code: 0456')
      .replace('severity: 0.5', 'severity: 1.5')
      .replace('seed: short-job\n', '')
      .concat('colour: red\n');
    expect(brief(text)).toEqual(
      [
        '1 missing-key seed',
        '6 not-one-of level',
        `${lineOf(text, 'code: 0456')} wrong-type work-order.codes[0].code`,
        `${lineOf(text, 'severity: 1.5')} number-too-large faults[0].severity`,
        `${lineOf(text, 'colour')} unknown-key colour`,
      ].sort((a, b) => Number.parseInt(a, 10) - Number.parseInt(b, 10)),
    );
  });

  it.each([
    ['unknown-fault', SCENARIO_TEXT.replace('capsule-torn', 'capsul-torn'), 'capsul-torn'],
    ['severity-missing', SCENARIO_TEXT.replace('\n    severity: 0.5', ''), 'fault: capsule'],
    ['severity-not-used', SCENARIO_TEXT.replace('capsule-torn', 'winding-open'), 'severity'],
    [
      'duplicate-fault',
      SCENARIO_TEXT.replace('rules:', '  - fault: capsule-torn\n    severity: 1\nrules:'),
      '  - fault: capsule-torn\n    severity: 1\n',
    ],
    ['fault-not-at-start', SCENARIO_TEXT.replace('capsule-torn', 'wire-3-pierced'), 'wire-3-pierced'],
    [
      'when-moved-not-allowed',
      SCENARIO_TEXT.replace('severity: 0.5', 'severity: 0.5\n    when-moved: true'),
      'when-moved',
    ],
    [
      'root-not-listed',
      SCENARIO_TEXT.replace('severity: 0.5', 'severity: 0.5\n    root: water-in-filter'),
      'root: water',
    ],
    [
      'not-a-root',
      SCENARIO_TEXT.replace('severity: 0.5', 'severity: 0.5\n    root: fuse-blown'),
      'root: fuse',
    ],
    ['number-too-large', SCENARIO_TEXT.replace('cycles: 0', 'cycles: 41'), 'cycles: 41'],
    ['missing-key', SCENARIO_TEXT.replace('\n  refuelled: false', ''), 'cycles: 0'],
    ['steps-missing', SCENARIO_TEXT.replace('mode: practice', 'mode: walkthrough'), 'mode'],
    ['not-one-of', SCENARIO_TEXT.replace('off: []', 'off: [be-nice]'), 'off: ['],
    ['not-finite', SCENARIO_TEXT.replace('altitude-metres: 0', 'altitude-metres: .nan'), 'altitude'],
    ['not-finite', SCENARIO_TEXT.replace('severity: 0.5', 'severity: .inf'), 'severity'],
    ['duplicate-key', `${SCENARIO_TEXT}seed: other\n`, 'seed: other'],
    ['bad-form', SCENARIO_TEXT.replace('id: short-job', 'id: Short Job'), 'id:'],
    ['not-a-whole-number', SCENARIO_TEXT.replace('minutes: 20', 'minutes: 20.5'), 'minutes'],
    ['text-empty', SCENARIO_TEXT.replace('title: A short job', 'title: ""'), 'title'],
    ['list-too-short', SCENARIO_TEXT.replace('aims:\n  - Say what the readings show.', 'aims: []'), 'aims'],
  ])('%s, at its line', (code, text, where) => {
    const found = problemsOf(text);
    expect(found.map((problem) => problem.code)).toEqual([code]);
    const line = lineOf(text, where);
    expect(found[0]?.line).toBe(line);
  });

  it('an introduction has steps, and nothing to find: no fault, and no code that one left', () => {
    const asIntroduction = SCENARIO_TEXT.replace('mode: practice', 'mode: introduction');
    const steps = 'walkthrough:\n  - { id: one, say: Do it., how: Like so., done: { key: on } }\n';
    expect(brief(asIntroduction)).toEqual([
      '5 steps-missing mode',
      '17 faults-in-introduction work-order.codes',
      '30 faults-in-introduction faults',
    ]);
    const sound = asIntroduction
      .replace(/codes:\n {4}- code: P0456\n {6}status: stored/, 'codes: []')
      .replace(/faults:\n {2}- fault: capsule-torn\n {4}severity: 0.5/, 'faults: []');
    expect(brief(`${sound}${steps}`)).toEqual([]);
  });

  it('knows the steps of a walkthrough and the closed vocabulary of their conditions', () => {
    const walkthrough = (done: string) =>
      `${SCENARIO_TEXT.replace('mode: practice', 'mode: walkthrough')}walkthrough:\n  - id: one\n    say: Do it.\n    how: Like so.\n    done: ${done}\n`;
    expect(brief(walkthrough('{ key: on, meter-volts: { above: 8 } }'))).toEqual([]);
    expect(brief(walkthrough('{}'))).toEqual(['39 empty-condition walkthrough[0].done']);
    expect(brief(walkthrough('{ mood: good }'))).toEqual(['39 unknown-key walkthrough[0].done.mood']);
    expect(brief(walkthrough('{ key: ajar }'))).toEqual(['39 not-one-of walkthrough[0].done.key']);
    expect(brief(walkthrough('{ named: { item: unit, mode: vacuum-switch } }'))).toEqual([]);
    expect(brief(walkthrough('{ named: { item: unit, mode: seal } }'))).toEqual([
      '39 not-one-of walkthrough[0].done.named.mode',
    ]);
    expect(brief(walkthrough('{ named: { item: nothing-wrong, mode: seal } }'))).toEqual([
      '39 unknown-key walkthrough[0].done.named.mode',
    ]);
    expect(brief(walkthrough('{ marked: [{ item: unit, mark: open }] }'))).toEqual([
      '39 not-one-of walkthrough[0].done.marked[0].mark',
    ]);
    expect(brief(walkthrough('{ coach-asked: all }'))).toEqual([
      '39 not-one-of walkthrough[0].done.coach-asked',
    ]);
  });
});

describe('a hostile scenario file', () => {
  it('may not use aliases, so no small text grows large', () => {
    const bomb = `a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\n${SCENARIO_TEXT}`;
    const codes = new Set(problemsOf(bomb).map(({ code }) => code));
    expect([...codes]).toEqual(['alias-not-allowed']);
  });

  it('may not be larger than 256 KiB, counted in bytes', () => {
    const text = SCENARIO_TEXT.concat(`# ${'Ω'.repeat(131_072)}\n`);
    expect(text.length).toBeLessThan(256 * 1024);
    expect(problemsOf(text)[0]).toMatchObject({ code: 'too-large', values: { limit: 262_144 } });
  });

  it.each([
    ['a deep nest', '['.repeat(100_000)],
    ['a deep nest of maps', '{a: '.repeat(40_000)],
    ['a tag of its own', SCENARIO_TEXT.replace('seed: short-job', 'seed: !run short-job')],
    ['two documents', `${SCENARIO_TEXT}---\na: 1\n`],
    ['a list', '- 1\n- 2\n'],
    ['nothing', ''],
    ['a broken quote', SCENARIO_TEXT.replace('title: A', 'title: "A')],
    ['a tab as indent', SCENARIO_TEXT.replace('  number', '\tnumber')],
    ['the prototype as a key', `${SCENARIO_TEXT}__proto__:\n  polluted: 1\n`],
    ['control characters', SCENARIO_TEXT.replace('title: A short job', 'title: "A \\u001b[31m job"')],
  ])('%s is refused as a problem, not as a crash', (_name, text) => {
    expect(problemsOf(text).length).toBeGreaterThan(0);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('the shipped scenarios', () => {
  const folder = new URL('../../scenarios/', import.meta.url);
  const names = readdirSync(folder).filter((name) => name.endsWith('.yaml'));
  it.each(names)('%s has no problem and is named after its id', (name) => {
    const loaded = loadScenario(readFileSync(new URL(name, folder), 'utf8'), name);
    expect(loaded.ok ? [] : loaded.error).toEqual([]);
    expect(loaded.ok && `${loaded.value.id}.yaml`).toBe(name);
  });
});
