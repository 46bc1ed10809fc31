import fc from 'fast-check';
import { RIG_IDS } from '../../src/sim/devices/BenchSurface.ts';
import { BENCH_TOOLS, ITEMS } from '../../src/sim/devices/items.ts';
import { AIR_SITES, EXAMINED_PLACES, FITTINGS, SMOKE_PLACES } from '../../src/sim/devices/places.ts';
import { isRootCause } from '../../src/sim/faults/catalogue.ts';
import { FIRST_RIG, rigNamed } from '../../src/sim/rigs/rigs.ts';
import { areAtHand } from '../../src/training/scenario/benchTools.ts';
import { scenarioJsonSchema } from '../../src/training/scenario/jsonSchema.ts';
import { RULE_NEEDS } from '../../src/training/scenario/ruleNeeds.ts';
import type { ScenarioFile } from '../../src/training/scenario/scenarioSchema.ts';

interface SchemaNode {
  readonly type?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly pattern?: string;
  readonly allOf?: readonly { readonly pattern: string }[];
  readonly anyOf?: readonly SchemaNode[];
  readonly items?: SchemaNode;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly properties?: Readonly<Record<string, SchemaNode>>;
  readonly required?: readonly string[];
  readonly minProperties?: number;
}

/** Texts that a writer of YAML must take care of. */
const AWKWARD = [
  ...[
    'null',
    'true',
    '~',
    '1e3',
    '0x1F',
    '012',
    '2024-01-01',
    '.nan',
    '-',
    '- a',
    '? b',
    'a: b',
    'a #b',
    '# c',
    ': x',
  ],
  ...[
    '[x',
    '{ y: 1 }',
    '&a',
    '*b',
    '!t',
    '|',
    '>',
    '>-',
    '%',
    '@',
    '`',
    "'",
    '"',
    "it's",
    'a "b"',
    '...',
    '---',
    '<<',
    '=',
  ],
  ...[
    ' first',
    'last ',
    '  ',
    '\t',
    '\ta',
    'a\t',
    '\n',
    'a\n',
    'a\n\n',
    '\n\na',
    'a\n\n\nb',
    ' a\n  b',
    'a\n\tb',
    'a \nb',
    '\\',
    '\\n',
  ],
  ...[
    '--- a',
    'a\n---\nb',
    'a\n...\n',
    '\u00e9',
    'e\u0301',
    '\u{1f527}',
    '\u65e5\u672c',
    '\u05d0',
    '__proto__',
    '[15 inHg|51 kPa]',
  ],
];
const word = fc.oneof(
  fc.constantFrom(...AWKWARD),
  fc.string({ unit: 'grapheme', minLength: 1, maxLength: 12 }),
  fc.stringMatching(/^[a-z]{1,14}$/),
  fc.stringMatching(/^[A-Za-z,.;]{1,14}$/),
);
const words = fc
  .array(fc.tuple(word, fc.constantFrom(' ', ' ', ' ', '  ', '\n', '\n\n', '\t', '')), {
    minLength: 1,
    maxLength: 40,
  })
  .map((all) => all.map(([one, space]) => one + space).join(''));

function textOf({ minLength = 0, maxLength = 200, pattern, allOf }: SchemaNode): fc.Arbitrary<string> {
  if (pattern?.startsWith('^[a-z0-9]+(')) return fc.stringMatching(/^[a-z0-9]{1,9}(-[a-z0-9]{1,9}){0,4}$/);
  if (pattern?.startsWith('^[PBCU]')) return fc.stringMatching(/^[PBCU][0-9A-F]{4}$/);
  const forms = (allOf ?? []).map((each) => new RegExp(each.pattern, 'u'));
  return words
    .map((text) => text.slice(0, maxLength))
    .filter((text) => text.length >= minLength && forms.every((form) => form.test(text)));
}

/** Any value that a JSON Schema of the kind in use here lets pass. */
function allowedBy(node: SchemaNode): fc.Arbitrary<unknown> {
  if (node.const !== undefined) return fc.constant(node.const);
  if (node.enum !== undefined) return fc.constantFrom(...node.enum);
  if (node.anyOf !== undefined) return fc.oneof(...node.anyOf.map(allowedBy));
  const { minimum: min = -1e9, maximum: max = 1e9 } = node;
  switch (node.type) {
    case 'string':
      return textOf(node);
    case 'boolean':
      return fc.boolean();
    case 'integer':
      return fc.integer({ min, max });
    case 'number':
      return fc.oneof(fc.double({ min, max, noNaN: true }), fc.integer({ min, max }));
    case 'array': {
      const minLength = node.minItems ?? 0;
      const maxLength = Math.min(node.maxItems ?? 4, minLength + 3);
      return fc.array(allowedBy(node.items ?? {}), { minLength, maxLength });
    }
    case 'object': {
      const fields = Object.fromEntries(
        Object.entries(node.properties ?? {}).map(([key, each]) => [key, allowedBy(each)]),
      );
      const required = [...(node.required ?? [])];
      const optional = Object.keys(fields).filter((key) => !required.includes(key));
      // With very many keys that may be left out, nearly all are.
      const few = optional.length <= 4 ? fc.subarray(optional) : fc.subarray(optional, { maxLength: 4 });
      const least = node.minProperties ?? 0;
      return few
        .filter((chosen) => chosen.length + required.length >= least)
        .chain((chosen) =>
          fc.record(
            Object.fromEntries(
              [...required, ...chosen].map((key) => [key, fields[key] ?? fc.constant(null)]),
            ),
          ),
        );
    }
    default:
      throw new Error(`no value can be made of ${JSON.stringify(node)}`);
  }
}

const startingAt = (rig: ScenarioFile['rig']) => rigNamed(rig).faults.filter(({ weight }) => weight > 0);

/** Faults that may stand together at a rig: each once, with what it asks for. */
const faultsAt = (rig: ScenarioFile['rig']): fc.Arbitrary<ScenarioFile['faults']> =>
  fc.subarray([...startingAt(rig)], { maxLength: 4 }).chain((chosen) => {
    const roots = chosen.filter(({ id }) => isRootCause(id)).map(({ id }) => id);
    const entries = chosen.map(({ id, severity, intermittent }) =>
      fc.record(
        {
          fault: fc.constant(id),
          ...(severity === null ? {} : { severity: fc.double({ min: 0, max: 1, noNaN: true }) }),
          ...(intermittent === 'when-moved' ? { 'when-moved': fc.constant(true as const) } : {}),
          ...(roots.length === 0 ? {} : { root: fc.constantFrom(...roots) }),
        },
        { requiredKeys: severity === null ? ['fault'] : ['fault', 'severity'] } as never,
      ),
    );
    return fc.tuple(...entries);
  }) as fc.Arbitrary<ScenarioFile['faults']>;

/** Any scenario file that loads. */
export const scenarioFiles: fc.Arbitrary<ScenarioFile> = fc
  .tuple(
    allowedBy(scenarioJsonSchema(() => undefined) as SchemaNode) as fc.Arbitrary<ScenarioFile>,
    steps(),
    fc.record(Object.fromEntries(RIG_IDS.map((rig) => [rig, faultsAt(rig)]))),
  )
  .map(([file, walkthrough, faults]) =>
    saidAlike(inAgreement(file, walkthrough, faults[file.rig ?? FIRST_RIG] ?? [])),
  );

function steps(): fc.Arbitrary<NonNullable<ScenarioFile['walkthrough']>> {
  const schema = scenarioJsonSchema(() => undefined) as SchemaNode;
  return allowedBy(schema.properties?.walkthrough ?? {}) as fc.Arbitrary<
    NonNullable<ScenarioFile['walkthrough']>
  >;
}

/** What one field says against another is made to agree; the schema does not know of it. */
function inAgreement(
  { walkthrough: _steps, ...file }: ScenarioFile,
  steps: NonNullable<ScenarioFile['walkthrough']>,
  chosen: ScenarioFile['faults'],
): ScenarioFile {
  const introduction = file.mode === 'introduction';
  const led = introduction || file.mode === 'walkthrough';
  const order = file['work-order'];
  const { renewed, ...orderAlone } = order;
  const { weights, limits, tools, rules, variants, ...rest } = file;
  return {
    ...rest,
    ...(variants === undefined || led
      ? {}
      : { variants: variants.map((one) => ({ ...one, faults: ranged(chosen) })) }),
    seed: led && typeof file.seed === 'object' ? { ...file.seed, policy: 'fixed' } : file.seed,
    ...(tools === undefined ? {} : { tools: led ? [...BENCH_TOOLS] : [...new Set(tools)] }),
    ...(rules === undefined ? {} : { rules: rulesThatAgree(rules, tools) }),
    ...(limits === undefined || introduction || Object.keys(limits).length === 0 ? {} : { limits }),
    ...(weights === undefined || introduction ? {} : { weights: toAHundred(weights) }),
    'work-order': introduction ? { ...orderAlone, codes: [] } : { ...orderAlone, ...once(renewed, file.rig) },
    faults: introduction ? [] : chosen,
    ...(led
      ? {
          walkthrough: steps.map((step, i) => ({
            ...step,
            id: `${step.id.slice(0, 50)}-${i}`,
            done: agreed(step.done, file.rig),
          })),
        }
      : {}),
  };
}

/** Each part that the rig has, once. */
function once(
  renewed: ScenarioFile['work-order']['renewed'],
  rig: ScenarioFile['rig'],
): Pick<ScenarioFile['work-order'], 'renewed'> {
  const { items } = rigNamed(rig).surface;
  return renewed === undefined
    ? {}
    : { renewed: [...new Set(renewed)].filter((item) => items.includes(item)) };
}

/** No rule both on and off, and none on that the tools cannot do. */
function rulesThatAgree(
  { off, on }: NonNullable<ScenarioFile['rules']>,
  tools: ScenarioFile['tools'],
): NonNullable<ScenarioFile['rules']> {
  if (on === undefined) return { off };
  const can = on.filter((rule) => !off.includes(rule) && areAtHand(tools, RULE_NEEDS[rule] ?? []));
  return { off, on: can };
}

/** Faults with the upper end of a range where they have degrees. */
function ranged(faults: ScenarioFile['faults']): ScenarioFile['faults'] {
  return faults.map((fault) =>
    fault.severity === undefined || fault.severity >= 1 ? fault : { ...fault, 'severity-to': 1 },
  );
}

/** A sentence is the same in another language wherever it stands. */
function saidAlike<T>(value: T, said: Map<string, string> = new Map()): T {
  if (Array.isArray(value)) return value.map((each) => saidAlike(each, said)) as T;
  if (typeof value !== 'object' || value === null) return value;
  const { en, es } = value as { readonly en?: unknown; readonly es?: unknown };
  if (typeof en === 'string' && typeof es === 'string') {
    if (!said.has(en)) said.set(en, es);
    return { en, es: said.get(en) } as T;
  }
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, saidAlike(each, said)])) as T;
}

/** Weights that make a hundred, from any. */
function toAHundred(weights: NonNullable<ScenarioFile['weights']>): typeof weights {
  const evidence = Math.max(weights.evidence, 40);
  const verdict = Math.min(weights.verdict, 100 - evidence);
  const method = Math.min(weights.method, 100 - evidence - verdict);
  const economy = Math.min(weights.economy, 100 - evidence - verdict - method);
  return { verdict, evidence, method, economy, repair: 100 - evidence - verdict - method - economy };
}

type Done = NonNullable<ScenarioFile['walkthrough']>[number]['done'];

/** A condition of things that the rig has, and of a way in which the named item may fail. */
function agreed(done: Done, rig: ScenarioFile['rig']): Done {
  const { items, sites, fittings, examined, smokePlaces } = rigNamed(rig).surface;
  const has = new Set<string>([...items, ...sites, ...fittings, ...examined, ...smokePlaces]);
  const isThere = (value: unknown): boolean =>
    typeof value === 'object' && value !== null
      ? Object.values(value).every(isThere)
      : typeof value !== 'string' || !OF_SOME_RIG.has(value) || has.has(value);
  const kept = Object.fromEntries(Object.entries(done).filter(([, value]) => isThere(value))) as Done;
  const there: Done = Object.keys(kept).length > 0 ? kept : { key: 'on' };
  if (there.named?.mode === undefined) return there;
  const { item } = there.named;
  const mode = startingAt(rig).find((fault) => fault.item === item)?.mode;
  return { ...there, named: mode === undefined ? { item } : { item, mode } };
}

/** Names that one rig has and another may lack. */
const OF_SOME_RIG: ReadonlySet<string> = new Set<string>([
  ...ITEMS,
  ...AIR_SITES,
  ...FITTINGS,
  ...EXAMINED_PLACES,
  ...SMOKE_PLACES,
]);
