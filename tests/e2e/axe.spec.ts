import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from '@playwright/test';
import { expect, test } from './support/test.ts';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Finding {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}

/** What axe finds wrong on the page as it stands, by the rules of WCAG 2.0 to 2.2, levels A and AA. */
async function findings(page: Page): Promise<string[]> {
  await page.evaluate(AXE);
  const violations = await page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(where: Document, how: object): Promise<{ violations: Finding[] }> };
    };
    const values = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];
    return (await axe.run(document, { runOnly: { type: 'tag', values } })).violations;
  });
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`);
}

test('axe finds nothing on the board, the work order, the bench, the verdict and the debrief', async ({
  page,
}) => {
  await page.goto('./?render=canvas');
  await expect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();
  expect(await findings(page), 'job board').toEqual([]);
  await page.getByRole('button', { name: /Ready by Friday/ }).click();
  await expect(page.getByRole('button', { name: 'Take the job' })).toBeVisible();
  expect(await findings(page), 'work order').toEqual([]);
  await page.getByRole('button', { name: 'Take the job' }).click();
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
  await page.getByRole('button', { name: 'Log this reading' }).click();
  for (const tab of ['Work order', 'Log', 'Suspects', 'Service data', 'Reader']) {
    await page.getByRole('tab', { name: tab, exact: true }).click();
    expect(await findings(page), tab).toEqual([]);
  }
  await page.getByRole('tab', { name: 'Suspects' }).click();
  await page.getByRole('button', { name: 'Fuse undecided' }).click();
  await page.getByRole('radio', { name: /^Cleared/ }).check();
  await page.getByRole('checkbox').check();
  expect(await findings(page), 'a suspect').toEqual([]);
  await page.getByRole('button', { name: 'Set this mark' }).click();
  await page.getByRole('button', { name: 'Entry 1', exact: true }).click();
  expect(await findings(page), 'the board with a mark').toEqual([]);
  await page.getByRole('tab', { name: 'Reader' }).click();
  await page.getByRole('radiogroup', { name: 'Key' }).getByRole('radio', { name: 'On', exact: true }).click();
  await page.getByRole('button', { name: 'Read codes' }).click();
  expect(await findings(page), 'codes').toEqual([]);
  for (const readerPage of ['Live values', 'Command']) {
    await page.getByRole('tab', { name: readerPage }).click();
    expect(await findings(page), readerPage).toEqual([]);
  }
  await page.getByRole('tab', { name: 'Service data' }).click();
  for (const sheet of ['Tests', 'Monitor', 'Codes', 'Tools']) {
    await page.getByRole('tab', { name: sheet, exact: true }).click();
    expect(await findings(page), `service data, ${sheet}`).toEqual([]);
  }
  await page
    .getByRole('radiogroup', { name: 'Key' })
    .getByRole('radio', { name: 'Off', exact: true })
    .click();
  await page.getByRole('button', { name: 'Road test' }).click();
  await page.getByRole('button', { name: 'Drive 2 cycles' }).click();
  await expect(page.getByRole('heading', { name: 'The last drive' })).toBeVisible();
  expect(await findings(page), 'road test').toEqual([]);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Parts cupboard' }).click();
  expect(await findings(page), 'parts cupboard').toEqual([]);
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Give a verdict' }).click();
  await page.getByRole('radio', { name: 'the unit (leak detection pump)' }).check();
  expect(await findings(page), 'verdict on the unit').toEqual([]);
  await page.getByRole('radio', { name: 'nothing wrong here' }).check();
  expect(await findings(page), 'verdict').toEqual([]);
  await page.getByRole('button', { name: 'Give this verdict' }).click();
  await page.getByRole('button', { name: 'Lock it' }).click();
  await page.getByRole('button', { name: 'Close the job' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Close the job' }).click();
  await expect(page.getByRole('heading', { name: 'Debrief' })).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('main')).toContainText('Your verdict was not right.');
  expect(await findings(page), 'debrief').toEqual([]);
});

test('axe can find: a picture without words is reported', async ({ page }) => {
  await page.goto('./');
  await expect(page.getByRole('heading', { name: 'Job board' })).toBeVisible();
  await page.evaluate(() => {
    const picture = document.createElement('img');
    picture.src = 'data:image/gif;base64,R0lGODlhAQABAAAAACwAAAAAAQABAAA=';
    picture.width = 40;
    document.body.append(picture);
  });
  expect((await findings(page)).some((finding) => finding.startsWith('image-alt'))).toBe(true);
});
