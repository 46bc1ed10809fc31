import { expect, type Locator, type Page } from '@playwright/test';
import type { Announcements } from './Announcements.ts';
import { type Hands, type Place, startsWith } from './Hands.ts';

/** What the meter was heard to show, in volts or ohms; over range is endless. */
export interface MeterReading {
  readonly unit: 'volts' | 'ohms';
  readonly value: number;
}

const UNITS: Readonly<Record<string, readonly [MeterReading['unit'], number]>> = {
  volts: ['volts', 1],
  millivolts: ['volts', 1e-3],
  ohms: ['ohms', 1],
  kilohms: ['ohms', 1e3],
  megohms: ['ohms', 1e6],
};

/**
 * Works the page as a screen reader does: goes to a control by its role and name, whatever it looks like and wherever it is, and
 * presses it. It sees nothing; readings are heard.
 */
export class MirrorHands implements Hands {
  constructor(
    private readonly page: Page,
    private readonly heard: Announcements,
  ) {}

  async carry(thing: string, place: Place): Promise<void> {
    await this.press(thing);
    await this.pick(place.listed);
  }

  async layDown(thing: string): Promise<void> {
    await this.press(thing);
    await this.pick('Lay it on the mat');
  }

  async press(button: string | RegExp): Promise<void> {
    await this.page
      .getByRole('button', { name: typeof button === 'string' ? startsWith(button) : button })
      .first()
      .press('Enter');
  }

  async choose(group: string, option: string): Promise<void> {
    const radio = this.page
      .getByRole('radiogroup', { name: group, exact: true })
      .or(this.page.getByRole('group', { name: group, exact: true }))
      .getByRole('radio', { name: option, exact: true });
    await radio.press('Space');
    await expect(radio).toBeChecked();
  }

  async open(tab: string): Promise<void> {
    await this.page.getByRole('tab', { name: tab, exact: true }).press('Enter');
  }

  async stroke(): Promise<void> {
    await this.press('Full stroke');
    await this.page.waitForTimeout(600);
  }

  async log(): Promise<void> {
    await this.press('Log this reading');
  }

  async verdict(item: string, mode: string, cites: readonly number[]): Promise<void> {
    await this.press('Give a verdict');
    const dialog = this.page.getByRole('dialog', { name: 'Verdict' });
    for (const name of [item, mode]) await dialog.getByRole('radio', { name, exact: true }).press('Space');
    for (const id of cites) {
      await dialog.getByRole('checkbox', { name: startsWith(`${id} `) }).press('Space');
    }
    await this.press('Give this verdict');
    await this.press('Lock it');
  }

  async fit(item: string): Promise<void> {
    await this.press('Parts cupboard');
    await this.press(`Fit ${item}`);
    await this.press('Fit it');
  }

  /** Two cycles on the road; the focus goes back to where it was, once. */
  private async driveTwoCycles(): Promise<void> {
    await this.press('Road test');
    await this.until('Drive 2 cycles', /^Back after 2 cycles/);
    await this.page.getByRole('dialog').getByRole('button', { name: 'Close' }).press('Enter');
    await expect(this.page.getByRole('dialog')).toHaveCount(0);
    await expect(this.page.getByRole('button', { name: 'Road test' })).toBeFocused();
  }

  /**
   * Drives two cycles and reads the codes, again where some are left: whether the monitor runs in a cycle is also the weather's and
   * the road's, and where it ran in none a permanent code stays. Gives what was read last.
   */
  async driveUntilNoCodes(read: () => Promise<string>): Promise<string> {
    let left = '';
    for (let drives = 0; drives < 4 && !left.includes('no codes'); drives++) {
      await this.driveTwoCycles();
      left = await read();
    }
    return left;
  }

  async close(): Promise<void> {
    await this.press('Close the job');
    await this.page.getByRole('dialog').getByRole('button', { name: 'Close the job' }).press('Enter');
  }

  /** Waits for the instruments by the bench's own button, has them read out, and understands what is said of the meter. */
  async hearMeter(): Promise<MeterReading> {
    await this.until('Until steady', /^(Steady after|Still moving after) /);
    const said = await this.until('Meter shows', /^Meter .*\. Gauge /);
    if (said.startsWith('Meter over range.')) return { unit: 'ohms', value: Number.POSITIVE_INFINITY };
    const [, digits = '', word = ''] = /^Meter (-?\d+\.?\d*) (\w+)\. /.exec(said) ?? [];
    const unit = UNITS[word];
    if (unit === undefined) throw new Error(`a reading nobody can follow: ${said}`);
    return { unit: unit[0], value: Number(digits) * unit[1] };
  }

  /** Presses a button and waits until something like this is said. */
  async until(button: string, like: RegExp): Promise<string> {
    const mark = await this.heard.mark();
    await this.press(button);
    return this.heard.next(mark, like);
  }

  /** Takes an entry of the list of places that opens for what is held. */
  private async pick(listed: string): Promise<void> {
    const option: Locator = this.page.getByRole('option', { name: startsWith(listed) }).first();
    await option.click();
    await expect(this.page.getByRole('listbox')).toHaveCount(0);
  }
}
