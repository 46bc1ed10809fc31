import type { Channel, Shown } from './Shown.ts';

/** Chance that anything at all is shown, for reasons that no suspect holds. */
export const ANYTHING = 0.03;
/** Of that, the share that is over range, and the share that does not settle. */
const ANYTHING_OVER = 0.1;
const ANYTHING_UNSTABLE = 0.1;

/** How often a learner misses what is there, and takes for there what is not. Invented for teaching; only the order is meant. */
export const ERROR_RATES: Readonly<Record<Channel, { readonly miss: number; readonly falseAlarm: number }>> =
  {
    meter: { miss: 0.01, falseAlarm: 0.01 },
    gauge: { miss: 0.01, falseAlarm: 0.01 },
    manometer: { miss: 0.01, falseAlarm: 0.01 },
    'reader-volts': { miss: 0.01, falseAlarm: 0.01 },
    'reader-state': { miss: 0.01, falseAlarm: 0.01 },
    'reader-driver': { miss: 0.01, falseAlarm: 0.01 },
    click: { miss: 0.04, falseAlarm: 0.02 },
    tone: { miss: 0.02, falseAlarm: 0.01 },
    hiss: { miss: 0.08, falseAlarm: 0.03 },
    lamp: { miss: 0.03, falseAlarm: 0.02 },
    led: { miss: 0.03, falseAlarm: 0.02 },
    smoke: { miss: 0.06, falseAlarm: 0.02 },
    finding: { miss: 0.06, falseAlarm: 0.02 },
    codes: { miss: 0.01, falseAlarm: 0.01 },
    drive: { miss: 0.05, falseAlarm: 0.05 },
    fuse: { miss: 0.01, falseAlarm: 0.01 },
  };

/** What is about the size of one in each channel: volts, ohms or amps; kPa. */
const SIZE_OF_ONE: Readonly<Partial<Record<Channel, number>>> = {
  gauge: 10,
  manometer: 2,
  'reader-volts': 3,
};

/**
 * Density of Student's distribution with 7 degrees of freedom about 0, at z standard widths: Γ(4)/(√(7π)·Γ(7/2))·(1 + z²/7)⁻⁴.
 * Eight draws leave seven.
 */
export function studentDensity(z: number): number {
  const base = 1 + (z * z) / 7;
  return STUDENT_AT_0 / (base * base * base * base);
}
const STUDENT_AT_0 = 0.38499145083;

/** Standard uncertainty of a rectangular error of this half-width: a/√3. Source: JCGM 100:2008 (GUM), 4.3.7. */
export function rectangularSpread(half: number): number {
  return half / Math.sqrt(3);
}

type Answer = Shown['value'];

/** What a suspect would have shown: one answer for each tolerance draw. */
export interface Foretold {
  readonly draws: readonly Answer[];
  /** Half the distance to what its neighbours in degree would have shown. */
  readonly cell: number;
}

/** Likelihood of something shown where a suspect foretells these answers. */
export function likelihood(shown: Shown, foretold: Foretold): number {
  if (foretold.draws.length === 0) return 1;
  switch (shown.kind) {
    case 'number':
      return numberLikelihood(shown, foretold);
    case 'yes-no': {
      const { miss, falseAlarm } = ERROR_RATES[shown.channel];
      const there = share(foretold.draws, (value) => value === true);
      const yes = there * (1 - miss) + (1 - there) * falseAlarm;
      return ANYTHING / 2 + (1 - ANYTHING) * (shown.value ? yes : 1 - yes);
    }
    case 'word': {
      const { miss, falseAlarm } = ERROR_RATES[shown.channel];
      const same = share(foretold.draws, (value) => value === shown.value);
      return ANYTHING / 4 + (1 - ANYTHING) * (same * (1 - miss) + (1 - same) * falseAlarm);
    }
  }
}

function numberLikelihood(
  { value, half, channel }: Extract<Shown, { kind: 'number' }>,
  { draws, cell }: Foretold,
): number {
  if (value === null || value === 'unstable') {
    const same = share(draws, (draw) => draw === value);
    return (1 - ANYTHING) * same + ANYTHING * (value === null ? ANYTHING_OVER : ANYTHING_UNSTABLE);
  }
  const numbers = draws.filter((draw): draw is number => typeof draw === 'number');
  const size = Math.max(Math.abs(value), SIZE_OF_ONE[channel] ?? 1);
  const anything = (ANYTHING * (1 - ANYTHING_OVER - ANYTHING_UNSTABLE)) / (4 * size);
  if (numbers.length === 0) return anything;
  const { mean, spread } = meanAndSpread(numbers);
  const instrument = rectangularSpread(Math.max(half, 1e-9));
  const between = rectangularSpread(cell);
  const width = Math.sqrt(instrument * instrument + spread * spread + between * between);
  const density = studentDensity((value - mean) / width) / width;
  return (1 - ANYTHING) * (numbers.length / draws.length) * density + anything;
}

/** Share of its own size by which one draw alone may be off. */
const ALONE = 0.03;

/** Mean of the draws and the standard width of one more, the mean's own uncertainty with it. */
export function meanAndSpread(numbers: readonly number[]): {
  readonly mean: number;
  readonly spread: number;
} {
  const n = numbers.length;
  const mean = numbers.reduce((sum, x) => sum + x, 0) / n;
  const squares = numbers.reduce((sum, x) => sum + (x - mean) * (x - mean), 0);
  const alone = ALONE * mean;
  // One imagined draw of the usual width keeps few draws, or draws all alike, from claiming too much.
  const variance = (squares + (n > 1 ? 0.25 : 1) * alone * alone) / (n - 1 + (n > 1 ? 0.25 : 1));
  return { mean, spread: Math.sqrt(variance * (1 + 1 / n)) };
}

function share(draws: readonly Answer[], is: (value: Answer) => boolean): number {
  return draws.filter(is).length / draws.length;
}
