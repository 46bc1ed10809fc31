import { parseSync } from 'vite';

/** A node of the syntax tree (ESTree with TypeScript's additions), read loosely. */
export interface Node {
  readonly type: string;
  readonly start: number;
  readonly [field: string]: unknown;
}

export interface Syntax {
  readonly program: Node;
  readonly comments: readonly { readonly value: string; readonly start: number }[];
}

/** Parses a TypeScript file. Errors: throws with the parser's first message. */
export function parseFile(path: string, text: string): Syntax {
  const parsed = parseSync(path, text);
  const [first] = parsed.errors;
  if (first !== undefined) throw new Error(`${path}: ${first.message}`);
  return { program: parsed.program as unknown as Node, comments: parsed.comments };
}

/** Calls `visit` with every node below and with its parent, outermost first. */
export function walkSyntax(
  node: Node,
  visit: (node: Node, parent: Node | null) => void,
  parent: Node | null = null,
): void {
  visit(node, parent);
  for (const field of Object.values(node)) {
    for (const child of Array.isArray(field) ? field : [field]) {
      if (isNode(child)) walkSyntax(child, visit, node);
    }
  }
}

export function isNode(value: unknown): value is Node {
  return (
    typeof value === 'object' && value !== null && typeof (value as { type?: unknown }).type === 'string'
  );
}

/** Line number, from 1, of an offset in a text. */
export function lineAt(text: string, offset: number): number {
  return text.slice(0, offset).split('\n').length;
}
