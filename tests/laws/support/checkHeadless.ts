import { isNode, lineAt, type Node, parseFile, walkSyntax } from './syntax.ts';

/** What a headless file may not touch: clocks, timers, chance, output, the browser, the process, the user's language. */
const FORBIDDEN = new Set([
  ...['Date', 'performance', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask'],
  ...[
    'requestAnimationFrame',
    'requestIdleCallback',
    'crypto',
    'console',
    'process',
    'globalThis',
    'window',
    'self',
  ],
  ...[
    'document',
    'navigator',
    'location',
    'localStorage',
    'sessionStorage',
    'indexedDB',
    'fetch',
    'Worker',
    'Intl',
  ],
  ...['eval', 'Function', 'WeakRef', 'FinalizationRegistry'],
]);

/** Methods whose answer depends on the user's language or on the engine's tables. */
const FORBIDDEN_METHODS = new Set([
  'toLocaleString',
  'toLocaleUpperCase',
  'toLocaleLowerCase',
  'localeCompare',
]);

/** Exact on every engine. The rest of Math may differ in the last bit, and Math.random at will. */
const EXACT_IN_SIM = ['sqrt', 'abs', 'min', 'max', 'floor', 'PI'];
const EXACT_ELSEWHERE = [...EXACT_IN_SIM, 'ceil', 'round', 'trunc', 'sign', 'imul'];

/** Breaches in one file of `base`, `sim` or `training`, one line each. */
export function checkHeadless(path: string, text: string): readonly string[] {
  const { program } = parseFile(path, text);
  const allowedMaths = path.startsWith('src/sim/') ? EXACT_IN_SIM : EXACT_ELSEWHERE;
  const own = ownNames(program);
  const complaints: string[] = [];
  const complain = (node: Node, what: string) =>
    complaints.push(`${path}:${lineAt(text, node.start)}: ${what}`);
  walkSyntax(program, (node, parent) => {
    if (node.type === 'Identifier' && isUse(node, parent)) {
      const name = String(node.name);
      if (FORBIDDEN.has(name) && !own.has(name)) complain(node, `${name} is not for headless code`);
      if (name === 'Math') {
        const member = memberOfMaths(node, parent);
        if (!allowedMaths.includes(member)) complain(node, `Math.${member} may differ between engines`);
      }
    }
    if (node.type === 'MemberExpression' && isNode(node.property)) {
      const method = String(node.property.name);
      if (FORBIDDEN_METHODS.has(method)) complain(node, `${method} depends on the user's language`);
    }
    if (node.operator === '**' || node.operator === '**=')
      complain(node, '** is Math.pow, which may differ between engines');
  });
  return complaints;
}

function memberOfMaths(node: Node, parent: Node | null): string {
  if (parent?.type !== 'MemberExpression' || parent.object !== node) return '(whole)';
  if (parent.computed === true || !isNode(parent.property)) return '[computed]';
  return String(parent.property.name);
}

/** False where an identifier is only the name of a member or key. */
function isUse(node: Node, parent: Node | null): boolean {
  if (parent === null) return true;
  if (parent.type === 'MemberExpression') return parent.object === node || parent.computed === true;
  if (parent.key === node) return parent.computed === true || parent.shorthand === true;
  return true;
}

/** Names that the file itself declares: a local called `window` is a stretch of time, not the browser's. */
function ownNames(program: Node): ReadonlySet<string> {
  const names = new Set<string>();
  const declare = (pattern: unknown): void => {
    if (!isNode(pattern)) return;
    if (pattern.type === 'Identifier') names.add(String(pattern.name));
    else walkSyntax(pattern, (node) => node.type === 'Identifier' && names.add(String(node.name)));
  };
  walkSyntax(program, (node) => {
    if (node.type === 'VariableDeclarator' || node.type === 'FunctionDeclaration') declare(node.id);
    if (node.type === 'ImportSpecifier') declare(node.local);
    if (Array.isArray(node.params))
      for (const param of node.params) if (isNode(param) && param.type === 'Identifier') declare(param);
  });
  return names;
}
