import type { Page } from '@playwright/test';
import { E2E_ADDRESS } from './address.ts';

/**
 * Collects what must not happen on any page: uncaught errors, errors on the console, failed requests, and requests that
 * leave the program's own address (it promises to work without a network).
 */
export class PageWatch {
  private readonly seen: string[] = [];

  constructor(page: Page) {
    page.on('pageerror', (error) => this.seen.push(`uncaught: ${error.stack ?? error.message}`));
    page.on('console', (message) => {
      if (message.type() === 'error') this.seen.push(`console: ${message.text()}`);
    });
    page.on('response', (response) => {
      if (response.status() >= 400) this.seen.push(`${response.status()}: ${response.url()}`);
    });
    page.on('request', (request) => {
      if (!isOwn(request.url())) this.seen.push(`left the program: ${request.url()}`);
    });
  }

  /** One line each, oldest first. */
  get complaints(): readonly string[] {
    return this.seen;
  }
}

function isOwn(url: string): boolean {
  return url.startsWith(E2E_ADDRESS) || url.startsWith('data:') || url.startsWith('blob:');
}
