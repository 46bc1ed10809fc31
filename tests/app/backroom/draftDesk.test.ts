import { signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { DraftDesk, titleOf } from '../../../src/app/backroom/DraftDesk.ts';
import { drawnCode } from '../../../src/app/backroom/handOut.ts';
import { openTextFile } from '../../../src/app/backroom/openTextFile.ts';
import { readBenchOf } from '../../../src/app/backroom/readBenchOf.ts';
import { leaveNote, takeNote } from '../../../src/platform/browser/lastNote.ts';
import { memoryStore } from '../../../src/platform/browser/memoryStore.ts';
import type { StoredDraft } from '../../../src/platform/browser/StoredDraft.ts';
import type { StoreTrouble } from '../../../src/platform/browser/StoredSitting.ts';
import { draftOf } from '../../../src/training/draft/Draft.ts';
import { DraftText } from '../../../src/training/draft/DraftText.ts';
import { plainClassCode, STRONG_CODE_CHARACTERS } from '../../../src/training/handout/classCode.ts';
import { SCENARIO_TEXT } from '../../support/scenarioText.ts';

beforeEach(() => {
  vi.useFakeTimers();
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => kept.set(key, value),
    removeItem: (key: string) => kept.delete(key),
  });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function opened(text = SCENARIO_TEXT) {
  const store = memoryStore<StoredDraft>();
  const trouble = signal<StoreTrouble | null>(null);
  const refusals: string[] = [];
  const edits = { count: 0 };
  const desk = new DraftDesk({
    stored: { key: 'one', text, title: '', savedAtMs: 0 },
    store,
    trouble,
    nowMs: () => 7,
    goTo: () => {},
    edited: () => {
      edits.count += 1;
    },
    refused: (problem) => refusals.push(problem),
  });
  return { desk, store, trouble, refusals, edits };
}

describe('a draft that is open', () => {
  it('tells of what is written, and not of a step back', () => {
    const { desk, edits } = opened();
    desk.type('title: one');
    desk.edit([{ kind: 'set', path: ['title'], value: 'two' }], { kind: 'changed', path: 'title' });
    expect(edits.count).toBe(2);
    desk.undo();
    desk.redo();
    expect(edits.count).toBe(2);
  });

  it('follows the text a moment after it was typed, and the form at once', () => {
    const { desk } = opened();
    desk.type(SCENARIO_TEXT.replace('A short job', 'Another job'));
    expect(desk.draft.value.scenario?.title).toBe('A short job');
    vi.advanceTimersByTime(200);
    expect(desk.draft.value.scenario?.title).toBe('Another job');
    desk.edit([{ kind: 'set', path: ['title'], value: 'A third' }], { kind: 'changed', path: 'title' });
    expect(desk.draft.value.scenario?.title).toBe('A third');
    expect(desk.text.value).toContain('title: A third');
  });

  it('makes a change of the form on what was just typed, even before it has followed', () => {
    const { desk } = opened();
    desk.type(`${SCENARIO_TEXT}# mine\n`);
    desk.edit([{ kind: 'set', path: ['minutes'], value: 33 }], { kind: 'changed', path: 'minutes' });
    expect(desk.text.value).toContain('minutes: 33');
    expect(desk.text.value).toContain('# mine');
  });

  it('does all the changes of a step, or none, and says which it cannot do', () => {
    const { desk, refusals } = opened('title: A\nbench: cold\n');
    const edits = [
      { kind: 'set', path: ['title'], value: 'B' },
      { kind: 'set', path: ['bench', 'fuel-percent'], value: 1 },
    ] as const;
    expect(desk.edit(edits, { kind: 'changed', path: 'title' })).toBe('in-the-way');
    expect(desk.text.value).toBe('title: A\nbench: cold\n');
    expect(refusals).toEqual(['in-the-way']);
    expect(desk.undoNext.value).toBeNull();
  });

  it('keeps every state, under its title', async () => {
    const { desk, store } = opened();
    desk.edit([{ kind: 'set', path: ['title'], value: 'Kept' }], { kind: 'changed', path: 'title' });
    expect(desk.keeping.value).toBe('being-kept');
    await desk.idle();
    expect(desk.keeping.value).toBe('kept');
    expect(await store.get('one')).toMatchObject({ title: 'Kept', savedAtMs: 7, text: desk.text.value });
  });

  it('writes under a hand without waiting for the draft, which follows a moment later', async () => {
    const { desk, store } = opened();
    const step = { kind: 'changed', path: 'title' } as const;
    desk.edit([{ kind: 'set', path: ['title'], value: 'A' }], step, 'writing');
    desk.edit([{ kind: 'set', path: ['title'], value: 'Ab' }], step, 'writing');
    expect(desk.text.value).toContain('title: Ab');
    expect(desk.draft.value.scenario?.title).toBe('A short job');
    expect(desk.now().plainAt(['title'])).toBe('Ab');
    const before = desk.followed.value;
    await desk.idle();
    expect(await store.get('one')).toMatchObject({ title: 'Ab' });
    vi.advanceTimersByTime(200);
    expect(desk.draft.value.scenario?.title).toBe('Ab');
    expect(desk.followed.value).toBe(before + 1);
  });

  it('says that it is not kept where the store is in trouble', () => {
    const { desk, trouble } = opened();
    trouble.value = 'store-full';
    desk.type('x');
    expect(desk.keeping.value).toBe('not-kept');
  });

  it('leaves what the store has not got yet where it is kept at once, and only that', async () => {
    const { desk } = opened();
    desk.leave();
    expect(takeNote('one')).toBeNull();
    desk.type('the very last');
    desk.leave();
    expect(takeNote('one')).toEqual({ text: 'the very last', savedAtMs: 7 });
    expect(takeNote('one')).toBeNull();
    await desk.idle();
    desk.leave();
    expect(takeNote('one')).toBeNull();
  });

  it('goes back and forth by steps, and a pause in typing ends one', () => {
    const { desk } = opened('');
    desk.type('a');
    desk.type('ab');
    vi.advanceTimersByTime(2000);
    desk.type('abc');
    desk.undo();
    expect(desk.text.value).toBe('ab');
    desk.undo();
    expect(desk.text.value).toBe('');
    desk.redo();
    expect(desk.text.value).toBe('ab');
  });

  it('is called by its title in whatever language it has one', () => {
    expect(titleOf(draftOf('title: { es: La luz }\n'))).toBe('La luz');
    expect(titleOf(draftOf('title: { en: The lamp, es: La luz }\n'))).toBe('The lamp');
    expect(titleOf(draftOf('titel: x\n'))).toBe('');
  });
});

describe('a note of the last moment', () => {
  it('that is damaged is none', () => {
    localStorage.setItem('known-good.note.a', '{"text":1}');
    expect(takeNote('a')).toBeNull();
    localStorage.setItem('known-good.note.a', 'x');
    expect(takeNote('a')).toBeNull();
    leaveNote('a', { text: 't', savedAtMs: 1 });
    expect(takeNote('a')?.text).toBe('t');
  });
});

describe('a file that is opened', () => {
  const file = (bytes: Uint8Array) => ({
    size: bytes.length,
    arrayBuffer: async () => bytes.buffer as ArrayBuffer,
  });

  it('gives its text', async () => {
    expect(await openTextFile(file(new TextEncoder().encode('title: \u00e9')))).toEqual({
      ok: true,
      value: 'title: \u00e9',
    });
  });

  it('is not read at all where it is too large', async () => {
    const film = { size: 100 * 1024 * 1024, arrayBuffer: () => Promise.reject(new Error('was read')) };
    expect(await openTextFile(film)).toEqual({ ok: false, error: 'fileTooLarge' });
  });

  it('is refused where it is no text', async () => {
    const utf16 = new Uint8Array([0xff, 0xfe, 0x61, 0]);
    const nothing = new Uint8Array([0x61, 0, 0x62]);
    expect(await openTextFile(file(utf16))).toEqual({ ok: false, error: 'fileNotText' });
    expect(await openTextFile(file(nothing))).toEqual({ ok: false, error: 'fileNotText' });
    const gone = { size: 3, arrayBuffer: () => Promise.reject(new Error('gone')) };
    expect(await openTextFile(gone)).toEqual({ ok: false, error: 'fileNotRead' });
  });
});

describe('the bench whose readings stand beside the faults', () => {
  it('is there as soon as the faults can be read', () => {
    const read = readBenchOf(
      new DraftText('faults:\n  - { fault: ground-resistance, severity: 0.25, when-moved: true }\n'),
    );
    expect(read).toEqual({
      environment: { ambientC: 20, altitudeM: 200, fuelLevel: 0.5 },
      seed: 'draft',
      faults: [{ fault: 'ground-resistance', severity: 0.25, whenMoved: true }],
    });
  });

  it('is none while one of them cannot', () => {
    expect(readBenchOf(new DraftText('faults:\n  - { fault: no-such }\n'))).toBeNull();
    expect(readBenchOf(new DraftText('faults: some\n'))).toBeNull();
    expect(readBenchOf(new DraftText(''))?.faults).toEqual([]);
  });
});

describe('a class code that is drawn', () => {
  it('is a class code, too long to be tried out', () => {
    const code = drawnCode((count) => Uint32Array.from({ length: count }, (_, i) => i * 977));
    expect(code).toMatch(/^([A-Z0-9]{4}-){3}[A-Z0-9]{4}$/);
    expect(plainClassCode(code)?.length).toBeGreaterThanOrEqual(STRONG_CODE_CHARACTERS);
  });
});
