import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { knownGood, root } from '../support/commandLine.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const SHIPPED = join(root, 'scenarios', 'the-new-steps.yaml');
const ACTIONS = join(root, 'tests', 'golden', 'actions', 'the-new-steps.full.txt');
const CODE = 'Copper 17';
/** A job that is soon over: what its evidence is worth is weighed anew with every grading. */
const SHORT_JOB = `accept
key on
read codes
meter volts-dc
lead meter-red to battery-positive
lead meter-black to battery-negative
wait steady
log "Battery"
verdict unit
part plug
renew unit
mate plug
fit canister-hose on canister-port
clamp canister-port hand-tight
fit air-hose on air-port
clamp air-port hand-tight
fit engine-hose on engine-port
clamp engine-port hand-tight
close
`;

let folder = '';
const path = (name: string): string => join(folder, name);
const file = (name: string, text: string): string => {
  writeFileSync(path(name), text);
  return path(name);
};
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'known-good-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('known-good seal', () => {
  it('writes a sealed file beside the scenario file or where it is told, and says its hash', async () => {
    const plain = file('short.yaml', SCENARIO_TEXT);
    const run = await knownGood('seal', plain, '--json');
    expect(run.code).toBe(0);
    const [made] = JSON.parse(run.out) as readonly { out: string; contentHash: string }[];
    expect(made?.out).toBe(path('short-job.job.json'));
    const text = readFileSync(path('short-job.job.json'), 'utf8');
    expect(text).toContain(made?.contentHash ?? 'none');
    expect(text).not.toContain('capsule');
    const elsewhere = await knownGood('seal', plain, '--class-code', CODE, '--out', path('there.job.json'));
    expect(elsewhere).toMatchObject({ code: 0, out: '' });
    expect(elsewhere.err).toContain('can be found by trying');
    expect(readFileSync(path('there.job.json'), 'utf8')).toContain('"classCode": true');
  });

  it('tells an instructor who gives variants no class code what becomes of them', async () => {
    const run = await knownGood('seal', SHIPPED, '--out', path('free.job.json'));
    expect(run.code).toBe(0);
    expect(run.err).toContain('it has variants. Give a class code');
  });

  it('refuses what cannot be sealed, each with its fix', async () => {
    const broken = file('broken.yaml', SCENARIO_TEXT.replace('level: 1', 'level: 9'));
    const whole = file('whole.yaml', SCENARIO_TEXT);
    await knownGood('seal', whole, '--out', path('once.job.json'));
    const cases: readonly (readonly [readonly string[], string])[] = [
      [[], 'A file is missing'],
      [[broken], 'broken.yaml:6:8: level: "9" is none of the words'],
      [[path('once.job.json')], 'this file is sealed already'],
      [[path('absent.yaml')], 'there is no such file'],
      [[whole, '--class-code', '7'], 'a class code has 4 to 60 letters and digits'],
      [[whole, '--class-code', CODE, '--seats', '0'], 'give a whole number from 1 to 200'],
      [[whole, whole, '--out', 'x'], 'With --out give one scenario file'],
    ];
    for (const [words, says] of cases) {
      const run = await knownGood('seal', ...words);
      expect(run.code, says).toBe(2);
      expect(run.err).toContain(says);
    }
  });
});

describe('known-good check on a sealed file', () => {
  it('says that it is whole, and tells nothing of what is within', async () => {
    await knownGood('seal', SHIPPED, '--class-code', CODE, '--out', path('class.job.json'));
    const run = await knownGood('check', path('class.job.json'));
    expect(run).toMatchObject({ code: 0, err: '' });
    expect(run.out).toContain('whole and sealed. "The new steps"');
    expect(run.out).not.toContain('Solved by');
    const cut = file('cut.job.json', readFileSync(path('class.job.json'), 'utf8').slice(0, -40));
    const damaged = await knownGood('check', cut, '--json');
    expect(damaged.code).toBe(2);
    expect(damaged.out).toContain('changed or cut short on its way');
  });
});

describe('a class', () => {
  interface Seats {
    readonly class: string;
    readonly seats: readonly { seat: number; contentHash: string; faults: readonly { fault: string }[] }[];
    readonly variants: readonly { minutes: number; money: number }[];
    readonly findings: readonly unknown[];
  }
  let seats: Seats;
  let seat = 0;

  it('has its list of what is wrong at each seat, all equally hard', async () => {
    const run = await knownGood('variants', SHIPPED, '--class-code', CODE, '--seats', '12', '--json');
    expect(run.code).toBe(0);
    seats = JSON.parse(run.out) as Seats;
    expect(seats.seats).toHaveLength(12);
    expect(seats.findings).toEqual([]);
    // Six truths for twelve seats: each twice.
    const of = seats.seats.map(({ faults }) => faults[0]?.fault);
    expect(new Set(of).size).toBe(6);
    for (const fault of new Set(of)) expect(of.filter((each) => each === fault)).toHaveLength(2);
    const minutes = seats.variants.map((each) => each.minutes);
    expect(Math.max(...minutes)).toBeLessThanOrEqual(Math.min(...minutes) * 1.2);
    seat = seats.seats.find(({ faults }) => faults[0]?.fault === 'sense-resistance')?.seat ?? 0;
  });

  it('is graded against the scenario file or the sealed one, and against its code', async () => {
    await knownGood('seal', SHIPPED, '--class-code', CODE, '--seats', '12', '--out', path('graded.job.json'));
    const record = path('record.json');
    const played = await knownGood(
      ...['play', path('graded.job.json'), file('short.txt', SHORT_JOB), '--record', record],
      ...['--class-code', CODE, '--seat', String(seat)],
    );
    expect(played.code).toBe(0);
    const written = JSON.parse(readFileSync(record, 'utf8')) as {
      seed: string;
      variant: { draw: string; contentHash: string };
    };
    expect(written.variant.draw).toBe(`class-${seats.class}-seat-${seat}`);
    expect(written.variant.contentHash).toBe(seats.seats[seat - 1]?.contentHash);
    expect(written.seed).toBe(written.variant.draw);

    const empty = mkdtempSync(join(folder, 'empty-'));
    const sealed = ['--scenarios', empty, '--scenario', path('graded.job.json'), '--class-code', CODE];
    const held = await knownGood('grade', record, record, ...sealed);
    expect(held.err).toContain(`Note: seat ${seat} was sat at more than once: ${record}, ${record}.`);
    expect(held.out).toMatch(new RegExp(`the claimed score of [\\d.]+ holds\\. Seat ${seat}\\.`));
    expect(held.code).toBe(0);

    // What a learner might try: another seat's draw, another truck of the same seat, a draw of one's own.
    const other = seats.seats.find(({ faults }) => faults[0]?.fault === 'feed-open')?.seat ?? 0;
    const lies = {
      'variant-differs': {
        ...written,
        variant: { ...written.variant, draw: `class-${seats.class}-seat-${other}` },
      },
      'seat-seed-differs': { ...written, seed: 'mine' },
      'variant-missing': { ...written, variant: undefined },
      'other-class': { ...written, variant: { ...written.variant, draw: 'first' } },
    };
    const paths = Object.entries(lies).map(([name, lie]) => file(`${name}.json`, JSON.stringify(lie)));
    const run = await knownGood('grade', ...paths, ...sealed, '--json');
    expect(run.code).toBe(1);
    const grades = JSON.parse(run.out) as readonly { problem: string; holds: boolean }[];
    expect(grades.map(({ problem, holds }) => [problem, holds])).toEqual(
      Object.keys(lies).map((name) => [name, false]),
    );
    const elsewhere = await knownGood(
      'grade',
      record,
      '--scenario',
      SHIPPED,
      '--class-code',
      'another class',
    );
    expect(elsewhere.code).toBe(1);
    expect(elsewhere.err).toContain('it was not sat under this class code');
  });

  it('needs its code: without it a sealed file is not opened', async () => {
    const without = await knownGood('play', path('graded.job.json'), ACTIONS);
    expect(without).toMatchObject({ code: 2 });
    expect(without.err).toContain('A class code is missing. Add --class-code.');
    const wrong = await knownGood('play', path('graded.job.json'), ACTIONS, '--class-code', 'tin 17');
    expect(wrong.err).toContain('This class code does not open this file.');
    const graded = await knownGood('grade', path('record.json'), '--scenario', path('graded.job.json'));
    expect(graded.code).toBe(2);
  });

  it('is refused where there is nothing to draw, or no such seat', async () => {
    const plain = file('plain.yaml', SCENARIO_TEXT);
    expect((await knownGood('variants', plain, '--class-code', CODE)).err).toContain('has no variants');
    expect((await knownGood('variants', SHIPPED)).err).toContain('A class code is missing');
    expect((await knownGood('variants', path('graded.job.json'), '--class-code', CODE)).err).toContain(
      'this file is sealed already',
    );
    const seatless = await knownGood('play', SHIPPED, ACTIONS, '--seat', '4');
    expect(seatless.err).toContain('--seat needs a class code');
    const far = await knownGood('play', SHIPPED, ACTIONS, '--class-code', CODE, '--seat', '0');
    expect(far.err).toContain('give the number of a seat');
  });
});
