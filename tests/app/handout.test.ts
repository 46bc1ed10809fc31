import { describe, expect, it } from 'vitest';
import { FilesDesk, type FileToRead } from '../../src/app/handout/FilesDesk.ts';
import { fileJobOf } from '../../src/app/handout/fileJobOf.ts';
import { createFileJobs } from '../../src/app/handout/fileJobs.ts';
import { seated } from '../../src/app/handout/seated.ts';
import { freshSeed } from '../../src/app/openJob.ts';
import type { KeptFileJob } from '../../src/platform/browser/KeptFileJob.ts';
import { memoryStore } from '../../src/platform/browser/memoryStore.ts';
import { sealedFileOf } from '../../src/training/handout/sealedFileOf.ts';
import { loadScenario } from '../../src/training/scenario/loadScenario.ts';
import type { Scenario } from '../../src/training/scenario/Scenario.ts';
import { openSealed, sealScenario } from '../../src/training/scenario/seal.ts';
import { Sitting } from '../../src/training/sitting/Sitting.ts';
import type { FileState } from '../../src/ui/panels/JobFilesDesk.ts';
import { SCENARIO_TEXT } from '../support/scenarioText.ts';

const VARIED = `${SCENARIO_TEXT}variants:\n  - faults: [{ fault: sense-open }]\n  - faults: [{ fault: feed-open }]\n`;
const CODE = 'Copper 17';

function load(text: string): Scenario {
  const loaded = loadScenario(text, 'x.yaml');
  if (!loaded.ok) throw new Error(JSON.stringify(loaded.error));
  return loaded.value;
}
function sealed(text: string, classCode?: string): string {
  const made = sealedFileOf(text, 'x', classCode === undefined ? {} : { classCode, seats: 9 });
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
}
const given = (name: string, text: string | Uint8Array): FileToRead => {
  const bytes = typeof text === 'string' ? new TextEncoder().encode(text) : text;
  return { name, size: bytes.length, arrayBuffer: async () => bytes.slice().buffer as ArrayBuffer };
};
/** A file that must not be read. */
const film: FileToRead = {
  name: 'film.yaml',
  size: 100 * 1024 * 1024,
  arrayBuffer: () => {
    throw new Error('it was read');
  },
};

function desk(shipped: Readonly<Record<string, string>> = {}, broken = false) {
  const store = memoryStore<KeptFileJob>();
  const jobs = createFileJobs(async () => {
    if (broken) throw new DOMException('none here', 'SecurityError');
    return store;
  });
  let now = 0;
  const made = new FilesDesk({ jobs, shippedHash: async (id) => shipped[id] ?? null, nowMs: () => ++now });
  const states = (): readonly FileState[] => made.files.value.map(({ state }) => state);
  return { desk: made, jobs, store, states };
}

describe('files that are opened on the board', () => {
  it('come on it, readable or sealed, and are kept behind the curtain alone', async () => {
    const { desk: made, jobs, store, states } = desk();
    await made.take([given('a.yaml', SCENARIO_TEXT), given('b.json', sealed(VARIED))]);
    expect(states()).toMatchObject([
      { kind: 'on-board', as: 'new', title: 'A short job', seat: null, kept: true },
      { kind: 'on-board', as: 'new', namesake: true },
    ]);
    expect(jobs.all.value).toHaveLength(2);
    const kept = JSON.stringify(await store.list());
    for (const told of ['capsule-torn', 'sense-open', 'feed-open', 'Nothing more to say'])
      expect(kept).not.toContain(told);
  });

  it('are refused by their size before they are read, by their bytes, and by what is in them', async () => {
    const { desk: made, states } = desk();
    const unreadable = {
      ...given('gone.yaml', ''),
      size: 5,
      arrayBuffer: async () => Promise.reject(new Error()),
    };
    await made.take([
      film,
      given('utf16.yaml', Uint8Array.of(0xff, 0xfe, 0x41, 0)),
      unreadable,
      given('broken.yaml', SCENARIO_TEXT.replace('level: 1', 'level: 9')),
      given('cut.json', sealed(VARIED).slice(0, 500)),
      given('good.yaml', `\ufeff${SCENARIO_TEXT.replaceAll('\n', '\r\n')}`),
    ]);
    const codes = states().map((state) => (state.kind === 'refused' ? state.problem.code : state.kind));
    expect(codes).toEqual([
      'job-file-too-large',
      'job-file-not-text',
      'job-file-not-read',
      'scenario',
      'job-file-damaged',
      'on-board',
    ]);
  });

  it('ask for class code and seat, say what is wrong with an answer, and open by the right one', async () => {
    const { desk: made, jobs, states } = desk();
    await made.take([given('class.json', sealed(VARIED, CODE))]);
    expect(states()[0]).toMatchObject({ kind: 'asks', seats: 9, problem: null, busy: false });
    await made.answer(1, CODE, '10');
    expect(states()[0]).toMatchObject({ kind: 'asks', problem: { code: 'seat-unfit', seats: 9 } });
    await made.answer(1, 'tin 17', '3');
    expect(states()[0]).toMatchObject({ kind: 'asks', problem: { code: 'class-code-wrong' } });
    await made.answer(1, 'x', '3');
    expect(states()[0]).toMatchObject({ kind: 'asks', problem: { code: 'class-code-unfit' } });
    await made.answer(1, 'COPPER17', '3');
    expect(states()[0]).toMatchObject({ kind: 'on-board', seat: 3, as: 'new' });
    const [job] = jobs.all.value ?? [];
    expect(job?.seat).toBe(3);
    expect(job?.sealed.card.variant?.draw).toMatch(/^class-[0-9a-f]{16}-seat-3$/);
    // An answer that comes late changes nothing.
    await made.answer(1, 'COPPER17', '4');
    expect(jobs.all.value).toHaveLength(1);
    // Another seat on the same device is another job.
    await made.take([given('class.json', sealed(VARIED, CODE))]);
    await made.answer(2, CODE, '4');
    expect(new Set(jobs.all.value?.map(({ key }) => key)).size).toBe(2);
  });

  it('that are on the board already, or shipped with it, are told so and added to nothing', async () => {
    const scenario = load(SCENARIO_TEXT);
    const { desk: made, jobs, states } = desk({ 'short-job': scenario.contentHash });
    await made.take([given('a.yaml', SCENARIO_TEXT)]);
    expect(states()[0]).toMatchObject({ kind: 'on-board', as: 'shipped', key: 'short-job' });
    expect(jobs.all.value ?? []).toEqual([]);
    await made.take([given('b.yaml', VARIED), given('c.json', sealed(VARIED))]);
    expect(states().slice(1)).toMatchObject([
      { as: 'new', namesake: true },
      { as: 'there-already', namesake: true },
    ]);
    expect(jobs.all.value).toHaveLength(1);
  });

  it('each get a result, also where one of them breaks the program', async () => {
    const { desk: made, states } = desk();
    const breaking = { ...given('breaks.yaml', SCENARIO_TEXT), size: 5 };
    const parts = { jobs: createFileJobs(async () => memoryStore<KeptFileJob>()), nowMs: () => 1 };
    let asked = 0;
    const failing = new FilesDesk({
      ...parts,
      shippedHash: async () => {
        // The first part that is fetched does not come.
        if (asked++ === 0) throw new TypeError('not fetched');
        return null;
      },
    });
    await Promise.all([
      failing.take([breaking, given('b.yaml', VARIED)]),
      failing.take([given('c.yaml', SCENARIO_TEXT)]),
    ]);
    expect(failing.files.value.map(({ name }) => name)).toEqual(['breaks.yaml', 'b.yaml', 'c.yaml']);
    const kinds = failing.files.value.map(({ state }) => state.kind);
    expect(kinds.filter((kind) => kind === 'refused')).toHaveLength(1);
    expect(kinds.filter((kind) => kind === 'on-board')).toHaveLength(2);
    await made.take([]);
    expect(states()).toEqual([]);
  });

  it('come back to the board when they were put away', async () => {
    const { desk: made, jobs, states } = desk();
    await made.take([given('a.yaml', SCENARIO_TEXT)]);
    const [job] = jobs.all.value ?? [];
    if (job === undefined) throw new Error('no job');
    await jobs.put({ ...job, putAway: true });
    await made.take([given('a.yaml', SCENARIO_TEXT)]);
    expect(states()[1]).toMatchObject({ as: 'new' });
    expect(jobs.all.value).toMatchObject([{ key: job.key, putAway: false }]);
  });

  it('work for the visit where the browser keeps nothing, and say so', async () => {
    const { desk: made, jobs, states } = desk({}, true);
    await made.take([given('a.yaml', SCENARIO_TEXT)]);
    expect(states()[0]).toMatchObject({ kind: 'on-board', kept: false });
    expect(jobs.all.value).toHaveLength(1);
  });

  it('what is kept of another version, or damaged, is not shown', async () => {
    const store = memoryStore<KeptFileJob>();
    const good = fileJobOf(load(SCENARIO_TEXT), null, 1);
    for (const job of [good, { key: 'a' }, { ...good, key: 'b' }, { ...good, key: 'c', card: { id: 'c' } }])
      await store.put(job as KeptFileJob);
    const jobs = createFileJobs(async () => store);
    await expect.poll(() => jobs.all.value?.map(({ key }) => key)).toEqual([good.key]);
  });
});

describe('a job whose truth is drawn when it is taken', () => {
  const family = sealScenario(load(VARIED));

  it('has another at every taking, and the same again with its record', () => {
    const first = seated(family, undefined);
    expect(first.card.variant?.draw).toMatch(/^free-/);
    const opened = openSealed(first);
    if (!opened.ok) throw new Error(opened.error);
    const record = Sitting.begin(opened.value).record();
    expect(seated(family, { record })).toEqual(first);
    const draws = new Set(
      Array.from({ length: 30 }, () => seated(family, undefined).card.variant?.contentHash),
    );
    expect(draws.size).toBe(3);
  });

  it('is drawn anew where the record tells of no draw, and left alone where nothing is drawn', () => {
    for (const record of [null, {}, { variant: { draw: 'nonsense' } }, { variant: 7 }])
      expect(seated(family, { record }).card.variant?.draw).toMatch(/^free-/);
    const plain = sealScenario(load(SCENARIO_TEXT));
    expect(seated(plain, undefined)).toBe(plain);
    const broken = { ...family, sealed: 'AAAA' };
    expect(seated(broken, undefined)).toBe(broken);
  });

  it('at a seat of a class has the truck of that seat', () => {
    const draw = `class-${'a'.repeat(16)}-seat-5`;
    const at = { ...family, card: { ...family.card, variant: { draw, contentHash: '0'.repeat(64) } } };
    expect(freshSeed(at)).toBe(draw);
    expect(freshSeed(family)).not.toBe(freshSeed(family));
  });
});
