import { computed, effect, type ReadonlySignal, signal } from '@preact/signals';
import type { Settings } from '../platform/browser/settings.ts';
import { cssProperties } from '../ui/theme/cssProperties.ts';
import { type ThemeName, tokensOf } from '../ui/theme/tokens.ts';

/** A media query as a signal. */
export function media(query: string): ReadonlySignal<boolean> {
  const list = matchMedia(query);
  const matches = signal(list.matches);
  list.addEventListener('change', () => {
    matches.value = list.matches;
  });
  return matches;
}

/** The theme in use: what the user set, else what the device asks for. Keeps the page's custom properties in step. */
export function followTheme(settings: ReadonlySignal<Settings>): ReadonlySignal<ThemeName> {
  const dark = media('(prefers-color-scheme: dark)');
  const contrast = media('(prefers-contrast: more)');
  const forced = media('(forced-colors: active)');
  const name = computed<ThemeName>(() => {
    switch (settings.value.theme) {
      case 'light':
        return 'paper';
      case 'dark':
        return 'shop-floor';
      case 'contrast':
        return 'high-contrast';
      case 'auto':
        if (contrast.value || forced.value) return 'high-contrast';
        return dark.value ? 'shop-floor' : 'paper';
    }
  });
  effect(() => {
    const root = document.documentElement;
    for (const [property, value] of Object.entries(cssProperties(forced.value ? 'forced' : name.value))) {
      root.style.setProperty(property, value);
    }
    document.querySelector('meta[name="theme-color"]')?.setAttribute('content', tokensOf(name.value).paper);
    root.style.colorScheme = forced.value ? 'light dark' : name.value === 'shop-floor' ? 'dark' : 'light';
    root.dataset['theme'] = name.value;
  });
  return name;
}
