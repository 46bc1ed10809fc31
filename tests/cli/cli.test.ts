import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { knownGood, knownGoodProcess, root } from '../support/commandLine.ts';
import { goldenScore } from '../support/goldenJobs.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const actions = (name: string) => join(root, 'tests', 'golden', 'actions', name);
const scenario = (id: string) => join(root, 'scenarios', `${id}.yaml`);

let folder = '';
const file = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'known-good-'));
});
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
});

describe('known-good', () => {
  it('explains itself, and refuses what it does not know', async () => {
    expect(knownGoodProcess('help')).toMatchObject({ code: 0 });
    expect((await knownGood('help')).out).toContain('known-good grade RECORD');
    expect(await knownGood()).toMatchObject({ code: 2 });
    expect((await knownGood('fly')).err).toContain('There is no command "fly".');
    expect((await knownGood('check', '--loud', 'a')).err).toContain('There is no option "--loud"');
    expect((await knownGood('check')).code).toBe(2);
  });
});

describe('known-good check', () => {
  it('passes the form of shipped scenarios', async () => {
    const run = await knownGood(
      'check',
      '--form',
      scenario('first-day-on-the-bench'),
      scenario('all-hoses-new'),
    );
    expect(run).toMatchObject({ code: 0, err: '' });
    expect(run.out.trim().split('\n')).toHaveLength(2);
  });

  it('proves a job, tells its plan and how learners fare, and has nothing to prove of an introduction', () => {
    const run = knownGoodProcess('check', scenario('silent-on-command'), scenario('first-minutes'));
    expect(run.code).toBe(0);
    const [head, plan] = run.out.split('\n');
    expect(head).toContain('silent-on-command.yaml: Fit to give out.');
    expect(plan).toMatch(/Solved by \d+ runs of tests, .*Meter on the battery/);
    expect(run.out).toMatch(/Medians: careful learner (9\d|100), learner by the book/);
    expect(run.out).toContain('first-minutes.yaml: in order.');
  });

  it('ends with 1 where a job is in order but not fit to give out, and says what to mend', () => {
    const run = knownGoodProcess('check', '--seeds', '0', file('unfit.yaml', SCENARIO_TEXT));
    expect(run.code).toBe(1);
    expect(run.out).toMatch(/MEND: The work order states P0456 stored, .* the controller holds no codes\./);
    expect(knownGoodProcess('check', '--seeds', 'x', scenario('silent-on-command')).code).toBe(2);
  });

  it('names file, line and fix for every problem, and ends with 2', async () => {
    const bad = file(
      'bad.yaml',
      SCENARIO_TEXT.replace('level: 1', 'level: 9').replace('capsule-torn', 'capsule-tron'),
    );
    const run = await knownGood('check', bad);
    expect(run.code).toBe(2);
    const lines = run.err.trim().split('\n');
    expect(lines).toHaveLength(2);
    expect(lines[0]).toMatch(
      /bad\.yaml:6:8: level: "9" is none of the words for this place\. Use one of: 1, 2, 3, 4\./,
    );
    expect(lines[1]).toMatch(
      /bad\.yaml:30:12: faults\[0\]\.fault: there is no fault "capsule-tron"\. The closest are: capsule-torn/,
    );
  });

  it('says the same as JSON', async () => {
    const run = await knownGood(
      'check',
      '--form',
      scenario('all-hoses-new'),
      join(folder, 'absent.yaml'),
      '--json',
    );
    expect(run.code).toBe(2);
    const [good, absent] = JSON.parse(run.out) as { ok: boolean; id?: string; lines?: string[] }[];
    expect(good).toMatchObject({ ok: true, id: 'all-hoses-new' });
    expect(absent?.lines?.[0]).toContain('there is no such file');
  });
});

describe('known-good play', () => {
  it('prints what was seen, then the debrief and the score', async () => {
    const run = await knownGood('play', scenario('silent-on-command'), actions('silent-on-command.full.txt'));
    expect(run).toMatchObject({ code: 0, err: '' });
    expect(run.out).toMatch(/ s {2}jumper on .*click/);
    expect(run.out).toContain('Your verdict was right.');
    const { score, parts } = goldenScore('silent-on-command.full.txt');
    expect(run.out).toContain(`Score: ${score} of 100`);
    for (const [part, of] of [
      ['verdict', 25],
      ['evidence', 30],
      ['method', 25],
      ['economy', 10],
      ['repair', 10],
    ] as const)
      expect(run.out).toContain(`${parts[part]} of ${of}\n`);
    expect(run.out).toMatch(/after the complaint, .* by the entries cited \(.*\), .* by everything shown/);
    expect(run.out).toMatch(/fuse convicted: carried by its entries/i);
    expect(run.out).toMatch(/\d+ book minutes, par \d+/);
  });

  it.each([
    ['frobnicate', /job\.txt:2: no line begins with "frobnicate"\. Begin with one of: accept/],
    [
      'lead meter-red to the-moon',
      /job\.txt:2: "the-moon" does not belong there\. Use one of: battery-positive/,
    ],
    [
      'lead meter-red battery-positive',
      /job\.txt:2: a line with "lead" has another shape\. Write it like this: lead meter-red to cavity-3-back/,
    ],
    ['stroke 1.5', /job\.txt:2: "1\.5" is not a number for this place\. Use 0 to 1\./],
    ['log "open', /job\.txt:2: a quote is opened and not closed/],
    ['renew unit', /job\.txt:2: "renew unit" cannot be done now\. Give a verdict before a part is renewed\./],
  ])('refuses "%s" with file, line and fix, and ends with 2', async (line, message) => {
    const run = await knownGood('play', scenario('all-hoses-new'), file('job.txt', `accept\n${line}\n`));
    expect(run.code).toBe(2);
    expect(run.err).toMatch(message);
  });

  it('gives no score for a job left open', async () => {
    const run = await knownGood(
      'play',
      scenario('all-hoses-new'),
      file('open.txt', 'accept\nkey on\n'),
      '--json',
    );
    expect(run.code).toBe(0);
    expect(JSON.parse(run.out)).toMatchObject({ debrief: null, record: { claimedScore: null } });
  });
});

describe('known-good grade', () => {
  const play = async (id: string, name: string): Promise<string> => {
    const record = join(folder, `${name}.json`);
    expect((await knownGood('play', scenario(id), actions(name), '--record', record)).code).toBe(0);
    return record;
  };

  it('finds that an honest claim holds', async () => {
    const run = await knownGood(
      'grade',
      await play('silent-on-command', 'silent-on-command.lucky-guess.txt'),
    );
    expect(run).toMatchObject({ code: 0, err: '' });
    const { score } = goldenScore('silent-on-command.lucky-guess.txt');
    expect(run.out).toContain(`the claimed score of ${score} holds`);
  });

  it('finds a raised claim, a changed action and another edition of the scenario', async () => {
    const honest = await play('all-hoses-new', 'all-hoses-new.lucky-guess.txt');
    const record = JSON.parse(readFileSync(honest, 'utf8')) as {
      claimedScore: number;
      actions: unknown[];
      scenario: { id: string; contentHash: string };
    };
    const raised = file('raised.json', JSON.stringify({ ...record, claimedScore: 95 }));
    const cut = file('cut.json', JSON.stringify({ ...record, actions: record.actions.slice(0, -2) }));
    const other = file(
      'other.json',
      JSON.stringify({ ...record, scenario: { ...record.scenario, contentHash: '0'.repeat(64) } }),
    );
    const run = await knownGood('grade', honest, raised, cut, other, '--json');
    expect(run.code).toBe(1);
    const grades = JSON.parse(run.out) as { holds: boolean; problem: string | null; score: number | null }[];
    expect(grades.map(({ holds, problem }) => [holds, problem])).toEqual([
      [true, null],
      [false, null],
      [false, 'end-differs'],
      [false, 'wrong-scenario'],
    ]);
    expect(grades[1]?.score).toBe(grades[0]?.score);
    expect((await knownGood('grade', raised)).err).toContain('the claimed score of 95 does not hold');
  });

  it('ends with 2 for what is no record, or has no scenario', async () => {
    expect(await knownGood('grade', file('not.json', 'hello'))).toMatchObject({ code: 2 });
    expect((await knownGood('grade', join(folder, 'absent.json'))).err).toContain('there is no such file');
    const empty = mkdtempSync(join(folder, 'empty-'));
    const record = await play('all-hoses-new', 'all-hoses-new.lucky-guess.txt');
    const run = await knownGood('grade', record, '--scenarios', empty);
    expect(run.code).toBe(2);
    expect(run.err).toContain('Give the right folder with --scenarios');
  });
});
