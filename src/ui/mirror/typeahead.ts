/**
 * The option that typed letters lead to: the next one, from `now` on and around, that begins with them, or has a word that does.
 * One letter typed again goes on to the next such option. Null when none does.
 */
export function typeahead(options: readonly string[], typed: string, now: number): number | null {
  const wanted = typed.toLowerCase();
  const start = wanted.length === 1 ? now + 1 : now;
  const order = options.map((_, index) => (start + index) % options.length);
  const lower = options.map((option) => option.toLowerCase());
  const begins = order.find((index) => lower[index]?.startsWith(wanted));
  if (begins !== undefined) return begins;
  return order.find((index) => lower[index]?.split(/[\s,]+/).some((word) => word.startsWith(wanted))) ?? null;
}
