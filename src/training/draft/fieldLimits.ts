import { scenarioJsonSchema } from '../scenario/jsonSchema.ts';

/** What the format asks of a field: the authority is the schema. */
export interface FieldLimits {
  readonly kind: 'text' | 'number' | 'truth' | 'list' | 'group';
  /** May be left out. */
  readonly optional: boolean;
  /** Characters of a text, entries of a list. */
  readonly most: number | null;
  readonly least: number | null;
  readonly lowest: number | null;
  readonly highest: number | null;
  readonly whole: boolean;
  /** May be written in several languages, each under its own key. */
  readonly languages: boolean;
  /** The words, or figures, of which it must be one. */
  readonly options: readonly (string | number)[] | null;
}

interface Node {
  readonly type?: string;
  readonly const?: string | number | boolean;
  readonly enum?: readonly (string | number)[];
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
  readonly minItems?: number;
  readonly maxItems?: number;
  readonly items?: Node;
  readonly anyOf?: readonly Node[];
  readonly properties?: Readonly<Record<string, Node>>;
  readonly required?: readonly string[];
}

const known = new Map<string, FieldLimits | null>();
let root: Node | null = null;

/** The limits of a field by its path in the schema (`work-order.codes[].code`); null for what the format does not know. */
export function fieldLimits(path: string): FieldLimits | null {
  const found = known.get(path);
  if (found !== undefined) return found;
  const limits = lookUp(path);
  known.set(path, limits);
  return limits;
}

function lookUp(path: string): FieldLimits | null {
  root ??= scenarioJsonSchema(() => undefined) as Node;
  let node: Node | undefined = root;
  let optional = false;
  for (const part of path.split(/\.|(?=\[\])/)) {
    if (part === '[]') node = node?.items;
    else {
      const group: Node | undefined = node?.anyOf?.find(({ properties }) => properties !== undefined) ?? node;
      optional = !(group?.required ?? []).includes(part);
      node = group?.properties?.[part];
    }
  }
  return node === undefined ? null : limitsOf(node, optional);
}

/** Of what may be written in a short way and in a long one, the limits are those of the short one. */
function limitsOf(written: Node, optional: boolean): FieldLimits {
  const node = written.anyOf?.[0] ?? written;
  const options =
    node.enum ?? (typeof node.const === 'number' || typeof node.const === 'string' ? [node.const] : null);
  return {
    kind: kindOf(node, options),
    optional,
    most: node.maxLength ?? node.maxItems ?? null,
    least: node.minItems ?? null,
    lowest: node.minimum ?? null,
    highest: node.maximum ?? null,
    whole: node.type === 'integer',
    languages: written.anyOf?.some(({ properties }) => properties?.['es'] !== undefined) === true,
    options,
  };
}

function kindOf(node: Node, options: readonly (string | number)[] | null): FieldLimits['kind'] {
  if (node.type === 'array') return 'list';
  if (node.type === 'object') return 'group';
  if (node.type === 'boolean' || typeof node.const === 'boolean') return 'truth';
  if (options !== null) return options.every((each) => typeof each === 'number') ? 'number' : 'text';
  return node.type === 'number' || node.type === 'integer' ? 'number' : 'text';
}
