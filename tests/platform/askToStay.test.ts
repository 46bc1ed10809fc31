import { afterEach, describe, expect, it, vi } from 'vitest';
import { askToStay } from '../../src/platform/browser/askToStay.ts';

afterEach(() => vi.unstubAllGlobals());

function browser(persisted: boolean) {
  const persist = vi.fn(async () => true);
  vi.stubGlobal('navigator', { storage: { persisted: async () => persisted, persist } });
  return persist;
}

describe('what is stored may stay', () => {
  it('when the browser is asked, once it has not said so already', async () => {
    const asked = browser(false);
    await askToStay();
    expect(asked).toHaveBeenCalledOnce();
    const again = browser(true);
    await askToStay();
    expect(again).not.toHaveBeenCalled();
  });

  it('and a browser that cannot be asked is none the worse', async () => {
    vi.stubGlobal('navigator', {});
    await expect(askToStay()).resolves.toBeUndefined();
  });
});
