/** Where a command writes, and what it ends with: 0 all well, 1 a claim does not hold, 2 a file or command is wrong. */
export interface Output {
  readonly out: (line: string) => void;
  readonly err: (line: string) => void;
}
export type ExitCode = 0 | 1 | 2;

export function writeJson({ out }: Output, value: unknown): void {
  out(JSON.stringify(value, null, 2));
}
