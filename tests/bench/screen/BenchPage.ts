import { type Browser, type CDPSession, chromium, type Locator, type Page } from '@playwright/test';
import { launchOptions } from '../../e2e/support/launch.ts';
import { codeBytes, type HeapSnapshot } from './heapShares.ts';
import type { TraceEvent } from './scriptTime.ts';

/** What the page notes of itself from its first moment. */
interface Noted {
  readonly longTasks: { readonly at: number; readonly ms: number }[];
  readonly shifts: { readonly at: number; readonly by: number }[];
  readonly interactions: { readonly what: string; readonly ms: number }[];
}

/** What is called otherwise in another language. */
interface Named {
  readonly take: string;
  readonly bench: string;
}
const ENGLISH: Named = { take: 'Take the job', bench: 'Bench' };

/** The built program in a browser, with the browser's own instruments on it. */
export class BenchPage {
  private constructor(
    readonly browser: Browser,
    readonly page: Page,
    private readonly session: CDPSession,
    private readonly address: string,
  ) {}

  static async open(address: string, locale = 'en-US'): Promise<BenchPage> {
    const browser = await chromium.launch(launchOptions());
    const context = await browser.newContext({
      viewport: { width: 1280, height: 800 },
      serviceWorkers: 'block',
      locale,
    });
    const page = await context.newPage();
    await page.addInitScript(noteFromTheStart);
    const session = await context.newCDPSession(page);
    await session.send('HeapProfiler.enable');
    return new BenchPage(browser, page, session, address);
  }

  async board(title = 'Job board'): Promise<void> {
    await this.page.goto(this.address);
    await this.page.getByRole('heading', { name: title }).waitFor();
    await this.quiet();
  }

  /** Opens a job by its address and takes it; settles when its bench is drawn. */
  async job(id: string, named: Named = ENGLISH): Promise<void> {
    await this.page.evaluate((hash) => {
      location.hash = hash;
    }, `#/job/${id}`);
    await this.page.getByRole('button', { name: named.take }).first().click();
    await this.drawn(named);
    await this.quiet();
  }

  /** Opens a job that was taken before and left. */
  async reopen(id: string): Promise<void> {
    await this.page.evaluate((hash) => {
      location.hash = hash;
    }, `#/job/${id}`);
    await this.drawn(ENGLISH);
  }

  private async drawn({ bench }: Named): Promise<void> {
    await this.page.getByRole('region', { name: bench, exact: true }).locator('canvas').waitFor();
    // It comes up layer by layer.
    await this.page.waitForTimeout(500);
  }

  /** Waits till what goes on behind a screen that stands is done: code fetched ahead, evidence weighed. */
  async quiet(): Promise<void> {
    await this.page.waitForLoadState('networkidle');
    await this.page.waitForTimeout(2500);
  }

  button(name: string): Locator {
    return this.page.getByRole('button', { name: new RegExp(`^${name}`) }).first();
  }

  async middle(control: Locator): Promise<{ readonly x: number; readonly y: number }> {
    const box = await control.boundingBox();
    if (box === null) throw new Error(`not on the page: ${control}`);
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  }

  /** The browser's trace of what goes on meanwhile. */
  async trace(work: () => Promise<void>): Promise<readonly TraceEvent[]> {
    const events: TraceEvent[] = [];
    const collect = ({ value }: { value: object[] }): void => {
      for (const event of value) events.push(event as TraceEvent);
    };
    this.session.on('Tracing.dataCollected', collect);
    await this.session.send('Tracing.start', {
      transferMode: 'ReportEvents',
      traceConfig: { includedCategories: ['devtools.timeline', 'v8'], excludedCategories: ['*'] },
    });
    await work();
    const complete = new Promise((resolve) => this.session.once('Tracing.tracingComplete', resolve));
    await this.session.send('Tracing.end');
    await complete;
    this.session.off('Tracing.dataCollected', collect);
    return events;
  }

  /** Bytes in use on the page's heap once everything that can be let go is let go, and how much of it is compiled code. */
  async heap(): Promise<{ readonly bytes: number; readonly code: number }> {
    for (let i = 0; i < 3; i++) await this.session.send('HeapProfiler.collectGarbage');
    const { usedSize } = await this.session.send('Runtime.getHeapUsage');
    let text = '';
    const collect = ({ chunk }: { chunk: string }): void => {
      text += chunk;
    };
    this.session.on('HeapProfiler.addHeapSnapshotChunk', collect);
    await this.session.send('HeapProfiler.takeHeapSnapshot', { reportProgress: false });
    this.session.off('HeapProfiler.addHeapSnapshotChunk', collect);
    return { bytes: usedSize, code: codeBytes(JSON.parse(text) as HeapSnapshot) };
  }

  /**
   * Files of the build that page and workers had begun to fetch when the first element of this kind stood, and every font since:
   * letters are asked for by what stands.
   */
  async fetchedBy(element: 'h1' | 'canvas'): Promise<readonly string[]> {
    const at = await this.page.evaluate((name) => {
      const { stood } = window as unknown as { stood: Partial<Record<string, number>> };
      return stood[name] ?? Number.POSITIVE_INFINITY;
    }, element);
    return this.fetchedUntil(at);
  }

  /** The same, up to now. */
  fetchedByNow(): Promise<readonly string[]> {
    return this.fetchedUntil(Number.POSITIVE_INFINITY);
  }

  private async fetchedUntil(at: number): Promise<readonly string[]> {
    const [until, ofPage] = await this.page.evaluate((latest) => {
      const files = performance
        .getEntriesByType('resource')
        .filter((entry) => entry.startTime <= latest || entry.name.endsWith('.woff2'))
        .map((entry) => entry.name);
      return [performance.timeOrigin + latest, files] as const;
    }, at);
    const ofWorkers = await Promise.all(
      this.page.workers().map((worker) =>
        worker.evaluate((latest) => {
          const files = performance
            .getEntriesByType('resource')
            .filter((entry) => performance.timeOrigin + entry.startTime <= latest)
            .map((entry) => entry.name);
          return [location.href, ...files];
        }, until),
      ),
    );
    const own = [...ofPage, ...ofWorkers.flat()]
      .filter((url) => url.startsWith(this.address))
      .map((url) => url.slice(this.address.length));
    return [...new Set(['index.html', ...own])];
  }

  /** What the page noted since it was last asked. */
  noted(): Promise<Noted> {
    return this.page.evaluate(() => {
      const { noted } = window as unknown as { noted: Noted };
      return {
        longTasks: noted.longTasks.splice(0),
        shifts: noted.shifts.splice(0),
        interactions: noted.interactions.splice(0),
      };
    });
  }

  async close(): Promise<void> {
    await this.browser.close();
  }
}

/** Runs in the page before anything of the program does. */
function noteFromTheStart(): void {
  const noted: Noted = { longTasks: [], shifts: [], interactions: [] };
  const stood: Partial<Record<string, number>> = {};
  Object.assign(window, { noted, stood });
  new MutationObserver(() => {
    for (const name of ['h1', 'canvas']) {
      if (stood[name] === undefined && document.querySelector(name) !== null) stood[name] = performance.now();
    }
  }).observe(document, { childList: true, subtree: true });
  const watch = (type: string, note: (entry: PerformanceEntry) => void, more: object = {}): void => {
    new PerformanceObserver((list) => list.getEntries().forEach(note)).observe({
      type,
      buffered: true,
      ...more,
    });
  };
  watch('longtask', ({ startTime, duration }) => noted.longTasks.push({ at: startTime, ms: duration }));
  watch('layout-shift', (entry) => {
    const { value, hadRecentInput } = entry as PerformanceEntry & { value: number; hadRecentInput: boolean };
    if (!hadRecentInput) noted.shifts.push({ at: entry.startTime, by: value });
  });
  watch(
    'event',
    (entry) => {
      const { interactionId } = entry as PerformanceEntry & { interactionId?: number };
      if (interactionId) noted.interactions.push({ what: entry.name, ms: entry.duration });
    },
    { durationThreshold: 16 },
  );
}
