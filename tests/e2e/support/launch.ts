import type { LaunchOptions } from '@playwright/test';
import { findBrowser, NO_BROWSER } from '../../../.ci/browser.mjs';

/** Keeps a fresh browser from talking to anyone or asking anything. */
const QUIET = [
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--disable-quic',
];

/**
 * How the tests start the browser. `sound: 'free'` lets sound play without a touch first; `'needs-touch'` keeps the
 * browser's own rule, as a learner meets it. Errors: throws one line that says what to install when there is no browser.
 */
export function launchOptions(sound: 'free' | 'needs-touch' = 'free'): LaunchOptions {
  const executablePath = findBrowser();
  if (executablePath === null) throw new Error(NO_BROWSER);
  // The browser's sandbox does not start for root, which is what most containers run as.
  const chromiumSandbox = process.getuid?.() !== 0;
  const args = sound === 'free' ? [...QUIET, '--autoplay-policy=no-user-gesture-required'] : QUIET;
  return { executablePath, chromiumSandbox, args };
}
