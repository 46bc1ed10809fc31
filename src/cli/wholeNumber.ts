/** A whole number of the command line within limits; null for anything else. */
export function wholeNumber(given: string, least: number, most: number): number | null {
  if (!/^\d{1,6}$/.test(given)) return null;
  const number = Number(given);
  return number >= least && number <= most ? number : null;
}
