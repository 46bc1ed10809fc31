import { describe, expect, it, vi } from 'vitest';
import { askAround } from '../../src/app/askAround.ts';

// Node has the same channel as a browser (HTML Standard, 9.5), so that these are two pages that really speak to each other.
describe('a claim among pages without locks', () => {
  it('is given to one, refused to the other, and free again when it is let go', async () => {
    const first = await askAround('job', 500);
    expect(first).not.toBeNull();
    expect(await askAround('job', 500)).toBeNull();
    first?.();
    const second = await askAround('job', 500);
    expect(second).not.toBeNull();
    second?.();
  });

  it('waits for a page that is just being closed', async () => {
    const first = await askAround('job', 500);
    const waiting = askAround('job', 2500);
    setTimeout(() => first?.(), 600);
    const second = await waiting;
    expect(second).not.toBeNull();
    second?.();
  });

  it('of two that ask at once is given to exactly one', async () => {
    const both = await Promise.all([askAround('job', 500), askAround('job', 500)]);
    expect(both.filter((letGo) => letGo !== null)).toHaveLength(1);
    for (const letGo of both) letGo?.();
  });

  it('is given to one, however long the machine is busy with something else meanwhile', async () => {
    const both = [askAround('job', 500), askAround('job', 500)];
    const until = performance.now() + 700;
    while (performance.now() < until);
    const given = await Promise.all(both);
    expect(given.filter((letGo) => letGo !== null)).toHaveLength(1);
    const third = askAround('job', 500);
    const later = performance.now() + 700;
    while (performance.now() < later);
    expect(await third).toBeNull();
    for (const letGo of given) letGo?.();
  });

  it('of another job is another claim', async () => {
    const both = await Promise.all([askAround('job', 500), askAround('other', 500)]);
    expect(both).not.toContain(null);
    for (const letGo of both) letGo?.();
  });

  it('succeeds where pages cannot speak to each other', async () => {
    vi.stubGlobal('BroadcastChannel', undefined);
    const both = [await askAround('job', 500), await askAround('job', 500)];
    expect(both).not.toContain(null);
    vi.unstubAllGlobals();
  });
});
