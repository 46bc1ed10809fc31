import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));

interface Graded {
  readonly code: number;
  readonly text: string;
}

/** What the command line says of an exported record, with other options than usual behind it. */
export function grade(file: string, ...options: readonly string[]): Graded {
  try {
    const text = execFileSync(
      'node',
      ['node_modules/tsx/dist/cli.mjs', 'src/cli/main.ts', 'grade', file, ...options],
      {
        cwd: ROOT,
        encoding: 'utf8',
      },
    );
    return { code: 0, text };
  } catch (error) {
    const failed = error as { status: number; stdout: string; stderr: string };
    return { code: failed.status, text: failed.stdout + failed.stderr };
  }
}
