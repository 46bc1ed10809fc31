import type { Page } from '@playwright/test';
import { say } from '../../../src/text/translate.ts';
import type { SideTab } from '../../../src/ui/panels/SideColumn.tsx';
import { handedOut } from '../../e2e/support/handedOut.ts';

/** One screen to look at: how to come to it from where the walk stands, and how to go back. Names by the language of the page. */
export interface Stop {
  readonly name: string;
  /** The page is taken in its whole length, or only what the window shows. */
  readonly long?: boolean;
  open(page: Page): Promise<void>;
  /** What has to be done anew in each size of the window before its picture is taken. */
  atEachSize?(page: Page): Promise<void>;
  close(page: Page): Promise<void>;
}

const nothing = async (): Promise<void> => {};

/** What stands there already. */
export function asItStands(name: string, long = false): Stop {
  return { name, long, open: nothing, close: nothing };
}

export function tab(id: SideTab, name: string = id): Stop {
  return { name, open: (page) => page.locator(`#tab-${id}`).click(), close: nothing };
}

/** A page behind the keys of a side panel. */
export function pageOf(id: 'data' | 'reader', keys: 'service' | 'reader', page: string): Stop {
  return {
    name: `${id}-${page}`,
    open: async (on) => {
      await on.locator(`#tab-${id}`).click();
      await on.locator(`#${keys}-tab-${page}`).click();
    },
    close: nothing,
  };
}

/** A dialog that a button opens. */
export function dialog(
  name: string,
  button: () => string,
  then: (page: Page) => Promise<void> = nothing,
): Stop {
  return {
    name,
    open: async (page) => {
      await page.getByRole('button', { name: button(), exact: true }).first().click();
      await page.locator('dialog[open]').waitFor();
      await then(page);
    },
    close: async (page) => {
      await page.keyboard.press('Escape');
      await page.locator('dialog[open]').waitFor({ state: 'detached' });
    },
  };
}

/** What becomes of files that are opened on the board. It leaves the one that came on it there, for the next picture. */
export const JOB_FILES: Stop = {
  name: 'job-files',
  open: async (page) => {
    await page.locator('.open-files').waitFor({ timeout: 60_000 });
    await page.setInputFiles('input[type=file]', handedOut());
    await page.locator('.job-file-answer').waitFor({ timeout: 60_000 });
    await page.locator('.job-file-problems').waitFor();
  },
  close: async (page) => {
    await page.keyboard.press('Escape');
    await page.locator('.card-file').waitFor();
  },
};

export const ON_EVERY_BENCH: readonly Stop[] = [
  tab('order'),
  tab('log'),
  tab('suspects'),
  ...['circuit', 'tests', 'monitor', 'codes', 'tools'].map((page) => pageOf('data', 'service', page)),
  ...['codes', 'live', 'command'].map((page) => pageOf('reader', 'reader', page)),
  dialog('settings', () => say('bench.settings')),
  dialog('shortcuts', () => say('bench.shortcuts')),
  dialog('cupboard', () => say('bench.cupboard')),
  dialog('road', () => say('roadTest.open')),
];

export const verdictDialog: Stop = dialog(
  'verdict',
  () => say('bench.verdict'),
  async (page) => {
    await page.locator('.verdict-items input').nth(2).check();
  },
);

export const markDialog: Stop = {
  name: 'mark',
  open: async (page) => {
    await page.locator('#tab-suspects').click();
    await page.locator('.suspect-cleared .suspect-head').first().click();
    await page.locator('dialog[open]').waitFor();
  },
  close: (page) => page.keyboard.press('Escape'),
};

export const closeDialog: Stop = dialog('close', () => say('bench.closeJob'));
