import { expect, type Page } from '@playwright/test';
import type { Hands, Place } from './Hands.ts';

const MOST_STEPS = 140;
const MOST_IN_GROUP = 40;

interface Focused {
  readonly name: string;
  /** Name of the group it is in, or ''. */
  readonly group: string;
  /** It is the control that is looked for. */
  readonly fits: boolean;
  /** The control that is looked for is in the same group, where arrow keys go. */
  readonly holds: boolean;
}

/** Works the page with keys only: Tab between groups, arrows inside, Enter to take and to choose. No mouse, no focus(). */
export class KeyHands implements Hands {
  constructor(private readonly page: Page) {}

  async carry(thing: string, place: Place): Promise<void> {
    await this.goTo(thing);
    await this.key('Enter');
    await this.pick(place.listed);
  }

  async layDown(thing: string): Promise<void> {
    await this.goTo(thing);
    await this.key('Enter');
    await this.pick('Lay it on the mat');
  }

  async press(button: string): Promise<void> {
    await this.goTo(button);
    await this.key('Enter');
  }

  async choose(group: string, option: string): Promise<void> {
    await this.goToGroup(group);
    for (let i = 0; i < 8; i++) {
      if ((await this.focused()).name === option) {
        await this.key('Space');
        return;
      }
      await this.key('ArrowDown');
    }
    throw new Error(`no ${option} among ${group}`);
  }

  async open(tab: string): Promise<void> {
    await this.goTo(tab, 'tab');
    await this.key('Enter');
  }

  async stroke(): Promise<void> {
    await this.goTo('Full stroke');
    await this.key('Enter');
    await this.page.waitForTimeout(600);
  }

  async log(): Promise<void> {
    await this.goTo('Log this reading');
    await this.key('Enter');
  }

  async verdict(item: string, mode: string, cites: readonly number[]): Promise<void> {
    await this.press('Give a verdict');
    await this.inDialog();
    await this.goTo('', 'radio');
    await this.radio(item);
    await this.key('Tab');
    await this.radio(mode);
    for (const id of cites) {
      await this.goTo(`${id} `, 'checkbox');
      await this.key('Space');
    }
    await this.press('Give this verdict');
    await this.press('Lock it');
  }

  async fit(item: string): Promise<void> {
    await this.press('Parts cupboard');
    await this.inDialog();
    await this.press(`Fit ${item}`);
    await this.press('Fit it');
  }

  async close(): Promise<void> {
    await this.press('Close the job');
    await this.inDialog();
    await this.press('Close the job');
  }

  /** Arrows from radio to radio of the group that has the focus, and chooses the one of that name. */
  private async radio(name: string): Promise<void> {
    for (let i = 0; (await this.focused()).name !== name; i++) {
      if (i > 30) throw new Error(`no choice ${name}`);
      await this.key('ArrowDown');
    }
    await this.key('Space');
  }

  /** Waits until the dialog that a key opened has taken the focus. */
  private async inDialog(): Promise<void> {
    await expect(this.page.locator('dialog:focus-within, [role=dialog]:focus-within')).toHaveCount(1);
  }

  /** Chooses from the list of places that opens when something is taken by key. */
  private async pick(listed: string): Promise<void> {
    await expect(this.page.getByRole('listbox')).toBeVisible();
    await this.page.keyboard.type(listed.toLowerCase(), { delay: 5 });
    const chosen = this.page.getByRole('option', { selected: true });
    await expect(chosen).toContainText(listed);
    await this.key('Enter');
    await expect(this.page.getByRole('listbox')).toHaveCount(0);
  }

  private async goToGroup(group: string): Promise<void> {
    for (let i = 0; i < MOST_STEPS; i++) {
      if ((await this.focused()).group === group) return;
      await this.key('Tab');
    }
    throw new Error(`keys never reached the group ${group}`);
  }

  /** Tab from group to group, and arrows through the one that holds it, until a control of that name has the focus. */
  private async goTo(name: string, role = ''): Promise<void> {
    for (let i = 0; i < MOST_STEPS; i++) {
      const at = await this.focused(name, role);
      if (at.fits) return;
      if (at.holds && (await this.throughGroup(name, role))) return;
      await this.key('Tab');
    }
    throw new Error(`keys never reached ${name}`);
  }

  private async throughGroup(name: string, role: string): Promise<boolean> {
    for (let i = 0; i < MOST_IN_GROUP; i++) {
      await this.key('ArrowRight');
      if ((await this.focused(name, role)).fits) return true;
    }
    return false;
  }

  private async key(key: string): Promise<void> {
    await this.page.keyboard.press(key);
  }

  /** Reads where the focus is. Only reads: what moves it is always a key. */
  private focused(wanted = '', role = ''): Promise<Focused> {
    return this.page.evaluate(
      ([wanted, role]) => {
        const nameOf = (one: Element): string =>
          (
            one.getAttribute('aria-label') ??
            one.closest('label')?.textContent ??
            one.textContent ??
            ''
          ).trim();
        const roleOf = (one: Element): string =>
          one.getAttribute('role') ??
          (one.tagName === 'INPUT' ? (one.getAttribute('type') ?? '') : one.tagName.toLowerCase());
        const isIt = (one: Element): boolean =>
          nameOf(one).startsWith(wanted ?? '') && (role === '' || roleOf(one) === role);
        const at = document.activeElement;
        if (at === null) return { name: '', group: '', fits: false, holds: false };
        const holder = at.closest('[role=group],[role=radiogroup],[role=tablist]');
        const labelled = holder?.getAttribute('aria-labelledby');
        const title = labelled ? (document.getElementById(labelled)?.textContent ?? '') : '';
        const roved =
          at.getAttribute('role') !== 'slider' && holder?.querySelector('[tabindex="-1"]') != null;
        return {
          name: nameOf(at),
          group: holder?.getAttribute('aria-label') ?? title,
          fits: isIt(at),
          holds: roved && [...(holder?.querySelectorAll('button,[role]') ?? [])].some(isIt),
        };
      },
      [wanted, role],
    );
  }
}
