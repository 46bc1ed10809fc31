import type { Page, TestInfo } from '@playwright/test';

/** The window sizes that every screen is looked at in. */
export const WINDOW_SIZES = [
  { width: 1280, height: 800 },
  { width: 1920, height: 1080 },
  { width: 1024, height: 768 },
] as const;

/** Keeps a picture of the page with the test's results. Gives the file's path. */
export async function takeShot(page: Page, info: TestInfo, name: string): Promise<string> {
  const path = info.outputPath(`${name}.png`);
  await page.screenshot({ path });
  return path;
}
