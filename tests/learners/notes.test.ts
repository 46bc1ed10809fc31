import { expect, test } from 'vitest';
import { secondsToTicks } from '../../src/base/ticks.ts';
import { carriedBy, type Note } from '../../src/training/learners/Note.ts';

function note(seconds: number, entry: number, since = seconds): Note {
  const tick = secondsToTicks(seconds);
  return {
    test: 'hold-capped',
    shown: { kind: 'yes-no', channel: 'click', setUp: `at ${seconds}`, tick, value: true },
    entry,
    since: secondsToTicks(since),
    renewed: [],
  };
}

test('an entry carries the ten seconds before it', () => {
  const notes = [note(1, 1), note(8, 2), note(12, 3)];
  expect(carriedBy(3, notes)).toEqual([notes[1], notes[2]]);
  expect(carriedBy(1, notes)).toEqual([notes[0]]);
});

test('and what has stood since the hands last moved', () => {
  const notes = [note(1, 1), note(4, 2), note(30, 3, 3)];
  expect(carriedBy(3, notes)).toEqual([notes[1], notes[2]]);
});

test('an entry without notes carries nothing', () => {
  expect(carriedBy(9, [note(1, 1)])).toEqual([]);
});
