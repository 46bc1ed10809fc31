import type { Page } from '@playwright/test';
import { setLanguage } from '../../../src/text/translate.ts';
import type { Stop } from './stops.ts';

/** The look of the page as a learner's device or settings choose it. */
export interface Dress {
  readonly name: 'light' | 'dark' | 'contrast' | 'spanish';
  readonly language: 'en' | 'es';
  readonly media: NonNullable<Parameters<Page['emulateMedia']>[0]>;
}

const CALM = { reducedMotion: 'reduce' } as const;

export const DRESSES: readonly Dress[] = [
  { name: 'light', language: 'en', media: { ...CALM, colorScheme: 'light', contrast: 'no-preference' } },
  { name: 'dark', language: 'en', media: { ...CALM, colorScheme: 'dark', contrast: 'no-preference' } },
  { name: 'contrast', language: 'en', media: { ...CALM, colorScheme: 'light', contrast: 'more' } },
  { name: 'spanish', language: 'es', media: { ...CALM, colorScheme: 'light', contrast: 'no-preference' } },
];

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Where the walk itself is done. */
export const HOME: Size = { width: 1280, height: 800 };

export const SIZES: readonly Size[] = [
  { width: 360, height: 740 },
  { width: 768, height: 1024 },
  HOME,
  { width: 1920, height: 1080 },
  { width: 2560, height: 1440 },
];

export interface CameraPlan {
  /** Every dress with the sizes it is looked at in. */
  readonly dresses: readonly { readonly dress: Dress; readonly sizes: readonly Size[] }[];
  readonly wanted: RegExp;
  /** Long pages and narrow windows are taken in their whole length; else what the window shows. */
  readonly whole: boolean;
  /** Takes a picture over, named for its screen, its dress and its width. */
  keep(name: string, png: Buffer): Promise<void>;
}

/** Takes each screen in every wanted dress and size, and leaves the page as the walk had it. */
export class Camera {
  constructor(
    private readonly page: Page,
    private readonly plan: CameraPlan,
  ) {}

  async take(stops: readonly Stop[]): Promise<void> {
    const meant = stops.filter(({ name }) => this.plan.wanted.test(name));
    for (const language of ['en', 'es'] as const) {
      const dresses = this.plan.dresses.filter(({ dress }) => dress.language === language);
      if (meant.length === 0 || dresses.length === 0) continue;
      await this.speak(language);
      for (const stop of meant) await this.shoot(stop, dresses);
    }
    await this.speak('en');
  }

  private async shoot(stop: Stop, dresses: CameraPlan['dresses']): Promise<void> {
    await stop.open(this.page);
    for (const { dress, sizes } of dresses) {
      await this.page.emulateMedia(dress.media);
      for (const size of sizes) {
        await this.page.setViewportSize(size);
        await stop.atEachSize?.(this.page);
        await this.page.evaluate(async () => {
          await document.fonts.ready;
          for (let i = 0; i < 3; i++) await new Promise(requestAnimationFrame);
        });
        await this.page.waitForTimeout(250);
        const long = this.plan.whole && (stop.long === true || size.width < 900);
        const dialogOpen = (await this.page.locator('dialog[open]').count()) > 0;
        const png = await this.page.screenshot({ fullPage: long && !dialogOpen });
        await this.plan.keep(`${stop.name}-${dress.name}-${size.width}`, png);
      }
    }
    await this.page.emulateMedia(DRESSES[0]?.media ?? {});
    await this.page.setViewportSize(HOME);
    await stop.close(this.page);
  }

  /** Turns the page, and the names by which this walk finds its way, by the settings dialog. */
  private async speak(language: 'en' | 'es'): Promise<void> {
    if ((await this.page.evaluate(() => document.documentElement.lang)).startsWith(language)) return;
    await this.page.locator('.top-bar .settings-button').click();
    await this.page.locator(`dialog[open] input[value="${language}"]`).check({ force: true });
    await this.page.waitForFunction((code) => document.documentElement.lang.startsWith(code), language);
    await this.page.keyboard.press('Escape');
    await setLanguage(language === 'es' ? 'es-US' : 'en');
  }
}
