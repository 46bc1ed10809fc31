const UNIT =
  '(?:[kmµM]?[VAΩWF]|[kM]?Hz|[%s]|min|h|°[CF]|[hkm]?Pa|psi|inHg|inH2O|mmHg|[kcm]?m|ft|pies|in|pulg|mi|miles?|millas?|gal|qt|m?L|cu|AWG)';

/** A number before its unit, the halves of a long number, a sign before its number, what is told apart by a number or a letter, a dot behind its part. */
const TIED: readonly RegExp[] = [
  new RegExp(`(\\d) (?=${UNIT}(?![\\p{L}\\d]))`, 'gu'),
  /(\d) (?=\d{3}(?!\d))/g,
  /(±) (?=\d)/g,
  /(cavity|cavidad|terminal) (?=\d)/gi,
  /(plug|cap|tapón|tapa) (?=[A-C](?!\p{L}))/giu,
  /(\S) (?=· )/g,
];

/** Ties numbers to the units behind them, so that no line ends between the two. */
export function keepUnits(text: string): string {
  return TIED.reduce((tied, pattern) => tied.replace(pattern, '$1\u00a0'), text);
}
