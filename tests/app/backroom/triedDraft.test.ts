import { afterEach, describe, expect, it, vi } from 'vitest';
import { noteTried, triedDraft } from '../../../src/platform/browser/triedDraft.ts';

function storage(): Pick<Storage, 'getItem' | 'setItem'> {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
  };
}

afterEach(() => vi.unstubAllGlobals());

describe('the draft that a job is tried from', () => {
  it('is known of that job and of no other', () => {
    vi.stubGlobal('sessionStorage', storage());
    noteTried('friday--0123', 'abc9z');
    expect(triedDraft('friday--0123')).toBe('abc9z');
    expect(triedDraft('friday')).toBeNull();
  });

  it('is a name of a draft and nothing else', () => {
    vi.stubGlobal('sessionStorage', storage());
    noteTried('friday', '../x?y');
    expect(triedDraft('friday')).toBeNull();
  });

  it('is not known where the browser keeps nothing', () => {
    vi.stubGlobal('sessionStorage', undefined);
    noteTried('friday', 'abc');
    expect(triedDraft('friday')).toBeNull();
  });
});
