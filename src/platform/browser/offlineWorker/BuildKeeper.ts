import { cachePrefix, type KeptBuild, pageClaim, pageClaimPrefix } from './KeptBuild.ts';

/** The browser as the keeper needs it. */
export interface KeeperWorld {
  /** Address of the folder that the program lies in, with its closing slash. */
  readonly scope: string;
  readonly caches: Pick<CacheStorage, 'open' | 'keys' | 'delete' | 'match'>;
  fetch(request: Request): Promise<Response>;
  /** Whether another version is being installed or waits to take over. */
  anotherComes(): boolean;
  /** Names of the claims that pages hold; null where the browser has none. */
  claims(): Promise<readonly string[] | null>;
}

/** So many files are fetched side by side: the page may need the line, too. */
const SIDE_BY_SIDE = 4;

/**
 * Keeps one build whole, in a cache of its own. A page is always answered from the build of the worker that answers it. Scripts and
 * whatever else has its hash in its name are answered from any build that is still kept, since the name says what is in it: a page
 * of an older build that is open goes on with its own.
 */
export class BuildKeeper {
  private readonly cacheName: string;

  constructor(
    private readonly build: KeptBuild,
    private readonly world: KeeperWorld,
  ) {
    this.cacheName = `${cachePrefix(world.scope)}${build.version}`;
  }

  /** Fetches and keeps every file. Rejects, and keeps nothing, when one is missing or is not what the build made. */
  async install(): Promise<void> {
    try {
      await this.fill();
    } catch (error) {
      await this.world.caches.delete(this.cacheName);
      throw error;
    }
  }

  /** Fetches again what a browser short of room threw out. What is not to be had now stays away. */
  async mend(): Promise<void> {
    const cache = await this.world.caches.open(this.cacheName);
    if ((await cache.keys()).length < this.build.files.length) await this.fill().catch(() => {});
  }

  /** Lets older builds go, unless a page of one is open or another version is on its way. */
  async tidy(): Promise<void> {
    const { caches, scope } = this.world;
    const others = (await caches.keys()).filter(
      (name) => name.startsWith(cachePrefix(scope)) && name !== this.cacheName,
    );
    if (others.length === 0 || this.world.anotherComes()) return;
    const own = pageClaim(scope, this.build.page);
    const claims = (await this.world.claims()) ?? [];
    if (claims.some((claim) => claim.startsWith(pageClaimPrefix(scope)) && claim !== own)) return;
    await Promise.all(others.map((name) => caches.delete(name)));
  }

  /** The kept answer to a request, or undefined when it is none of the program's. */
  async answer(request: Request): Promise<Response | undefined> {
    const { caches, scope } = this.world;
    const url = request.url.split('#')[0] ?? '';
    if (request.method !== 'GET' || !url.startsWith(scope)) return undefined;
    const cache = await caches.open(this.cacheName);
    if (request.mode === 'navigate') {
      const path = url.slice(scope.length).split('?')[0];
      if (path === '' || path === 'index.html') return cache.match(this.addressOf('index.html'), ANY_VARIANT);
    }
    const own = await cache.match(url, ANY_VARIANT);
    if (own !== undefined || !hasHashInName(url.slice(scope.length))) return own;
    return caches.match(url, ANY_VARIANT);
  }

  private async fill(): Promise<void> {
    const cache = await this.world.caches.open(this.cacheName);
    const open = [...this.build.files];
    const line = async (): Promise<void> => {
      for (let file = open.shift(); file !== undefined; file = open.shift()) {
        const [path, integrity] = file;
        const url = this.addressOf(path);
        if ((await cache.match(url, ANY_VARIANT)) !== undefined) continue;
        await cache.put(url, await this.obtain(path, integrity));
      }
    };
    try {
      await Promise.all(Array.from({ length: SIDE_BY_SIDE }, line));
    } finally {
      // After a failure the other lines stop as well.
      open.length = 0;
    }
  }

  private async obtain(path: string, integrity: string): Promise<Response> {
    const url = this.addressOf(path);
    const hashed = hasHashInName(path);
    // An older build may have the very file.
    const kept = hashed ? await this.world.caches.match(url, ANY_VARIANT) : undefined;
    if (kept !== undefined) return kept;
    const ask = (cache: RequestCache): Promise<Response> =>
      this.world.fetch(new Request(url, { integrity, cache, credentials: 'same-origin' }));
    // What the page has just fetched need not be fetched again; a copy gone bad on the way is.
    const response = await (hashed ? ask('default').catch(() => ask('reload')) : ask('no-cache'));
    if (!response.ok) throw new Error(`${response.status}: ${path}`);
    return plain(response);
  }

  private addressOf(path: string): string {
    return new URL(path, this.world.scope).href;
  }
}

/** Servers answer with `Vary`, and a script, a worker and the keeper do not ask with the same headers. */
const ANY_VARIANT: CacheQueryOptions = { ignoreVary: true };

/** The build puts everything that has its hash in its name into one folder, and nothing else. */
function hasHashInName(path: string): boolean {
  return path.startsWith('assets/');
}

/** Some servers send `index.html` on to the folder; an answer that was sent on may not be given to a page (Fetch, HTTP fetch). */
function plain(response: Response): Response {
  if (!response.redirected) return response;
  const { status, statusText, headers } = response;
  return new Response(response.body, { status, statusText, headers });
}
