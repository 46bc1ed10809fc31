/**
 * Rows of zeros by name, each as long as asked, all in one block of memory: a block for each would cost more than the few
 * numbers in it.
 */
export function numberRows<Name extends string>(
  lengths: Readonly<Record<Name, number>>,
): Record<Name, Float64Array> {
  const named = Object.entries(lengths) as [Name, number][];
  const block = new Float64Array(named.reduce((sum, [, length]) => sum + length, 0));
  let from = 0;
  const rows = named.map(([name, length]): [Name, Float64Array] => {
    const row = block.subarray(from, from + length);
    from += length;
    return [name, row];
  });
  return Object.fromEntries(rows) as Record<Name, Float64Array>;
}
