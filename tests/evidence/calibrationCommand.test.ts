import { expect, it } from 'vitest';
import { calibration } from '../../src/cli/calibration.ts';
import { calibrationLines } from '../../src/text/cliCalibration.ts';
import { calibrationTable } from '../../src/training/evidence/calibration.ts';

it.each(['0', '-3', 'many', '1000000'])('asks for a whole number of sittings instead of %s', (given) => {
  const said: string[] = [];
  const output = { out: (): void => undefined, err: (text: string): void => void said.push(text) };
  expect(calibration({ files: [], json: false, options: { '--sittings': given } }, output)).toBe(2);
  expect(said.join()).toContain(`--sittings ${given}`);
});

it('prints a row for each bin that has claims', () => {
  const claims = [0.93, 0.97, 0.42].map((chance, i) => ({
    truth: 'a',
    claimed: 'a',
    right: i < 2,
    shown: chance,
    confirming: chance,
  }));
  const lines = calibrationLines('All', calibrationTable(claims, 'shown'));
  expect(lines.filter((line) => / \d+ to \d+ %/.test(line))).toHaveLength(2);
  expect(lines.join('\n')).toContain('95.0 %   100.0 %');
  expect(lines.join('\n')).toContain('claims of 95 % or more: 1, true in 100.0 %');
});
