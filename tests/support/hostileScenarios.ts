import type { ScenarioProblemCode } from '../../src/training/scenario/ScenarioProblem.ts';
import { SCENARIO_TEXT } from './scenarioText.ts';

/** Name, text, and a problem that must be among those told. */
export type HostileFile = readonly [string, string, ScenarioProblemCode];

const with_ = (from: string, to: string): string => {
  if (!SCENARIO_TEXT.includes(from)) throw new Error(`the short scenario has no "${from}"`);
  return SCENARIO_TEXT.replace(from, () => to);
};
const TITLE = 'title: A short job';
const title = (written: string): string => with_(TITLE, `title: ${written}`);
const minutes = (written: string): string => with_('minutes: 20', `minutes: ${written}`);
const severity = (written: string): string => with_('severity: 0.5', `severity: ${written}`);
const walk = (done: string): string =>
  `${with_('mode: practice', 'mode: walkthrough')}walkthrough:\n  - { id: one, say: Do., how: So., done: ${done} }\n`;
const often = (count: number, line: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => line(i)).join('');

const GROWTH: readonly HostileFile[] = [
  ['an alias bomb', `a: &a [x, x]\nb: &b [*a, *a]\nc: &c [*b, *b]\n${SCENARIO_TEXT}`, 'alias-not-allowed'],
  [
    'an alias bomb of maps',
    `a: &a {x: 1, y: 1}\nb: &b {x: *a, y: *a}\n${SCENARIO_TEXT}`,
    'alias-not-allowed',
  ],
  ['an anchor that nobody uses', title('&t A short job'), 'alias-not-allowed'],
  ['an anchor on a key', with_(TITLE, '&k title: A short job'), 'alias-not-allowed'],
  ['an alias to nothing', title('*nobody'), 'alias-not-allowed'],
  [
    'an alias to itself',
    with_('aims:\n  - Say what the readings show.', 'aims: &a [*a]'),
    'alias-not-allowed',
  ],
  ['thousands of aliases', `a: &a x\nb: [${'*a,'.repeat(20_000)}]\n${SCENARIO_TEXT}`, 'alias-not-allowed'],
  ['thousands of anchors', often(15_000, (i) => `k${i}: &a${i} x\n`), 'alias-not-allowed'],
  ['a merge key', with_('bench:', 'bench:\n  <<: { a: 1 }'), 'unknown-key'],
  ['a merge key of an alias', with_('bench:', 'base: &b { a: 1 }\nbench:\n  <<: *b'), 'alias-not-allowed'],
];

const DEPTH: readonly HostileFile[] = [
  ['open brackets', '['.repeat(100_000), 'nested-too-deep'],
  ['closed brackets', `${'['.repeat(60_000)}${']'.repeat(60_000)}`, 'nested-too-deep'],
  ['brackets as deep as a stack', `${'['.repeat(2500)}${']'.repeat(2500)}`, 'nested-too-deep'],
  ['open braces', '{a: '.repeat(60_000), 'nested-too-deep'],
  ['dashes on a line', '- '.repeat(130_000), 'nested-too-deep'],
  ['question marks on a line', '? '.repeat(130_000), 'nested-too-deep'],
  ['colons on a line', 'a: '.repeat(80_000), 'nested-too-deep'],
  ['bare colons on a line', ': '.repeat(130_000), 'nested-too-deep'],
  ['maps by indents', often(600, (i) => `${' '.repeat(i)}a:\n`), 'nested-too-deep'],
  ['lists by indents', often(600, (i) => `${' '.repeat(i)}-\n`), 'nested-too-deep'],
  [
    'a deep list as a value',
    with_('history:\n    - Filler cap renewed.', `history: ${'['.repeat(500)}${']'.repeat(500)}`),
    'nested-too-deep',
  ],
  ['a deep list, then a dedent', `${'- '.repeat(60_000)}x\ny: 1\n`, 'nested-too-deep'],
  ['twenty levels, as deep as is read', title(`${'['.repeat(20)}x${']'.repeat(20)}`), 'wrong-type'],
];

const NUMBERS: readonly HostileFile[] = [
  ['a huge number', minutes('9'.repeat(300)), 'number-too-large'],
  ['a number of a hundred thousand digits', minutes('9'.repeat(100_000)), 'not-finite'],
  ['1e999', minutes('1e999'), 'not-finite'],
  ['not a number', severity('.nan'), 'not-finite'],
  ['NaN as a word', severity('NaN'), 'wrong-type'],
  ['infinity', severity('.inf'), 'not-finite'],
  ['less than infinity', with_('altitude-metres: 0', 'altitude-metres: -.inf'), 'not-finite'],
  ['Infinity as a word', severity('Infinity'), 'wrong-type'],
  ['a whole number beyond what is exact', minutes('9007199254740993'), 'number-too-large'],
  ['a whole number beyond 64 bits', with_('cycles: 0', 'cycles: 18446744073709551616'), 'number-too-large'],
  ['hexadecimal', minutes('0x14'), 'number-not-plain'],
  ['octal of the new writing', minutes('0o24'), 'number-not-plain'],
  ['what others read as octal', minutes('024'), 'number-not-plain'],
  ['a binary number', minutes('0b10100'), 'wrong-type'],
  ['minutes and seconds', minutes('20:00'), 'wrong-type'],
  ['a gap in the digits', minutes('2_0'), 'wrong-type'],
  ['a decimal comma', severity('0,5'), 'wrong-type'],
  ['a number as text', minutes('"20"'), 'wrong-type'],
  ['a date', minutes('2024-02-30'), 'wrong-type'],
  ['a number for a text', title('2024'), 'wrong-type'],
  ['a true for a text', title('true'), 'wrong-type'],
  ['a yes for a true', with_('refuelled: false', 'refuelled: yes'), 'wrong-type'],
  ['a number that is nearly whole', minutes('20.0000001'), 'not-a-whole-number'],
  ['half a minute less than least', minutes('-5'), 'number-too-small'],
];

const PLACES_FOR_KEYS: readonly (readonly [string, string, string])[] = [
  ['the top', 'seed: short-job\n', 'seed: short-job\nKEY: { polluted: 1 }\n'],
  ['the work order', '  number: T-100\n', '  number: T-100\n  KEY: { polluted: 1 }\n'],
  ['a code', '      status: stored\n', '      status: stored\n      KEY: { polluted: 1 }\n'],
  ['the bench', '  fuel-percent: 50\n', '  fuel-percent: 50\n  KEY: { polluted: 1 }\n'],
  ['a fault', '    severity: 0.5\n', '    severity: 0.5\n    KEY: { polluted: 1 }\n'],
  ['the rules', '  off: []\n', '  off: []\n  KEY: { polluted: 1 }\n'],
];
const KEYS: readonly HostileFile[] = [
  ...['__proto__', 'constructor', 'toString', 'hasOwnProperty'].flatMap((key) =>
    PLACES_FOR_KEYS.map(
      ([where, from, to]): HostileFile => [
        `${key} as a key of ${where}`,
        with_(from, to.replace('KEY', key)),
        'unknown-key',
      ],
    ),
  ),
  ['__proto__ as a key of a condition', walk('{ key: on, __proto__: { phase: closed } }'), 'unknown-key'],
  ['__proto__ for all of a condition', walk('{ __proto__: { key: on } }'), 'unknown-key'],
  ['__proto__ for all of the bench', with_('bench:\n', 'bench:\n  __proto__: { a: 1 }\n'), 'unknown-key'],
  ['a fault by the name of a method', with_('fault: capsule-torn', 'fault: constructor'), 'unknown-fault'],
  ['a mode by the name of a method', with_('mode: practice', 'mode: toString'), 'not-one-of'],
  ['a rule by the name of a method', with_('off: []', 'off: [valueOf]'), 'not-one-of'],
  ['a key twice', `${SCENARIO_TEXT}seed: other\n`, 'duplicate-key'],
  ['a key twice, in quotes once', `${SCENARIO_TEXT}"seed": other\n`, 'duplicate-key'],
  ['a key thousands of times', often(25_000, () => 'seed: x\n'), 'duplicate-key'],
  ['very many keys', `${SCENARIO_TEXT}${often(18_000, (i) => `key${i}: 1\n`)}`, 'unknown-key'],
  ['very many keys in flow', `${SCENARIO_TEXT}extra: {${often(30_000, (i) => `k${i},`)}}\n`, 'unknown-key'],
  ['a key that is a map', `${SCENARIO_TEXT}? { a: 1 }\n: 2\n`, 'key-not-a-word'],
  ['a key that is a list', `${SCENARIO_TEXT}? [a, b]\n: 2\n`, 'key-not-a-word'],
  ['a key that is nothing', `${SCENARIO_TEXT}: 2\n`, 'key-not-a-word'],
  ['a key of a hundred thousand letters', `${SCENARIO_TEXT}${'k'.repeat(100_000)}: 2\n`, 'yaml-syntax'],
  ['a key that looks like another', with_('title:', 'tit\u0456e:'), 'unknown-key'],
  ['a key with a mark of no width', with_('title:', 'ti\u200btle:'), 'hidden-character'],
];

const SIZES: readonly HostileFile[] = [
  ['a byte too many', SCENARIO_TEXT.padEnd(256 * 1024 + 1, '#'), 'too-large'],
  ['very many letters', 'x'.repeat(100 * 1024 * 1024), 'too-large'],
  ['very many line ends', '\n'.repeat(262_000), 'not-a-map'],
  ['a very long line', title('x'.repeat(200_000)), 'text-too-long'],
  ['a very long line in quotes', title(`"${'x'.repeat(200_000)}"`), 'text-too-long'],
  [
    'a very long folded text',
    with_('remark: Nothing more to say.', `remark: >-\n${often(30_000, () => '  more\n')}`),
    'text-too-long',
  ],
  ['very many aims', with_('aims:\n', `aims:\n${often(40_000, () => '  - a\n')}`), 'list-too-long'],
  [
    'very many aims of the wrong type',
    with_('aims:\n', `aims:\n${often(40_000, () => '  - 1\n')}`),
    'list-too-long',
  ],
  [
    'very many faults',
    with_('faults:\n', `faults:\n${often(12_000, () => '  - fault: none\n')}`),
    'list-too-long',
  ],
  [
    'very many steps',
    `${with_('mode: practice', 'mode: walkthrough')}walkthrough:\n${often(5000, () => '  - { id: one, say: Do., how: So., done: {} }\n')}`,
    'list-too-long',
  ],
  ['an id of 61 letters', with_('id: short-job', `id: ${'a'.repeat(61)}`), 'text-too-long'],
  ['an id that backtracks', with_('id: short-job', `id: ${'a-'.repeat(40_000)}!`), 'text-too-long'],
  ['very many comments that open', `${SCENARIO_TEXT}${'# {[\n'.repeat(40_000)}extra: 1\n`, 'unknown-key'],
  ['very many quotes that open', `${SCENARIO_TEXT}x: ${'"'.repeat(100_000)}`, 'yaml-syntax'],
  ['very many things that are not YAML', '@ %\n'.repeat(60_000), 'yaml-syntax'],
  ['very many closed brackets', ']'.repeat(200_000), 'brackets-closed'],
  ['a bracket that was not opened', with_('off: []', 'off: []]'), 'yaml-syntax'],
  ['very many tags', `a: [${'!a b,'.repeat(40_000)}]`, 'tag-not-allowed'],
  ['very many documents', '--- a\n'.repeat(40_000), 'several-documents'],
  ['very many hidden characters', title(`a${'\u200b'.repeat(80_000)}`), 'hidden-character'],
  ['very many tabs', `${'\t'.repeat(200_000)}a: 1`, 'yaml-syntax'],
  ['very many spaces', `${' '.repeat(200_000)}a: 1`, 'unknown-key'],
];

const LETTERS: readonly HostileFile[] = [
  ['a bell', title('"A \u0007 job"'), 'hidden-character'],
  ['a colour for the terminal', title('"A \\u001b[31m job"'), 'hidden-character'],
  ['a colour for the terminal, as it is', title('A \u001b[31m job'), 'hidden-character'],
  ['a backspace', title('A \b job'), 'hidden-character'],
  ['a carriage return alone', title('"A \\r job"'), 'hidden-character'],
  ['an override of direction', title('A \u202eboj trohs'), 'hidden-character'],
  ['an override of direction, escaped', title('"A \\u202e job"'), 'hidden-character'],
  ['an isolate of direction', title('A \u2066job\u2069'), 'hidden-character'],
  ['an override of direction in a comment', `# \u202e no-op\n${SCENARIO_TEXT}`, 'hidden-character'],
  ['a space of no width', title('A\u200b short job'), 'hidden-character'],
  ['a joiner in a fault', with_('capsule-torn', 'capsule\u2060-torn'), 'hidden-character'],
  ['a soft hyphen', title('A sh\u00adort job'), 'hidden-character'],
  ['a mark of byte order inside', title('A \ufeff job'), 'hidden-character'],
  ['a letter of tags', title('A \u{e0041} job'), 'hidden-character'],
  ['half a pair', title('"A \\ud800 job"'), 'hidden-character'],
  ['half a pair as it is', title('A \ud800 job'), 'hidden-character'],
  ['a letter beyond all letters', title('"A \\U00110000 job"'), 'yaml-syntax'],
  ['a line separator', title('A \u2028 job'), 'hidden-character'],
  ['what a decoder leaves of Latin-1', title('A caf\ufffd job'), 'unreadable-character'],
  ['a zero byte', title('A \u0000 job'), 'not-text'],
  ['zero bytes', '\u0000'.repeat(100_000), 'not-text'],
  ['text of two bytes a letter', [...SCENARIO_TEXT].join('\u0000'), 'not-text'],
  ['binary', Array.from({ length: 4000 }, (_, i) => String.fromCharCode(i % 256)).join(''), 'not-text'],
  [
    'binary without zeros',
    Array.from({ length: 4000 }, (_, i) => String.fromCharCode(1 + (i % 255))).join(''),
    'hidden-character',
  ],
  ['an id in another form of its letters', with_('id: short-job', 'id: cafe\u0301'), 'bad-form'],
  ['an id with a letter from elsewhere', with_('id: short-job', 'id: sh\u043ert-job'), 'bad-form'],
  ['an id in capitals', with_('id: short-job', 'id: Short-Job'), 'bad-form'],
  ['an id that climbs', with_('id: short-job', 'id: ../../etc/passwd'), 'bad-form'],
  ['an id from the root', with_('id: short-job', 'id: /etc/passwd'), 'bad-form'],
  ['an id with a backslash', with_('id: short-job', 'id: a\\b'), 'bad-form'],
  ['an id that is an address', with_('id: short-job', 'id: "javascript:alert(1)"'), 'bad-form'],
  ['an id with markup', with_('id: short-job', 'id: <b>x</b>'), 'bad-form'],
  ['a seed with a line end', with_('seed: short-job', 'seed: "short\\n"'), 'bad-form'],
];

const YAML: readonly HostileFile[] = [
  ['nothing', '', 'not-a-map'],
  ['only comments', '# a\n# b\n', 'not-a-map'],
  ['only a mark of byte order', '\ufeff', 'not-a-map'],
  ['a word', 'scenario', 'not-a-map'],
  ['a list', '- 1\n- 2\n', 'not-a-map'],
  ['null', 'null\n', 'not-a-map'],
  ['JSON of something else', '{"a": {"b": [1, 2]}}', 'unknown-key'],
  ['a page of the web', '<!doctype html>\n<script>alert(1)</script>\n', 'not-a-map'],
  ['two documents', `${SCENARIO_TEXT}---\na: 1\n`, 'several-documents'],
  ['a document twice', `${SCENARIO_TEXT}...\n---\n${SCENARIO_TEXT}`, 'several-documents'],
  ['a version of its own', `%YAML 1.1\n---\n${SCENARIO_TEXT}`, 'directive-not-allowed'],
  ['handles of tags', `%TAG ! tag:example.org,2000:\n---\n${SCENARIO_TEXT}`, 'directive-not-allowed'],
  ['a tag of its own', with_('seed: short-job', 'seed: !run short-job'), 'tag-not-allowed'],
  ['a tag of a language', title('!!js/function "function () {}"'), 'tag-not-allowed'],
  ['a tag of another', title('!!python/object/apply:os.system ["ls"]'), 'tag-not-allowed'],
  ['a tag of bytes', title('!!binary aGVsbG8='), 'tag-not-allowed'],
  ['a tag that turns text into a number', minutes('!!int "20"'), 'tag-not-allowed'],
  ['a tag by its whole name', title('!<tag:example.org,2000:x> A'), 'tag-not-allowed'],
  ['a broken quote', title('"A'), 'yaml-syntax'],
  ['a tab as indent', with_('  number', '\tnumber'), 'yaml-syntax'],
  ['an indent too little', with_('  vehicle', ' vehicle'), 'yaml-syntax'],
  ['a colon in a text', title('A job: a short one'), 'yaml-syntax'],
  ['a list where text belongs', title('[A, short, job]'), 'wrong-type'],
  ['a map where text belongs', title('{ A: job }'), 'unknown-key'],
  ['text where a list belongs', with_('aims:\n  - Say what the readings show.', 'aims: one'), 'wrong-type'],
  [
    'a map where a list belongs',
    with_('faults:\n  - fault: capsule-torn\n    severity: 0.5', 'faults: { fault: fuse-blown }'),
    'wrong-type',
  ],
  ['null everywhere', SCENARIO_TEXT.replace(/: [^\n{[]+$/gm, ': null'), 'wrong-type'],
  ['empty everywhere', SCENARIO_TEXT.replace(/^(\S+):.*\n(?:[ ].*\n)*/gm, '$1:\n'), 'wrong-type'],
  ['text of blanks alone', title('"   "'), 'text-empty'],
];

const more = (written: string): string => `${SCENARIO_TEXT}${written}\n`;
const renewed = (written: string): string => with_('  codes:', `  renewed: ${written}\n  codes:`);

/** The keys of what a job asks for beside the usual, and texts by language. */
const TERMS: readonly HostileFile[] = [
  ['a tool that is a prototype', more('tools: [__proto__, constructor]'), 'not-one-of'],
  ['tools that are a map', more('tools: { meter: true }'), 'wrong-type'],
  ['tools by the thousand', more(`tools: [${'meter,'.repeat(20_000)}]`), 'list-too-long'],
  ['a tool by an alias', more('tools: [&m meter, *m]'), 'alias-not-allowed'],
  [
    'weights that are no numbers',
    more('weights: { verdict: .nan, evidence: .inf, method: x, economy: [], repair: {} }'),
    'not-finite',
  ],
  [
    'weights that overflow',
    more('weights: { verdict: 1e999, evidence: 40, method: 20, economy: 10, repair: 10 }'),
    'not-finite',
  ],
  [
    'weights below nothing',
    more('weights: { verdict: -40, evidence: 60, method: 60, economy: 10, repair: 10 }'),
    'number-too-small',
  ],
  [
    'weights that pass a hundred by their sum',
    more('weights: { verdict: 60, evidence: 60, method: 60, economy: 60, repair: 60 }'),
    'weights-sum',
  ],
  ['weights with a prototype', more('weights: { __proto__: { verdict: 100 } }'), 'missing-key'],
  ['a limit beyond all work', more('limits: { minutes: 999999999999999999999 }'), 'number-too-large'],
  ['a limit in another writing', more('limits: { minutes: 0x40 }'), 'number-not-plain'],
  ['a limit that is a text', more('limits: { dollars: "400; rm -rf /" }'), 'wrong-type'],
  ['a limit of another kind', more('limits: { hours: 2 }'), 'unknown-key'],
  ['a part that is a prototype', renewed('[__proto__]'), 'not-one-of'],
  ['a part that is a map of parts', renewed('[{ unit: unit }]'), 'not-one-of'],
  ['a rule that is a prototype', with_('off: []', 'off: []\n  on: [constructor]'), 'not-one-of'],
  [
    'a seed with a policy of its own',
    with_('seed: short-job', 'seed: { word: short-job, policy: always-mine }'),
    'not-one-of',
  ],
  ['a seed without a word', with_('seed: short-job', 'seed: { policy: fixed }'), 'missing-key'],
  ['a language that is a prototype', title('{ __proto__: A job, en: A job }'), 'unknown-key'],
  ['a language that nobody speaks here', title('{ xx: A job }'), 'unknown-key'],
  ['a text in a language by an alias', title('{ en: &a A job, es: *a }'), 'alias-not-allowed'],
  ['a text in a language that turns around', title('{ en: A job, es: "a \\u202e b" }'), 'hidden-character'],
  ['a text in a language that is a list', title('{ en: [A, job] }'), 'wrong-type'],
  ['a text in a language that is a text in languages', title('{ en: { en: { en: A job } } }'), 'wrong-type'],
  ['a text in a language without end', title(`{ es: ${'x'.repeat(100_000)} }`), 'text-too-long'],
  ['the same language twice', title('{ en: A job, en: Another }'), 'duplicate-key'],
];

/** Files that mean harm or came to it. Each is data, made by a rule where it is long. */
export const HOSTILE: readonly HostileFile[] = [
  ...GROWTH,
  ...DEPTH,
  ...NUMBERS,
  ...KEYS,
  ...SIZES,
  ...LETTERS,
  ...YAML,
  ...TERMS,
];
