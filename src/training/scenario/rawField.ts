/** A key's value in content that nobody has checked; undefined where there is none, or nothing to have keys. */
export function fieldOf(value: unknown, key: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, key)
    ? (value as Readonly<Record<string, unknown>>)[key]
    : undefined;
}
