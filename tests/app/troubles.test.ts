import { signal } from '@preact/signals';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { keepSettings } from '../../src/app/keepSettings.ts';
import type { Route } from '../../src/app/Route.ts';
import { tellStoreTrouble } from '../../src/app/tellStoreTrouble.ts';
import type { StoreTrouble } from '../../src/platform/browser/StoredSitting.ts';
import { parseSettings, type Settings } from '../../src/platform/browser/settings.ts';
import type { Trouble } from '../../src/ui/panels/Shop.ts';

const BOARD: Route = { screen: 'board' };
const JOB: Route = { screen: 'job', scenario: 'ready-by-friday' };

function shopWith(trouble: Trouble | null = null) {
  const exported: string[] = [];
  const shop = {
    route: signal<Route>(BOARD),
    trouble: signal<Trouble | null>(trouble),
    exportKept: (key: string) => void exported.push(key),
  };
  const found = signal<StoreTrouble | null>(null);
  tellStoreTrouble(shop, found);
  // A look of its own each time: what was assigned last is not what stands there now.
  const shown = (): Trouble | null => shop.trouble.peek();
  return { shop, found, exported, shown };
}

describe('what cannot be kept', () => {
  it('is told where it is found, and again with the record to take away when a job is opened', () => {
    const { shop, found, exported, shown } = shopWith();
    found.value = 'store-blocked';
    expect(shown()).toEqual({ key: 'troubles.store-blocked', offers: [] });
    shop.trouble.value = null;
    shop.route.value = JOB;
    expect(shown()?.key).toBe('troubles.store-blocked');
    shown()?.offers[0]?.run();
    expect(exported).toEqual(['ready-by-friday']);
  });

  it('stays hidden where it was hidden, and goes when saving goes well again', () => {
    const { shop, found } = shopWith();
    found.value = 'store-full';
    shop.trouble.value = null;
    expect(shop.trouble.value).toBeNull();
    shop.route.value = JOB;
    found.value = null;
    expect(shop.trouble.value).toBeNull();
  });

  it('neither takes the place of a choice nor takes off what others say', () => {
    const choice: Trouble = {
      key: 'troubles.record-damaged',
      offers: [{ label: 'troubles.reload', run() {} }],
    };
    const { shop, found } = shopWith(choice);
    found.value = 'store-full';
    expect(shop.trouble.value).toBe(choice);
    found.value = null;
    expect(shop.trouble.value).toBe(choice);
  });
});

describe('settings that are not kept', () => {
  afterEach(() => vi.unstubAllGlobals());

  function denied(): void {
    vi.stubGlobal('localStorage', {
      setItem() {
        throw new DOMException('denied', 'SecurityError');
      },
    });
  }

  it('are told once, when something is set', () => {
    denied();
    const settings = signal<Settings>(parseSettings(null));
    const trouble = signal<Trouble | null>(null);
    keepSettings(settings, trouble);
    expect(trouble.value).toBeNull();
    settings.value = { ...settings.value, muted: true };
    expect(trouble.value?.key).toBe('troubles.settings-not-kept');
    trouble.value = null;
    settings.value = { ...settings.value, muted: false };
    expect(trouble.value).toBeNull();
  });

  it('that are kept are told nobody', () => {
    const kept: string[] = [];
    vi.stubGlobal('localStorage', { setItem: (_key: string, text: string) => void kept.push(text) });
    const settings = signal<Settings>(parseSettings(null));
    const trouble = signal<Trouble | null>(null);
    keepSettings(settings, trouble);
    settings.value = { ...settings.value, muted: true };
    expect(trouble.value).toBeNull();
    expect(JSON.parse(kept.at(-1) ?? '{}')).toMatchObject({ muted: true });
  });
});
