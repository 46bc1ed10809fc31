import { finish, highPass, lowPass, mix, noise, SAMPLE_RATE, shape, silence, strike } from './synthesis.ts';

/** The plunger lands on its seat: a hard iron tick with a little of the housing in it. */
function clickOn(): Int16Array {
  const sound = silence(0.09);
  mix(sound, 0, shape(highPass(noise(0.002, 11), 1500), fadeOut(1)), 0.7);
  strike(sound, 0, [
    { hertz: 340, gain: 0.55, decayMs: 14 },
    { hertz: 1870, gain: 0.8, decayMs: 7 },
    { hertz: 3140, gain: 0.6, decayMs: 5 },
    { hertz: 4720, gain: 0.35, decayMs: 3 },
  ]);
  return finish(shape(sound, fadeEnd), 0.85);
}

/** The spring puts the plunger back: duller, lower, and with one small bounce. */
function clickOff(): Int16Array {
  const sound = silence(0.12);
  const ring = [
    { hertz: 205, gain: 0.9, decayMs: 22 },
    { hertz: 910, gain: 0.5, decayMs: 8 },
    { hertz: 1630, gain: 0.25, decayMs: 5 },
  ];
  mix(sound, 0, shape(lowPass(noise(0.003, 23), 1800), fadeOut(1)), 0.8);
  strike(sound, 0, ring);
  strike(
    sound,
    17,
    ring.map((mode) => ({ ...mode, gain: mode.gain * 0.3 })),
  );
  return finish(shape(sound, fadeEnd), 0.7);
}

/** The meter's continuity tone. Whole cycles only, so that the end joins the start. */
function tone(): Int16Array {
  const cycles = 990;
  const sound = silence(0.5);
  return finish(
    sound.map((_, i) => {
      const turn = (2 * Math.PI * cycles * i) / sound.length;
      return Math.sin(turn) + 0.2 * Math.sin(3 * turn);
    }),
    0.4,
  );
}

/** Air let in: a rush that thins out. */
function hiss(): Int16Array {
  const rush = highPass(lowPass(noise(0.8, 37), 6000), 900);
  return finish(
    shape(rush, (place) => Math.min(1, place * 40) * Math.exp(-4 * place) * (1 - place)),
    0.5,
  );
}

/** One stroke of the hand pump: the piston draws, then comes home. */
function pump(): Int16Array {
  const sound = silence(0.42);
  const swell = (place: number) => Math.sin(Math.PI * place) ** 2;
  mix(sound, 0, shape(lowPass(highPass(noise(0.22, 41), 300), 1400), swell), 1);
  mix(sound, 230, shape(lowPass(highPass(noise(0.17, 43), 500), 2400), swell), 0.5);
  strike(sound, 385, [
    { hertz: 260, gain: 0.25, decayMs: 8 },
    { hertz: 1240, gain: 0.08, decayMs: 4 },
  ]);
  return finish(shape(sound, fadeEnd), 0.5);
}

/** A lead made or broken under current: a few dry crackles. */
function spark(): Int16Array {
  const sound = silence(0.09);
  for (const [atMs, gain] of [
    [0, 1],
    [9, 0.45],
    [15, 0.7],
    [34, 0.3],
    [41, 0.2],
  ] as const) {
    mix(sound, atMs, shape(highPass(noise(0.006, 53 + atMs), 2500), fadeOut(5)), gain);
  }
  return finish(shape(sound, fadeEnd), 0.7);
}

/** A fuse element lets go inside its housing: a small dull pop. */
function fusePop(): Int16Array {
  const sound = silence(0.14);
  mix(sound, 0, shape(lowPass(noise(0.012, 61), 2500), fadeOut(3)), 0.9);
  strike(sound, 1, [
    { hertz: 165, gain: 1, decayMs: 24 },
    { hertz: 430, gain: 0.5, decayMs: 11 },
  ]);
  return finish(shape(sound, fadeEnd), 0.75);
}

/** A relay pulls in: two light ticks close together. */
function relay(): Int16Array {
  const sound = silence(0.06);
  const ring = [
    { hertz: 2480, gain: 0.6, decayMs: 3 },
    { hertz: 3890, gain: 0.4, decayMs: 2 },
    { hertz: 620, gain: 0.3, decayMs: 5 },
  ];
  strike(sound, 0, ring);
  strike(
    sound,
    5,
    ring.map((mode) => ({ ...mode, gain: mode.gain * 0.6 })),
  );
  return finish(shape(sound, fadeEnd), 0.5);
}

/** A plastic barb splits under its clamp: a brittle snap in two parts. */
function barbCrack(): Int16Array {
  const sound = silence(0.11);
  for (const [atMs, gain] of [
    [0, 1],
    [13, 0.5],
  ] as const) {
    mix(sound, atMs, shape(highPass(noise(0.005, 71 + atMs), 900), fadeOut(3)), gain);
    strike(sound, atMs, [
      { hertz: 1130, gain: 0.5 * gain, decayMs: 6 },
      { hertz: 2710, gain: 0.4 * gain, decayMs: 4 },
    ]);
  }
  return finish(shape(sound, fadeEnd), 0.8);
}

/** A wall gives way under pressure: lower than a barb, with the hollow of the vessel behind it. */
function shellCrack(): Int16Array {
  const sound = silence(0.24);
  mix(sound, 0, shape(highPass(noise(0.008, 103), 500), fadeOut(3)), 0.9);
  strike(sound, 2, [
    { hertz: 310, gain: 0.7, decayMs: 34 },
    { hertz: 760, gain: 0.5, decayMs: 16 },
    { hertz: 1890, gain: 0.3, decayMs: 6 },
  ]);
  mix(sound, 40, shape(lowPass(noise(0.16, 107), 1600), fadeOut(2)), 0.25);
  return finish(shape(sound, fadeEnd), 0.75);
}

/** The manometer's water goes up the hose: a run of bubbles, each a short falling note, faster and higher to the end. */
function gurgle(): Int16Array {
  const sound = silence(0.7);
  let atMs = 0;
  for (let i = 0; i < 11; i++) {
    const hertz = 240 + 34 * i + (i % 3) * 55;
    strike(sound, atMs, [
      { hertz, gain: 0.8, decayMs: 22 },
      { hertz: hertz * 1.52, gain: 0.3, decayMs: 12 },
    ]);
    atMs += 74 - 4 * i;
  }
  const rush = shape(lowPass(highPass(noise(0.6, 83), 250), 1200), (place) => Math.sin(Math.PI * place) ** 2);
  mix(sound, 20, rush, 0.35);
  return finish(shape(sound, fadeEnd), 0.6);
}

/** Insulation burns: a hiss that swells and spits. */
function sizzle(): Int16Array {
  const sound = silence(0.75);
  const swell = (place: number) => Math.min(1, place * 6) * (1 - place);
  mix(sound, 0, shape(highPass(noise(0.72, 89), 2600), swell), 0.5);
  for (const [atMs, gain] of [
    [60, 0.7],
    [150, 0.5],
    [185, 0.9],
    [330, 0.6],
    [420, 0.35],
  ] as const) {
    mix(sound, atMs, shape(highPass(noise(0.012, 97 + atMs), 1800), fadeOut(4)), gain);
  }
  return finish(shape(sound, fadeEnd), 0.55);
}

/** Every sound by the name of its file. */
export const RECIPES = {
  'click-on': clickOn,
  'click-off': clickOff,
  tone,
  hiss,
  pump,
  spark,
  'fuse-pop': fusePop,
  relay,
  'barb-crack': barbCrack,
  'shell-crack': shellCrack,
  gurgle,
  sizzle,
} as const;

export type SoundName = keyof typeof RECIPES;

/** Length of a sound in seconds. */
export function secondsOf(samples: Int16Array): number {
  return samples.length / SAMPLE_RATE;
}

function fadeOut(steepness: number): (place: number) => number {
  return (place) => (1 - place) ** steepness;
}

/** Brings the last fifth down to nothing, so that no sound ends in a click. */
function fadeEnd(place: number): number {
  return place < 0.8 ? 1 : (1 - place) / 0.2;
}
