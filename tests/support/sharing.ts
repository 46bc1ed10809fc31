/**
 * Folders whose test files share the runner's processes, one after another: what they test is loaded and compiled once for all of
 * them. Every other file has a process of its own: it puts a module in place of another, or tests what keeps things in its modules.
 */
export const SHARING: readonly string[] = [
  ...['base', 'bench', 'coach', 'components', 'evidence', 'faults', 'golden', 'handout', 'learners', 'meter'],
  ...['network', 'proof', 'rigs', 'support', 'text', 'world'],
].map((folder) => `tests/${folder}/**/*.test.ts`);
