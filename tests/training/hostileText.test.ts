import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stringify } from 'yaml';
import { scenarioProblemLine } from '../../src/text/cli.ts';
import { jobSentence } from '../../src/text/jobWords.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import { JobWords } from '../../src/ui/panels/JobWords.tsx';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const WALKTHROUGH = `${SCENARIO_TEXT.replace('mode: practice', 'mode: walkthrough')}walkthrough:
  - { id: one, say: Do it., how: Like so., done: { key: on } }
`;

/** Every text of a scenario: what stands there, and the text as it is loaded. */
const TEXTS = [
  ['A short job', 'title'],
  ['One page of work for tests.', 'summary'],
  ['Say what the readings show.', 'aims'],
  ['T-100', 'number'],
  ['Truck 14, invented', 'vehicle'],
  ['The lamp is on.', 'complaint'],
  ['Filler cap renewed.', 'history'],
  ['Key off before the plug is parted.', 'cautions'],
  ['Do it.', 'say'],
  ['Like so.', 'how'],
  ['Nothing more to say.', 'remark'],
] as const;

const MARKUP = [
  '<b>x</b>',
  '<svg/onload=x()>',
  '"><img src=x>',
  '&lt;&#106;&#0;',
  '{{constructor}}',
  '$t(actions.key)',
  '#{7*7} <%= 7 %>',
  "');x();//",
  '[a|b] [c](//d)',
];

describe('markup and script', () => {
  const pairs = TEXTS.flatMap(([was, field]) => MARKUP.map((markup) => [field, markup, was] as const));

  it.each(pairs)('in %s, %s is loaded as the text that it is', (field, markup, was) => {
    const loaded = loadScenario(
      WALKTHROUGH.replace(was, () => JSON.stringify(markup)),
      'job.yaml',
    );
    const plain = loadScenario(WALKTHROUGH, 'job.yaml');
    if (!loaded.ok || !plain.ok) throw new Error(`${field} is refused`);
    const { contentHash: _one, ...content } = loaded.value;
    const { contentHash: _other, ...before } = plain.value;
    expect(JSON.stringify(content)).toBe(
      JSON.stringify(before).replace(JSON.stringify(was), () => JSON.stringify(markup)),
    );
  });

  it('goes to the page as a string, never as elements', () => {
    for (const markup of MARKUP.filter((each) => !each.includes('|'))) {
      // A number and its unit stay in a line: the space between them may be one that does not break.
      expect(String(JobWords({ of: markup })).replaceAll('\u00a0', ' ')).toBe(markup);
      expect(jobSentence(markup).words).toBe(markup);
    }
    expect(JobWords({ of: '[<i>|<b>]' })).toBe('<i>');
  });
});

describe('a file that was cut off', () => {
  it('is refused, or lacks no more than the end of its last text', () => {
    const whole = loadScenario(SCENARIO_TEXT, 'job.yaml');
    if (!whole.ok) throw new Error('it loads');
    const { contentHash: _hash, remark, ...rest } = whole.value;
    let refused = 0;
    for (let length = 0; length < SCENARIO_TEXT.length; length++) {
      const loaded = loadScenario(SCENARIO_TEXT.slice(0, length), 'job.yaml');
      if (loaded.ok) {
        expect(loaded.value).toMatchObject(rest);
        expect(remark.startsWith(loaded.value.remark)).toBe(true);
      } else {
        refused++;
        for (const problem of loaded.error)
          expect(scenarioProblemLine(problem)).toMatch(/^job.yaml:\d+:\d+: .+\./);
      }
    }
    expect(refused).toBeGreaterThan(SCENARIO_TEXT.length - remark.length - 2);
  });
});

describe('a file that was saved elsewhere', () => {
  it('is the same with other line ends and a mark of byte order', () => {
    const plain = loadScenario(SCENARIO_TEXT, 'job.yaml');
    const folded = SCENARIO_TEXT.replace('remark: ', 'remark: >-\n  ');
    for (const text of [SCENARIO_TEXT, folded]) {
      const other = `\ufeff${text.replaceAll('\n', '\r\n')}`;
      expect(loadScenario(other, 'job.yaml')).toEqual(plain);
    }
  });
});

/** Any value under any key: keys of the format now and then, so that their fields are met. */
const keys = fc.constantFrom(...new Set(WALKTHROUGH.match(/[a-z-]+(?=:)/g)), '__proto__', 'toString', 'mode');
const anything = fc.letrec<{ value: unknown }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    fc.constantFrom(
      null,
      true,
      'unit',
      'practice',
      'capsule-torn',
      0.5,
      -0,
      Number.NaN,
      Number.POSITIVE_INFINITY,
    ),
    fc.double(),
    fc.string({ unit: 'binary' }),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(keys, tie('value'), { maxKeys: 5, noNullPrototype: true }),
  ),
})).value;

/** The words of an error that is the program's own and nobody's problem. */
function isTold(text: string): void {
  const loaded = loadScenario(text, 'job.yaml');
  if (loaded.ok) return;
  expect(loaded.error.length).toBeGreaterThan(0);
  for (const problem of loaded.error) expect(scenarioProblemLine(problem)).toMatch(/^job.yaml:\d+:\d+: .+\./);
}

describe('any content', () => {
  it('in place of any field is told of, and nothing is thrown', () => {
    const fields = [...new Set(WALKTHROUGH.match(/[a-z-]+(?=:)/g))];
    fc.assert(
      fc.property(fc.constantFrom(...fields), anything, (field, value) => {
        const written = JSON.stringify(value) ?? 'null';
        isTold(
          WALKTHROUGH.replace(
            new RegExp(`(\\b${field}:) [^\\n]+`),
            (_all, key: string) => `${key} ${written}`,
          ),
        );
      }),
      { numRuns: 300 },
    );
  });

  it('as the whole file is told of, and nothing is thrown', () => {
    fc.assert(
      fc.property(fc.dictionary(keys, anything, { noNullPrototype: true }), (value) => {
        isTold(stringify(value));
        isTold(JSON.stringify(value));
      }),
      { numRuns: 300 },
    );
  });

  it('of letters is told of, and nothing is thrown', () => {
    const marks = fc.string({ unit: fc.constantFrom(...' \n\t-?:,[]{}#&*!|>\'"%@`~ab01.'), maxLength: 60 });
    fc.assert(fc.property(fc.oneof(marks, fc.string({ unit: 'binary' })), isTold), { numRuns: 1500 });
  });

  it('with a stretch cut out of a good file is told of, and nothing is thrown', () => {
    const at = fc.nat({ max: WALKTHROUGH.length });
    fc.assert(
      fc.property(at, fc.nat({ max: 40 }), fc.string({ maxLength: 4 }), (from, length, instead) => {
        isTold(`${WALKTHROUGH.slice(0, from)}${instead}${WALKTHROUGH.slice(from + length)}`);
      }),
      { numRuns: 500 },
    );
  });
});
