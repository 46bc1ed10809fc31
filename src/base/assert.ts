/** A broken invariant: the message carries its numbers. Never used for bad input (that is a `Result`). */
export class InvariantError extends Error {
  override readonly name = 'InvariantError';
}

/** Throws an `InvariantError` with the values in its message when `condition` is false. */
export function assert(
  condition: boolean,
  message: string,
  values: Readonly<Record<string, unknown>> = {},
): asserts condition {
  if (condition) return;
  throw new InvariantError(`${message} ${JSON.stringify(values)}`);
}

/** Marks a switch arm that the types say is never reached. */
export function unreachable(value: never): never {
  throw new InvariantError(`unreachable case ${JSON.stringify(value)}`);
}
