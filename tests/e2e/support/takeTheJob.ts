import { expect, type Page } from '@playwright/test';
import type { Hands } from './Hands.ts';

/** Takes the job once its work order lies there: a bench that is being set up has nothing to press yet. */
export async function takeTheJob(page: Page, hands: Hands): Promise<void> {
  await expect(page.getByRole('button', { name: 'Take the job' }).first()).toBeVisible({ timeout: 30_000 });
  await hands.press('Take the job');
  await expect(page.getByRole('region', { name: 'Bench' }).locator('canvas')).toBeVisible({
    timeout: 30_000,
  });
}
