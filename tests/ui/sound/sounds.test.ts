import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { RECIPES, type SoundName, secondsOf } from '../../../assets/sounds/recipes.ts';
import { SAMPLE_RATE } from '../../../assets/sounds/synthesis.ts';
import { fromWav, toWav } from '../../../assets/sounds/wav.ts';
import { SOUND_FILES } from '../../../src/ui/sound/soundFiles.ts';

const folder = join(dirname(fileURLToPath(import.meta.url)), '..', '..', '..', 'assets', 'sounds');
const names = Object.keys(RECIPES) as SoundName[];
const bytesOf = (name: string) => new Uint8Array(readFileSync(join(folder, `${name}.wav`)));

describe('the sound files', () => {
  it('are those that the recipes make and the program plays, and no others', () => {
    const files = readdirSync(folder).filter((file) => file.endsWith('.wav'));
    expect(files.sort()).toEqual(names.map((name) => `${name}.wav`).sort());
    expect(Object.keys(SOUND_FILES).sort()).toEqual([...names].sort());
  });

  it.each(names)('%s is what its recipe makes, to one step of 16 bits', (name) => {
    expect(farthestApart(fromWav(bytesOf(name)), RECIPES[name]())).toBeLessThanOrEqual(1);
  });

  it.each(names)('%s is small, does not clip, and begins and ends quietly', (name) => {
    expect(bytesOf(name).length).toBeLessThanOrEqual(40 * 1024);
    const samples = fromWav(bytesOf(name));
    const loudest = samples.reduce((most, sample) => Math.max(most, Math.abs(sample)), 0);
    expect(loudest).toBeGreaterThan(8_000);
    expect(loudest).toBeLessThan(32_767);
    if (name !== 'tone') expect(Math.abs(samples.at(-1) ?? 0)).toBeLessThan(300);
  });

  it('has a tone whose end joins its start', () => {
    const samples = fromWav(bytesOf('tone'));
    const steps = Array.from(samples, (sample, i) =>
      Math.abs(sample - (samples[i - 1] ?? samples.at(-1) ?? 0)),
    );
    expect(steps[0]).toBeLessThanOrEqual(Math.max(...steps.slice(1)));
  });

  it('has two solenoid clicks that cannot be taken for one another', () => {
    const on = fromWav(bytesOf('click-on'));
    const off = fromWav(bytesOf('click-off'));
    expect(centreOfPitch(on)).toBeGreaterThan(2 * centreOfPitch(off));
    expect(secondsOf(on)).toBeLessThan(0.15);
    expect(secondsOf(off)).toBeLessThan(0.15);
  });
});

describe('the comparison of sounds', () => {
  it('sees a changed sample and a changed length', () => {
    const made = RECIPES['click-on']();
    const changed = Int16Array.from(made, (sample, i) => (i === 500 ? sample + 2 : sample));
    expect(farthestApart(made, changed)).toBe(2);
    expect(farthestApart(made, made.slice(1))).toBe(Number.POSITIVE_INFINITY);
  });

  it('reads back what it wrote, and nothing else', () => {
    const samples = Int16Array.from([0, 1, -1, 32_767, -32_768]);
    expect(fromWav(toWav(samples))).toEqual(samples);
    expect(() => fromWav(toWav(samples).fill(0, 20, 24))).toThrow('not a WAV file');
  });
});

function farthestApart(a: Int16Array, b: Int16Array): number {
  if (a.length !== b.length) return Number.POSITIVE_INFINITY;
  return a.reduce((most, sample, i) => Math.max(most, Math.abs(sample - (b[i] ?? 0))), 0);
}

/** Mean frequency in Hz, weighted by power, from a plain discrete Fourier transform. */
function centreOfPitch(samples: Int16Array): number {
  let power = 0;
  let weighted = 0;
  for (let hertz = 50; hertz < SAMPLE_RATE / 2; hertz += 50) {
    let real = 0;
    let imaginary = 0;
    samples.forEach((sample, i) => {
      const turn = (2 * Math.PI * hertz * i) / SAMPLE_RATE;
      real += sample * Math.cos(turn);
      imaginary += sample * Math.sin(turn);
    });
    const here = real * real + imaginary * imaginary;
    power += here;
    weighted += hertz * here;
  }
  return weighted / power;
}
