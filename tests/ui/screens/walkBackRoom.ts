import type { Page } from '@playwright/test';
import type { Camera } from './Camera.ts';
import { asItStands, type Stop } from './stops.ts';

type PaneName = 'form' | 'text' | 'bench' | 'proof';

/** Which panes lie behind keys follows from the width; where one has a column of its own, its name is no key. */
async function show(page: Page, id: PaneName): Promise<void> {
  const tab = page.locator(`button#pane-${id}`);
  if ((await tab.count()) > 0) await tab.click();
}

/** A pane of an open draft from its top; with room for columns the others stand beside it. */
function pane(id: PaneName): Stop {
  return {
    name: `draft-${id}`,
    open: async () => {},
    atEachSize: async (page) => {
      await show(page, id);
      await page.locator(`#pane-${id}-body`).evaluate((body) => body.scrollTo(0, 0));
      await page.evaluate(() => scrollTo(0, 0));
    },
    close: async () => {},
  };
}

/** The card of the fault that was chosen, with its readings below. */
const FAULT_CARD: Stop = {
  name: 'draft-fault',
  open: async () => {},
  atEachSize: async (page) => {
    await show(page, 'form');
    // A narrow page is taken in its whole length, from its top.
    await page.locator('#field-faults-0').evaluate((card) => {
      if (innerWidth < 900) scrollTo(0, 0);
      else card.scrollIntoView({ block: 'start' });
    });
  },
  close: async () => {},
};

/** A dialog of the back room, by the button that opens it. */
function dialogBehind(name: string, button: string): Stop {
  return {
    name,
    open: async (page) => {
      await page.locator(button).first().click();
      await page.locator('dialog[open]').waitFor();
    },
    close: async (page) => {
      await page.keyboard.press('Escape');
      await page.locator('dialog[open]').waitFor({ state: 'detached' });
    },
  };
}

/** The back room from an empty shelf to a draft that is proved and may be handed out. */
export async function walkBackRoom(page: Page, camera: Camera): Promise<void> {
  await page.goto('./?render=canvas#/back-room');
  await page.locator('.shelf .act').waitFor({ timeout: 60_000 });
  await camera.take([asItStands('shelf-empty')]);
  await page.locator('.shelf .act').click();
  await page.locator('.bench-pane .stage canvas').waitFor({ timeout: 60_000 });
  await camera.take([asItStands('draft-new')]);
  const written: Readonly<Record<string, string>> = {
    title: 'Two pumps and a lamp',
    summary: 'The pump was renewed and the code came back.',
    'aims-0': 'Judge the unit before its wiring.',
    'work-order-number': 'HP-3001',
    'work-order-complaint': 'The lamp is on again.',
    remark: 'The ground wire was green inside.',
  };
  for (const [field, words] of Object.entries(written)) await page.locator(`#field-${field}`).fill(words);
  const addFault = '#field-faults > button.add';
  await camera.take([dialogBehind('fault-picker', addFault)]);
  await page.locator(addFault).click();
  await page.getByRole('button', { name: 'The ground wire has too much resistance.' }).click();
  await page.locator('.readings table').first().waitFor({ timeout: 120_000 });
  await camera.take([FAULT_CARD]);
  await show(page, 'proof');
  await page.locator('.proof-head-good, .proof-head-mend').waitFor({ timeout: 300_000 });
  await camera.take([pane('form'), pane('text'), pane('bench'), pane('proof')]);
  await camera.take([dialogBehind('hand-out', '.draft-out .act')]);
  await page.locator('.draft-bar button').first().click();
  await page.locator('.shelf-drafts').waitFor();
  await camera.take([asItStands('shelf'), dialogBehind('draft-removed', '.shelf-keys button:last-child')]);
}
