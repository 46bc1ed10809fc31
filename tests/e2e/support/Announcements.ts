import { expect, type Page } from '@playwright/test';

interface Heard {
  readonly atMs: number;
  readonly text: string;
}

/**
 * What a screen reader is told without asking: every text that comes into a live region of the page, in order, with its time. Words
 * that are hidden from it are left out.
 */
export class Announcements {
  constructor(private readonly page: Page) {}

  /** To be called before the page is opened. */
  async listen(): Promise<void> {
    await this.page.addInitScript(() => {
      const heard: { atMs: number; text: string }[] = [];
      Object.assign(window, { heardByEar: heard });
      const LIVE = '[role=status],[role=alert],[aria-live=polite],[aria-live=assertive]';
      const last = new WeakMap<Element, string>();
      const wordsOf = (node: Node): string => {
        if (node instanceof Element && node.getAttribute('aria-hidden') === 'true') return '';
        if (node.nodeType === Node.TEXT_NODE) return node.textContent ?? '';
        return [...node.childNodes].map(wordsOf).join('');
      };
      const read = (): void => {
        for (const region of document.querySelectorAll(LIVE)) {
          const text = wordsOf(region).replace(/\s+/g, ' ').trim();
          if (last.get(region) === text) continue;
          last.set(region, text);
          if (text !== '') heard.push({ atMs: performance.now(), text });
        }
      };
      new MutationObserver(read).observe(document, { subtree: true, childList: true, characterData: true });
    });
  }

  /** All that was heard since the page was opened. */
  all(): Promise<readonly Heard[]> {
    return this.page.evaluate(() => (window as unknown as { heardByEar: Heard[] }).heardByEar);
  }

  /** How much was heard so far: a place to listen on from. */
  async mark(): Promise<number> {
    return (await this.all()).length;
  }

  async since(mark: number): Promise<readonly string[]> {
    return (await this.all()).slice(mark).map(({ text }) => text);
  }

  /** Waits until something like this is heard after the mark, and gives it. */
  async next(mark: number, like: RegExp): Promise<string> {
    await expect
      .poll(async () => (await this.since(mark)).find((text) => like.test(text)) ?? '', {
        message: `waiting to hear ${like}`,
      })
      .toMatch(like);
    return (await this.since(mark)).find((text) => like.test(text)) ?? '';
  }
}
