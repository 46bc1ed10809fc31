import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

interface Graded {
  readonly code: number;
  readonly text: string;
}

/** What the command line says of an exported record, with other options than usual behind it. Two may be asked for at a time. */
export async function grade(file: string, ...options: readonly string[]): Promise<Graded> {
  const said = ['node_modules/tsx/dist/cli.mjs', 'src/cli/main.ts', 'grade', file, ...options];
  try {
    const { stdout } = await promisify(execFile)('node', said, { cwd: ROOT, encoding: 'utf8' });
    return { code: 0, text: stdout };
  } catch (error) {
    const failed = error as { code: number; stdout: string; stderr: string };
    return { code: failed.code, text: failed.stdout + failed.stderr };
  }
}
