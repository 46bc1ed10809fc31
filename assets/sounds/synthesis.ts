/** Sample rate of every sound, Hz. Enough for ticks up to 11 kHz at half the size of the usual rate. */
export const SAMPLE_RATE = 22_050;

/** A sound in the making: samples from −1 to 1. */
export type Samples = Float64Array;

export function silence(seconds: number): Samples {
  return new Float64Array(Math.round(seconds * SAMPLE_RATE));
}

/** White noise, −1 to 1, the same for the same seed (a 32-bit linear congruential generator). */
export function noise(seconds: number, seed: number): Samples {
  let state = seed >>> 0;
  return silence(seconds).map(() => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 0x8000_0000 - 1;
  });
}

/** One way a struck body rings: a sine that dies away. */
export interface Mode {
  readonly hertz: number;
  readonly gain: number;
  /** Time to fall to 37 %. */
  readonly decayMs: number;
}

/** Adds ringing modes, struck at a time, in place. */
export function strike(into: Samples, atMs: number, modes: readonly Mode[]): void {
  const first = Math.round((atMs / 1000) * SAMPLE_RATE);
  for (const { hertz, gain, decayMs } of modes) {
    const turn = (2 * Math.PI * hertz) / SAMPLE_RATE;
    const fall = 1000 / (decayMs * SAMPLE_RATE);
    for (let i = first; i < into.length; i++) {
      const n = i - first;
      into[i] = (into[i] ?? 0) + gain * Math.exp(-n * fall) * Math.sin(n * turn);
    }
  }
}

/** Adds another sound, from a time on, in place. */
export function mix(into: Samples, atMs: number, sound: Samples, gain = 1): void {
  const first = Math.round((atMs / 1000) * SAMPLE_RATE);
  sound.forEach((sample, n) => {
    const i = first + n;
    if (i < into.length) into[i] = (into[i] ?? 0) + gain * sample;
  });
}

/** Gives each sample a gain by its place in the sound, 0 at the start to 1 at the end. */
export function shape(sound: Samples, gainAt: (place: number) => number): Samples {
  return sound.map((sample, i) => sample * gainAt(i / sound.length));
}

/** Takes away what is above `hertz` (one pole, 6 dB an octave). */
export function lowPass(sound: Samples, hertz: number): Samples {
  const share = 1 - Math.exp((-2 * Math.PI * hertz) / SAMPLE_RATE);
  let held = 0;
  return sound.map((sample) => {
    held += share * (sample - held);
    return held;
  });
}

/** Takes away what is below `hertz` (one pole, 6 dB an octave). */
export function highPass(sound: Samples, hertz: number): Samples {
  const low = lowPass(sound, hertz);
  return sound.map((sample, i) => sample - (low[i] ?? 0));
}

/** Scales a sound so that its loudest sample is `peak`, as 16-bit whole numbers. */
export function finish(sound: Samples, peak: number): Int16Array {
  const loudest = sound.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
  const scale = loudest === 0 ? 0 : (peak * 32_767) / loudest;
  return Int16Array.from(sound, (sample) => Math.round(sample * scale));
}
