import type { Page } from '@playwright/test';

interface Task {
  readonly at: number;
  readonly ms: number;
}

/** Tasks of more than 50 ms on the page, as the browser itself counts them. Told, never tested: machines differ. */
export class LongTasks {
  constructor(private readonly page: Page) {}

  async watch(): Promise<void> {
    await this.page.addInitScript(() => {
      const found: Task[] = [];
      Object.assign(window, { longTasks: found });
      new PerformanceObserver((list) => {
        for (const { startTime, duration } of list.getEntries()) {
          found.push({ at: Math.round(startTime), ms: Math.round(duration) });
        }
      }).observe({ type: 'longtask', buffered: true });
    });
  }

  /** One line on what there was since it was last asked. */
  async tell(during: string): Promise<string> {
    const found = await this.page.evaluate(() => {
      const { longTasks } = window as unknown as { longTasks: Task[] };
      return longTasks.splice(0);
    });
    const each = found.map(({ ms }) => `${ms} ms`).join(', ');
    return `${during}: ${found.length === 0 ? 'no long task' : `long tasks of ${each}`}`;
  }
}
