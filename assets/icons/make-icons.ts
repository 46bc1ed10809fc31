// Draws the program's icons again, from the colours of the theme: npx tsx assets/icons/make-icons.ts
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from '@playwright/test';
import { ICONS } from '../../src/platform/node/offline/icons.ts';
import { launchOptions } from '../../tests/e2e/support/launch.ts';
import { drawIcon } from './drawIcon.ts';

const browser = await chromium.launch(launchOptions());
const page = await browser.newPage();
for (const { file, pixels, purpose } of ICONS) {
  const drawing = drawIcon(purpose);
  const path = join(import.meta.dirname, file);
  if (pixels === null) {
    writeFileSync(path, drawing);
    continue;
  }
  await page.setViewportSize({ width: pixels, height: pixels });
  await page.setContent(
    `<style>body { margin: 0 } svg { display: block; width: ${pixels}px; height: ${pixels}px }</style>${drawing}`,
  );
  await page.screenshot({ path, omitBackground: true });
}
await browser.close();
