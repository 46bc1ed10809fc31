/**
 * How far a set of tests can detect faults and tell them apart.
 * `rows[f]` are the outcomes of fault f by test (true: the test fails), `rates[f]` its weight.
 * Source: IEEE 1522-2004, fraction of faults detected and isolated; ambiguity groups are equal rows.
 */
export interface Testability {
  /** Share of the weight that at least one test detects. */
  readonly detected: number;
  /** Ambiguity groups of detected faults, by their numbers, in the order of their first members. */
  readonly groups: readonly (readonly number[])[];
  /** Share of the detected weight in groups of at most `size` faults. */
  readonly isolatedTo: (size: number) => number;
  /** Mean size of the group that a detected fault falls in. */
  readonly meanGroup: number;
}

export function testability(rows: readonly (readonly boolean[])[], rates: readonly number[]): Testability {
  const groups = new Map<string, number[]>();
  for (const [f, row] of rows.entries()) {
    if (!row.includes(true)) continue;
    const key = row.map((fail) => (fail ? '1' : '0')).join('');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [f]);
    else group.push(f);
  }
  const found = [...groups.values()];
  const weight = (faults: readonly number[]): number => faults.reduce((sum, f) => sum + (rates[f] ?? 0), 0);
  const detected = found.reduce((sum, group) => sum + weight(group), 0);
  const all = rates.reduce((sum, rate) => sum + rate, 0);
  const share = (part: number, whole: number): number => (whole > 0 ? part / whole : 0);
  const small = (size: number): number =>
    found.filter((group) => group.length <= size).reduce((sum, group) => sum + weight(group), 0);
  return {
    detected: share(detected, all),
    groups: found,
    isolatedTo: (size) => share(small(size), detected),
    meanGroup: share(
      found.reduce((sum, group) => sum + weight(group) * group.length, 0),
      detected,
    ),
  };
}
