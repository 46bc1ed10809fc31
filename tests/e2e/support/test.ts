import { test as base, expect } from '@playwright/test';
import { PageWatch } from './PageWatch.ts';

/** Playwright's `test`, with every page watched: a test also fails when its page complained (see `PageWatch`). */
export const test = base.extend<{ watch: PageWatch }>({
  watch: [
    async ({ page }, use) => {
      const watch = new PageWatch(page);
      await use(watch);
      expect(watch.complaints, 'errors and outside requests while the test ran').toEqual([]);
    },
    { auto: true },
  ],
});

export { expect };
