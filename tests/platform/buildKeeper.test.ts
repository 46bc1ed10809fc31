import { createHash } from 'node:crypto';
import { describe, expect, it } from 'vitest';
import { BuildKeeper } from '../../src/platform/browser/offlineWorker/BuildKeeper.ts';
import { cachePrefix, pageClaim } from '../../src/platform/browser/offlineWorker/KeptBuild.ts';

const SCOPE = 'https://shop.test/bench/';

/** Caches as the Service Workers standard has them, as far as the keeper uses them; `room` is how many answers fit. */
class FakeCaches {
  readonly kept = new Map<string, Map<string, Response>>();
  room = Number.POSITIVE_INFINITY;

  open(name: string) {
    const cache = this.kept.get(name) ?? new Map<string, Response>();
    this.kept.set(name, cache);
    return Promise.resolve({
      match: (url: string) => Promise.resolve(cache.get(url)?.clone()),
      keys: () => Promise.resolve([...cache.keys()]),
      put: async (url: string, response: Response) => {
        if (this.room-- <= 0) throw new DOMException('full', 'QuotaExceededError');
        cache.set(url, response);
      },
    } as unknown as Cache);
  }
  keys = async () => [...this.kept.keys()];
  delete = async (name: string) => this.kept.delete(name);
  match = async (url: string | URL | Request) => {
    for (const cache of this.kept.values()) {
      const found = cache.get(String(url));
      if (found !== undefined) return found.clone();
    }
    return undefined;
  };
}

const hashOf = (text: string): string => `sha256-${createHash('sha256').update(text).digest('base64')}`;

/** A browser with a server behind it: what the server has is told by path. */
function browser(served: Record<string, string>) {
  const caches = new FakeCaches();
  const asked: string[] = [];
  const state = { claims: [] as string[] | null, anotherComes: false };
  const world = {
    scope: SCOPE,
    caches,
    fetch: async (request: Request) => {
      const path = request.url.slice(SCOPE.length);
      asked.push(path);
      const text = served[path];
      if (text === undefined) return new Response('', { status: 404 });
      // Subresource Integrity: another content is a failed request.
      if (hashOf(text) !== request.integrity) throw new TypeError('integrity');
      return new Response(text);
    },
    anotherComes: () => state.anotherComes,
    claims: async () => state.claims,
  };
  const keeper = (version: string, files: Record<string, string>): BuildKeeper =>
    new BuildKeeper(
      {
        version,
        page: `assets/index-${version}.js`,
        files: Object.entries(files).map(([path, text]) => [path, hashOf(text)] as const),
      },
      world,
    );
  return { caches, asked, state, keeper };
}

const FIRST = {
  'index.html': 'page 1',
  'assets/index-aaaaaaaa.js': 'one',
  'assets/gauge-11111111.js': 'gauge',
};
const SECOND = {
  'index.html': 'page 2',
  'assets/index-bbbbbbbb.js': 'two',
  'assets/gauge-11111111.js': 'gauge',
};
const NAME = (version: string): string => `${cachePrefix(SCOPE)}${version}`;

/** A page's own first request; Node's Request cannot be made one. */
const opening = (path: string): Request =>
  ({ method: 'GET', mode: 'navigate', url: `${SCOPE}${path}` }) as unknown as Request;
const words = async (answer: Promise<Response | undefined>): Promise<string | undefined> =>
  (await answer)?.text();

describe('the keeper of a build', () => {
  it('answers with all of it, the page under whatever address it is opened by', async () => {
    const { keeper } = browser(FIRST);
    const first = keeper('aaaaaaaa', FIRST);
    await first.install();
    for (const path of ['', 'index.html', '?render=canvas', '#/job/x', '?a=1#/job/x'])
      expect(await words(first.answer(opening(path)))).toBe('page 1');
    expect(await words(first.answer(new Request(`${SCOPE}assets/gauge-11111111.js`)))).toBe('gauge');
  });

  it('leaves alone what is not its own', async () => {
    const { keeper } = browser(FIRST);
    const first = keeper('aaaaaaaa', FIRST);
    await first.install();
    expect(await first.answer(new Request(`${SCOPE}other.txt`))).toBeUndefined();
    expect(await first.answer(new Request('https://shop.test/elsewhere/index.html'))).toBeUndefined();
    expect(await first.answer(new Request(`${SCOPE}index.html`, { method: 'POST' }))).toBeUndefined();
  });

  it('keeps nothing when a file is missing, is another than the build made, or finds no room', async () => {
    const half = browser({ ...FIRST, 'index.html': 'page of another build' });
    await expect(half.keeper('aaaaaaaa', FIRST).install()).rejects.toThrow();
    expect(await half.caches.keys()).toEqual([]);

    const { 'assets/gauge-11111111.js': _gone, ...less } = FIRST;
    const missing = browser(less);
    await expect(missing.keeper('aaaaaaaa', FIRST).install()).rejects.toThrow('404');
    expect(await missing.caches.keys()).toEqual([]);

    const full = browser(FIRST);
    full.caches.room = 1;
    await expect(full.keeper('aaaaaaaa', FIRST).install()).rejects.toThrow();
    expect(await full.caches.keys()).toEqual([]);
  });

  it('fetches nothing again that an older build has under the same hash', async () => {
    const { keeper, asked } = browser({ ...FIRST, ...SECOND });
    const both = { ...FIRST, ...SECOND };
    await keeper('aaaaaaaa', { ...FIRST, 'index.html': both['index.html'] }).install();
    asked.length = 0;
    await keeper('bbbbbbbb', SECOND).install();
    expect(asked.filter((path) => path.startsWith('assets/gauge'))).toEqual([]);
    expect(asked).toContain('index.html');
  });

  it('mends what the browser threw out, and does without what is not to be had', async () => {
    const served: Record<string, string> = { ...FIRST };
    const { keeper, caches } = browser(served);
    const first = keeper('aaaaaaaa', FIRST);
    await first.install();
    caches.kept.get(NAME('aaaaaaaa'))?.delete(`${SCOPE}assets/gauge-11111111.js`);
    delete served['assets/gauge-11111111.js'];
    await first.mend();
    expect(await words(first.answer(opening('')))).toBe('page 1');
    served['assets/gauge-11111111.js'] = 'gauge';
    await first.mend();
    expect(await words(first.answer(new Request(`${SCOPE}assets/gauge-11111111.js`)))).toBe('gauge');
  });
});

describe('two builds on one device', () => {
  async function bothKept() {
    const served: Record<string, string> = { ...FIRST };
    const all = browser(served);
    const first = all.keeper('aaaaaaaa', FIRST);
    await first.install();
    Object.assign(served, SECOND);
    const second = all.keeper('bbbbbbbb', SECOND);
    await second.install();
    return { ...all, first, second };
  }

  it('never mix: each answers with its own page, and a script comes by the hash in its name', async () => {
    const { first, second } = await bothKept();
    expect(await words(first.answer(opening('')))).toBe('page 1');
    expect(await words(second.answer(opening('')))).toBe('page 2');
    // A page of the first that is still open asks the second.
    expect(await words(second.answer(new Request(`${SCOPE}assets/index-aaaaaaaa.js`)))).toBe('one');
  });

  it('the older goes only when no page of it is open', async () => {
    const { second, caches, state } = await bothKept();
    state.claims = [
      pageClaim(SCOPE, 'assets/index-aaaaaaaa.js'),
      pageClaim(SCOPE, 'assets/index-bbbbbbbb.js'),
    ];
    await second.tidy();
    expect(await caches.keys()).toEqual([NAME('aaaaaaaa'), NAME('bbbbbbbb')]);
    state.claims = [pageClaim(SCOPE, 'assets/index-bbbbbbbb.js')];
    await second.tidy();
    expect(await caches.keys()).toEqual([NAME('bbbbbbbb')]);
  });

  it('the newer, which waits, is not thrown away by the older', async () => {
    const { first, caches, state } = await bothKept();
    state.anotherComes = true;
    await first.tidy();
    expect(await caches.keys()).toHaveLength(2);
  });

  it('what others keep on the same address is not touched, nor what lies in another folder', async () => {
    const { second, caches } = await bothKept();
    for (const name of ['somebody-else', `${cachePrefix('https://shop.test/other/')}cccccccc`])
      await caches.open(name);
    await second.tidy();
    expect(await caches.keys()).toEqual([
      NAME('bbbbbbbb'),
      'somebody-else',
      `${cachePrefix('https://shop.test/other/')}cccccccc`,
    ]);
  });

  it('where pages hold no claims the older goes at once', async () => {
    const { second, caches, state } = await bothKept();
    state.claims = null;
    await second.tidy();
    expect(await caches.keys()).toEqual([NAME('bbbbbbbb')]);
  });
});
