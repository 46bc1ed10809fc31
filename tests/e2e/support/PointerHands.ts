import type { Locator, Page } from '@playwright/test';
import { type Hands, type Place, startsWith } from './Hands.ts';

const MOST_LOOKS = 100;

/** Works the page with a mouse: drags what can be carried, clicks the rest. */
export class PointerHands implements Hands {
  private carried = 0;

  constructor(private readonly page: Page) {}

  async carry(thing: string, place: Place): Promise<void> {
    const from = await this.middle(this.button(thing));
    // Every other thing is dragged; the rest go by a click and another click.
    this.carried += 1;
    if (this.carried % 2 === 0) {
      await this.page.mouse.click(from.x, from.y);
      const to = await this.middle(this.button(place.control));
      await this.page.mouse.click(to.x, to.y);
      return;
    }
    const to = await this.middle(this.button(place.control));
    await this.page.mouse.move(from.x, from.y);
    await this.page.mouse.down();
    await this.page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2, { steps: 3 });
    await this.page.mouse.move(to.x, to.y, { steps: 3 });
    await this.page.mouse.up();
  }

  async layDown(thing: string): Promise<void> {
    const from = await this.middle(this.button(thing));
    const bench = await this.page.getByRole('region', { name: 'Bench' }).locator('canvas').boundingBox();
    if (bench === null) throw new Error('the bench is not drawn');
    await this.page.mouse.move(from.x, from.y);
    await this.page.mouse.down();
    // The upper edge of the mat, left of the plug's picture: nothing is drawn there.
    await this.page.mouse.move(bench.x + bench.width * 0.3, bench.y + bench.height * 0.04, { steps: 6 });
    await this.page.mouse.up();
  }

  async press(button: string): Promise<void> {
    await this.button(button).click();
  }

  async choose(group: string, option: string): Promise<void> {
    await this.page
      .getByRole('radiogroup', { name: group, exact: true })
      .getByRole('radio', { name: option, exact: true })
      .click();
  }

  async open(tab: string): Promise<void> {
    await this.page.getByRole('tab', { name: tab }).click();
  }

  async stroke(): Promise<void> {
    const handle = await this.middle(this.page.getByRole('slider', { name: 'Pump handle' }));
    await this.page.mouse.move(handle.x, handle.y);
    await this.page.mouse.down();
    await this.page.mouse.move(handle.x + 220, handle.y, { steps: 6 });
    await this.page.waitForTimeout(250);
    await this.page.mouse.move(handle.x - 40, handle.y, { steps: 6 });
    await this.page.waitForTimeout(250);
    await this.page.mouse.up();
  }

  async log(): Promise<void> {
    await this.button('Log this reading').click();
  }

  async verdict(item: string, mode: string, cites: readonly number[]): Promise<void> {
    await this.button('Give a verdict').click();
    await this.page.getByRole('radio', { name: item, exact: true }).check();
    await this.page.getByRole('radio', { name: mode, exact: true }).check();
    for (const id of cites) await this.page.getByRole('checkbox', { name: startsWith(`${id} `) }).check();
    await this.button('Give this verdict').click();
    await this.button('Lock it').click();
  }

  async fit(item: string): Promise<void> {
    await this.button('Parts cupboard').click();
    await this.button(`Fit ${item}`).click();
    await this.button('Fit it').click();
  }

  async close(): Promise<void> {
    await this.button('Close the job').click();
    await this.page.getByRole('dialog').getByRole('button', { name: 'Close the job' }).click();
  }

  private button(name: string): Locator {
    return this.page.getByRole('button', { name: startsWith(name) }).first();
  }

  /** Where a control is once it stands still: on a busy machine what was just done may not be laid out yet. */
  private async middle(control: Locator): Promise<{ x: number; y: number }> {
    let before = await control.boundingBox();
    for (let looks = 0; looks < MOST_LOOKS; looks++) {
      await this.page.evaluate(nextFrame);
      const box = await control.boundingBox();
      if (box !== null && before !== null && box.x === before.x && box.y === before.y)
        return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      before = box;
    }
    throw new Error(`not on the page, or never still: ${control}`);
  }
}

/** Runs in the page. One that is not seen draws no frames. */
function nextFrame(): Promise<void> {
  return new Promise((resolve) => {
    requestAnimationFrame(() => resolve());
    setTimeout(resolve, 100);
  });
}
