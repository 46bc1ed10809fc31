const NUMBER_AND_UNIT = /(\d) (?=[A-Za-zΩ°%µ])/g;

/** Ties numbers to the units behind them, so that no line ends between the two. */
export function keepUnits(text: string): string {
  return text.replace(NUMBER_AND_UNIT, '$1\u00a0');
}
