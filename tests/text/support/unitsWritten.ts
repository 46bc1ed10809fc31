/** Units that only one of the two systems knows, as they are written or spoken in English and in Spanish. */
const CUSTOMARY = wholeWords(
  'inHg|inH2O|psi|AWG|cu in|miles?(?! de )|millas?|inch(?:es)?|feet|ft|pulgadas?|pies?|pulg³?|qt|gal|(?<=\\d )in|°F',
);
const METRIC = wholeWords(
  'kPa|hPa|Pa|km|mm²?|mL|(?:kilo|centi|milli|mil[ií])?met(?:re|ro)s?|(?:hecto|kilo)pascal(?:e?s)?|(?<=\\d )[mL]|°C',
);

/** Only whole words: to JavaScript a letter with an accent ends one. `miles de` is Spanish for thousands. */
function wholeWords(words: string): RegExp {
  return new RegExp(`(?<!\\p{L})(?:${words})(?![\\p{L}\\d])`, 'u');
}

/** What a reader of one system cannot read in a sentence: nothing, or the unit that has no other beside it. */
export function foreignUnit(sentence: string, system: 'us' | 'metric'): string | null {
  const us = CUSTOMARY.exec(sentence)?.[0] ?? null;
  if (system === 'metric') return us;
  // SI may stand beside a customary unit, never in its place.
  return us === null ? (METRIC.exec(sentence)?.[0] ?? null) : null;
}

interface Quantity {
  readonly kind: string;
  /** In SI, or in the metric unit of everyday where SI has none. */
  readonly value: number;
  /** Half of the last place that was written, in the same unit. */
  readonly half: number;
}

/**
 * One of each unit in SI. NIST SP 811 (2008), appendix B.8: inHg, inH2O (conventional), psi, mile, foot, inch, cubic inch,
 * liquid quart and gallon.
 */
const ONE: Readonly<Record<string, readonly [kind: string, si: number]>> = {
  inHg: ['pressure', 3386.389],
  inH2O: ['pressure', 249.0889],
  'inches of water': ['pressure', 249.0889],
  'pulgadas de agua': ['pressure', 249.0889],
  psi: ['pressure', 6894.757],
  kPa: ['pressure', 1000],
  hPa: ['pressure', 100],
  miles: ['length', 1609.344],
  millas: ['length', 1609.344],
  km: ['length', 1000],
  ft: ['length', 0.3048],
  pies: ['length', 0.3048],
  'thousandths of an inch': ['length', 2.54e-5],
  'milésimas de pulgada': ['length', 2.54e-5],
  in: ['length', 0.0254],
  pulg: ['length', 0.0254],
  m: ['length', 1],
  mm: ['length', 0.001],
  millimetre: ['length', 0.001],
  milímetro: ['length', 0.001],
  'cu in': ['volume', 1.638706e-5],
  'pulg³': ['volume', 1.638706e-5],
  qt: ['volume', 9.46353e-4],
  gal: ['volume', 3.785412e-3],
  mL: ['volume', 1e-6],
  L: ['volume', 1e-3],
  'Ω per °F': ['ohms a kelvin', 1.8],
  'Ω por °F': ['ohms a kelvin', 1.8],
  'Ω per °C': ['ohms a kelvin', 1],
  'Ω por °C': ['ohms a kelvin', 1],
  '% per °F': ['percent a kelvin', 1.8],
  '% por °F': ['percent a kelvin', 1.8],
  '% per °C': ['percent a kelvin', 1],
  '% por °C': ['percent a kelvin', 1],
  '°C': ['temperature', 1],
  'mm²': ['area', 1],
};
/** Numbers that are written as words, with the small words that come behind them. */
const WORDS: Readonly<Record<string, string>> = {
  'half a': '0.5',
  medio: '0.5',
  'seven tenths of a': '0.7',
  'siete décimas de': '0.7',
  two: '2',
  dos: '2',
  nine: '9',
  nueve: '9',
};
const NUMBER = /\d+(?: \d{3})+|\d+\/\d+|\d+(?:\.\d+)?/;
const UNIT = [...Object.keys(ONE), '°F', 'AWG'].sort((a, b) => b.length - a.length).join('|');
/** Numbers of a passage with their unit: `10 ± 0.8 inH2O` is two, `0 to 30 inHg` is two. */
const PART = new RegExp(`(${NUMBER.source})(?: (?:to|a|±) (${NUMBER.source}))? (${UNIT})(?![\\w²³])`, 'g');

/** Every quantity of a passage. */
export function quantities(passage: string): readonly Quantity[] {
  const digits = Object.entries(WORDS).reduce(
    (text, [word, number]) => text.replace(new RegExp(`(?<!\\p{L})${word}(?!\\p{L})`, 'gu'), number),
    passage,
  );
  return [...digits.matchAll(PART)].flatMap(([, first = '', second, unit = '']) =>
    [first, ...(second === undefined ? [] : [second])].map((written) => quantity(written, unit)),
  );
}

function quantity(written: string, unit: string): Quantity {
  const [over = '', under] = written.replaceAll(' ', '').split('/');
  const number = Number(over) / Number(under ?? 1);
  const last = under === undefined ? 10 ** -(over.split('.')[1]?.length ?? trailingNoughts(over)) : 0;
  if (unit === '°F') return { kind: 'temperature', value: (number - 32) / 1.8, half: last / 3.6 };
  // The area of a gauge number by its definition (ASTM B258, from memory).
  if (unit === 'AWG') {
    const area = (Math.PI / 4) * (0.127 * 92 ** ((36 - number) / 39)) ** 2;
    return { kind: 'area', value: area, half: 0 };
  }
  const [kind, si] = ONE[unit] ?? ['unknown', Number.NaN];
  return { kind, value: number * si, half: (last * si) / 2 };
}

/** `280` is rounded to tens, and so is 300, as far as anybody can tell: minus one place after the point. */
function trailingNoughts(digits: string): number {
  return digits !== '0' && digits.endsWith('0') ? -1 : 0;
}

/** So far a rough figure may lie from what it stands for; and so far at most where a figure has one place only. */
const APART = 0.03;
const MOST_APART = 0.1;
/** Sizes of wire are named, not rounded: the nearest in the other row may be a tenth off. */
const WIRE_APART = 0.1;

function alike(one: Quantity, other: Quantity): boolean {
  const share = one.kind === 'area' ? WIRE_APART : APART;
  const [finer, coarser] = [Math.min(one.half, other.half), Math.max(one.half, other.half)];
  const apart = Math.max(share * one.value, finer, Math.min(coarser, MOST_APART * one.value));
  return one.kind === other.kind && Math.abs(one.value - other.value) <= apart;
}

/** Whether each quantity of the one passage is found in the other, as near as the two are written. */
export function saysTheSame(us: string, metric: string): boolean {
  const [there, here] = [quantities(us), quantities(metric)];
  return (
    there.length > 0 &&
    here.length > 0 &&
    there.every((one) => here.some((other) => alike(one, other))) &&
    here.every((one) => there.some((other) => alike(one, other)))
  );
}
