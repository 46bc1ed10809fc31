// Writes every sound of the program next to this file. Run after a change to recipes.ts:
//   npx tsx assets/sounds/make-sounds.ts
// The sounds are computed from sines and seeded noise; nothing is recorded. The test in tests/ui/sound makes them again and
// compares them with the files, to one step of the 16 bits (the sines of two machines may differ in their last digit).
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { RECIPES, secondsOf } from './recipes.ts';
import { toWav } from './wav.ts';

const here = dirname(fileURLToPath(import.meta.url));
for (const [name, make] of Object.entries(RECIPES)) {
  const samples = make();
  const wav = toWav(samples);
  writeFileSync(join(here, `${name}.wav`), wav);
  const line = `${name}.wav  ${Math.round(secondsOf(samples) * 1000)} ms  ${(wav.length / 1024).toFixed(1)} KiB\n`;
  process.stdout.write(line);
}
