import type { Text } from 'pixi.js';
import { beforeAll, expect, it, vi } from 'vitest';
import type { Art } from '../../../src/ui/scene/Art.ts';
import { tokensOf } from '../../../src/ui/theme/tokens.ts';

let sheet: () => Art;
beforeAll(async () => {
  if (!('navigator' in globalThis))
    vi.stubGlobal('navigator', { userAgent: '', platform: '', maxTouchPoints: 0 });
  const { Art } = await import('../../../src/ui/scene/Art.ts');
  sheet = () => new Art(tokensOf('paper'), () => 1);
});

const AT = { x: 0, y: 0 };

it('words that stand again are the same, and of a thousand readings only some are kept', () => {
  const art = sheet();
  const seen = new Set<Text>();
  let title: Text | undefined;
  for (let reading = 0; reading < 1000; reading++) {
    art.wipe();
    art.print('Meter', AT);
    art.print(`${reading} V`, AT);
    const [first, second] = art.root.children as Text[];
    title ??= first;
    expect(first).toBe(title);
    expect(second?.text).toBe(`${reading} V`);
    if (second !== undefined) seen.add(second);
  }
  expect(seen.size).toBe(1000);
  const kept = [...seen].filter((words) => !words.destroyed);
  expect(kept.length).toBeLessThan(50);
  expect(kept.length).toBeGreaterThan(0);
  expect(title?.destroyed).toBe(false);
  art.destroy();
  expect(title?.destroyed).toBe(true);
});

it('a reading that comes back soon is not made again', () => {
  const art = sheet();
  const made = new Set<Text>();
  for (let i = 0; i < 300; i++) {
    art.wipe();
    art.print(`12.${i % 7}`, AT);
    made.add(art.root.children[0] as Text);
  }
  expect(made.size).toBe(7);
  art.destroy();
});
