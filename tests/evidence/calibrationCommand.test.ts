import { expect, it } from 'vitest';
import { calibration } from '../../src/cli/calibration.ts';
import { calibrationLines } from '../../src/text/cliCalibration.ts';
import { calibrationTable } from '../../src/training/evidence/calibration.ts';

it.each([
  ['--sittings', '0'],
  ['--sittings', '-3'],
  ['--sittings', 'many'],
  ['--live', '1000000'],
])('%s asks for a whole number of sittings instead of %s', async (option, given) => {
  const said: string[] = [];
  const output = { out: (): void => undefined, err: (text: string): void => void said.push(text) };
  expect(await calibration({ files: [], json: false, options: { [option]: given }, flags: [] }, output)).toBe(
    2,
  );
  expect(said.join()).toContain(`${option} ${given}`);
});

const claims = [0.93, 0.97, 0.42].map((chance, i) => ({
  seed: `sitting ${i}`,
  truth: 'fuse-blown',
  tools: i === 1 ? ['meter-lead-open'] : [],
  claimed: 'plug',
  right: i !== 1,
  shown: chance,
  confirming: chance,
  leads: true,
}));

it('prints a row for each bin that has claims, with its interval, and says which path it was', () => {
  const table = calibrationTable(claims, 'shown');
  const lines = calibrationLines('live', [table], true);
  expect(lines[0]).toContain("every suspect's own bench");
  expect(lines.filter((line) => / \d+ to \d+ %/.test(line))).toHaveLength(2);
  // By hand: 1 of 2 with z² = 3.8415, middle 0.5, half (√(0.125·3.8415 + 3.8415²/16))/(1 + 3.8415/2) = 0.4055.
  expect(lines.join('\n')).toMatch(/95\.0 % +50\.0 % +9\.5 to 90\.5 %/);
  expect(lines.join('\n')).toContain('claims of 95 % or more: 1, true in 0.0 %');
  expect(lines.join('\n')).toContain('plug was claimed, fuse-blown with meter-lead-open it was');
});

it('says where claims are not honest', () => {
  const many = Array.from({ length: 300 }, () => claims[1]).filter((one) => one !== undefined);
  const lines = calibrationLines('by-table', [calibrationTable(many, 'lower')], false);
  expect(lines.join('\n')).toContain('FAILS: Only what speaks');
  expect(lines.join('\n')).toContain('300 times plug was claimed');
  expect(lines.at(-1)).toMatch(/^FAILS/);
});
