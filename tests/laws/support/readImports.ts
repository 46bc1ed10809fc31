import { isNode, lineAt, type Node, parseFile, walkSyntax } from './syntax.ts';

export interface ImportFound {
  /** As written, without a `?query`. */
  readonly from: string;
  readonly line: number;
  /** True only for `import type`, `export type … from` and `import('…').Name` in a type: what leaves no trace when run. */
  readonly typeOnly: boolean;
}

/** Every import, re-export, dynamic import and type import of a TypeScript file. */
export function readImports(path: string, text: string): readonly ImportFound[] {
  const found: ImportFound[] = [];
  walkSyntax(parseFile(path, text).program, (node) => {
    const source = sourceOf(node);
    if (source === null) return;
    const typeOnly = node.importKind === 'type' || node.exportKind === 'type' || node.type === 'TSImportType';
    found.push({ from: source.split('?')[0] ?? source, line: lineAt(text, node.start), typeOnly });
  });
  return found;
}

function sourceOf(node: Node): string | null {
  switch (node.type) {
    case 'ImportDeclaration':
    case 'ExportNamedDeclaration':
    case 'ExportAllDeclaration':
    case 'ImportExpression':
    case 'TSImportType':
    case 'TSExternalModuleReference':
      return literal(node.source ?? node.argument ?? node.expression);
    default:
      return null;
  }
}

function literal(value: unknown): string | null {
  if (!isNode(value)) return null;
  if (typeof value.value === 'string') return value.value;
  return isNode(value.literal) ? literal(value.literal) : null;
}
