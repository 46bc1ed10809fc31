import { basename } from 'node:path';
import { isNode, lineAt, type Node, parseFile, walkSyntax } from './syntax.ts';

const LONGEST_FILE = 400;
const NAMES_THAT_SAY_NOTHING = /^(types|utils|util|helpers|common|misc|index)\.[mc]?tsx?$/;

/** Tools that read their settings from a default export. */
const SETTINGS = /(^|\/)(vite|vitest|playwright)\.config\.ts$/;

// In two pieces, or this file would break its own rule.
const SILENCERS = new RegExp(`@ts-${'ignore'}|@ts-${'nocheck'}`);

/** Breaches of the rules for a source or test file, one line each. */
export function checkStyle(path: string, text: string): readonly string[] {
  const complaints: string[] = [];
  const lines = text.split('\n').length - (text.endsWith('\n') ? 1 : 0);
  if (lines > LONGEST_FILE) complaints.push(`${path}: ${lines} lines; ${LONGEST_FILE} is the most`);
  if (NAMES_THAT_SAY_NOTHING.test(basename(path)))
    complaints.push(`${path}: the name says nothing about what is inside`);

  const { program, comments } = parseFile(path, text);
  const at = (start: number) => `${path}:${lineAt(text, start)}`;
  for (const comment of comments) {
    if (SILENCERS.test(comment.value))
      complaints.push(`${at(comment.start)}: the type checker may not be silenced`);
  }
  if (isBarrel(program)) complaints.push(`${path}: a barrel: it only passes on what other files export`);
  walkSyntax(program, (node) => {
    const complaint = complaintOf(node, path);
    if (complaint !== null) complaints.push(`${at(node.start)}: ${complaint}`);
  });
  return complaints;
}

function complaintOf(node: Node, path: string): string | null {
  switch (node.type) {
    case 'TSEnumDeclaration':
      return 'an enum; use a union of texts';
    case 'TSAnyKeyword':
      return 'any; use unknown and look';
    case 'ExportAllDeclaration':
      return 'export *; name what is exported, where it is written';
    case 'ExportDefaultDeclaration':
      return SETTINGS.test(path) ? null : 'a default export; give it a name';
    case 'ExportSpecifier':
      return isNode(node.exported) && node.exported.name === 'default'
        ? 'a default export; give it a name'
        : null;
    default:
      return null;
  }
}

function isBarrel(program: Node): boolean {
  const body = (program.body as readonly Node[]).filter((node) => node.type !== 'ImportDeclaration');
  const passesOn = (node: Node) =>
    node.type === 'ExportAllDeclaration' ||
    (node.type === 'ExportNamedDeclaration' && !isNode(node.declaration));
  return body.length > 0 && body.every(passesOn);
}
