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
    smoke: { miss: 0.06, falseAlarm: 0.005 },
    finding: { miss: 0.06, falseAlarm: 0.02 },
    codes: { miss: 0.01, falseAlarm: 0.01 },
    drive: { miss: 0.05, falseAlarm: 0.05 },
    fuse: { miss: 0.01, falseAlarm: 0.01 },
  };

/** Anything at all is a yes half the time; but smoke for no reason has many places to be seen at. */
const ANYTHING_YES: Readonly<Partial<Record<Channel, number>>> = { smoke: 0.1 };

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

/** The greatest likelihood that anything can have: 1 of what is no number, of a number the density at the instrument's best. */
export function sharpest(shown: Shown): number {
  if (shown.kind !== 'number' || typeof shown.value !== 'number') return 1;
  return STUDENT_AT_0 / rectangularSpread(Math.max(shown.half, LEAST_HALF));
}
const LEAST_HALF = 1e-9;

type Answer = Shown['value'];

/** What a suspect would have shown: one answer for each tolerance draw. */
export interface Foretold {
  readonly draws: readonly Answer[];
  /** What its neighbours in degree would have shown, draw by draw; empty where it has none. */
  readonly beside: readonly (readonly Answer[])[];
}

/**
 * A suspect stands for all degrees half the way to its neighbours. Where a neighbour would answer otherwise, the answer
 * changes somewhere between the two: on the average one in eight of an inner suspect's degrees lies beyond on either side,
 * one in four of an outermost one's.
 */
const BEYOND_INNER = 0.125;
const BEYOND_OUTER = 0.25;

/** Share of a suspect's draws, those beyond towards its neighbours with them, of which something is true. */
function share({ draws, beside }: Foretold, is: (value: Answer) => boolean): number {
  const shareOf = (answers: readonly Answer[]): number =>
    answers.filter(is).length / Math.max(answers.length, 1);
  const answering = beside.filter((answers) => answers.length > 0);
  const beyond = answering.length > 1 ? BEYOND_INNER : BEYOND_OUTER;
  const others = answering.reduce((sum, answers) => sum + beyond * shareOf(answers), 0);
  return (1 - beyond * answering.length) * shareOf(draws) + others;
}

/** Likelihood of something shown where a suspect foretells these answers. */
export function likelihood(shown: Shown, foretold: Foretold): number {
  if (foretold.draws.length === 0) return 1;
  switch (shown.kind) {
    case 'number':
      return numberLikelihood(shown, foretold);
    case 'yes-no': {
      const { miss, falseAlarm } = ERROR_RATES[shown.channel];
      const there = share(foretold, (value) => value === true);
      const yes = there * (1 - miss) + (1 - there) * falseAlarm;
      const anyYes = ANYTHING_YES[shown.channel] ?? 0.5;
      if (shown.value) return ANYTHING * anyYes + (1 - ANYTHING) * yes;
      return ANYTHING * (1 - anyYes) + (1 - ANYTHING) * (1 - yes);
    }
    case 'word': {
      const { miss, falseAlarm } = ERROR_RATES[shown.channel];
      const same = share(foretold, (value) => value === shown.value);
      return ANYTHING / 4 + (1 - ANYTHING) * (same * (1 - miss) + (1 - same) * falseAlarm);
    }
  }
}

function numberLikelihood(
  { value, half, channel }: Extract<Shown, { kind: 'number' }>,
  foretold: Foretold,
): number {
  if (value === null || value === 'unstable') {
    const same = share(foretold, (draw) => draw === value);
    return (1 - ANYTHING) * same + ANYTHING * (value === null ? ANYTHING_OVER : ANYTHING_UNSTABLE);
  }
  const size = Math.max(Math.abs(value), SIZE_OF_ONE[channel] ?? 1);
  const anything = (ANYTHING * (1 - ANYTHING_OVER - ANYTHING_UNSTABLE)) / (4 * size);
  const own = numbersOf(foretold.draws);
  const numbers = own.length > 0 ? own : numbersOf(foretold.beside.flat());
  if (numbers.length === 0) return anything;
  const { mean, spread } = meanAndSpread(numbers);
  const instrument = rectangularSpread(Math.max(half, LEAST_HALF));
  const between = rectangularSpread(cellOf(mean, foretold.beside));
  const width = Math.sqrt(instrument * instrument + spread * spread + between * between);
  const density = studentDensity((value - mean) / width) / width;
  return (1 - ANYTHING) * share(foretold, (draw) => typeof draw === 'number') * density + anything;
}

/** Half the way to the farther neighbour is one suspect's own ground. */
function cellOf(mean: number, beside: Foretold['beside']): number {
  let cell = 0;
  for (const answers of beside) {
    const numbers = numbersOf(answers);
    if (numbers.length * 2 <= answers.length) continue;
    const there = numbers.reduce((sum, x) => sum + x, 0) / numbers.length;
    cell = Math.max(cell, Math.abs(there - mean) / 2);
  }
  return cell;
}

function numbersOf(answers: readonly Answer[]): readonly number[] {
  return answers.filter((answer): answer is number => typeof answer === 'number');
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
