import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runCommand } from '../../src/cli/runCommand.ts';

/** What a command wrote, and what it ended with. */
export interface Ran {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export const root = fileURLToPath(new URL('../../', import.meta.url));
const tsx = join(root, 'node_modules', 'tsx', 'dist', 'cli.mjs');

/** Does a command here, without a process of its own: a start takes longer than most commands. */
export async function knownGood(...words: string[]): Promise<Ran> {
  const out: string[] = [];
  const err: string[] = [];
  const code = await runCommand(words, { out: (line) => out.push(line), err: (line) => err.push(line) });
  return { code, out: text(out), err: text(err) };
}

/** Runs the program as a user does. A command that works side by side needs it. */
export function knownGoodProcess(...words: string[]): Ran {
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [tsx, join(root, 'src', 'cli', 'main.ts'), ...words],
    { encoding: 'utf8', cwd: root },
  );
  return { code: status, out: stdout, err: stderr };
}

const text = (lines: readonly string[]): string => lines.map((line) => `${line}\n`).join('');
