/** A deep copy of plain JSON state: objects, arrays and what stands in them. Anything else in it would be shared. */
export function copyPlain<T>(state: T): T {
  return copyOf(state) as T;
}

function copyOf(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(copyOf);
  const copy: Record<string, unknown> = { ...value };
  for (const key in copy) {
    const held = copy[key];
    if (typeof held === 'object' && held !== null) copy[key] = copyOf(held);
  }
  return copy;
}
