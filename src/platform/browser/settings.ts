import { unitsOf } from './unitsOf.ts';

/** What a user set on this device. Kept in localStorage when the browser allows it, else for the page's life. */
export interface Settings {
  readonly theme: 'auto' | 'light' | 'dark' | 'contrast';
  readonly muted: boolean;
  /** 0 to 1. */
  readonly volume: number;
  readonly announce: 'off' | 'settled' | 'continuous';
  readonly letterShortcuts: boolean;
  readonly language: 'en' | 'es';
  /** The introduction: offered on the board until the learner says not now. */
  readonly firstMinutes: 'offered' | 'put-off';
  readonly units: 'us' | 'metric';
}

const KEY = 'known-good.settings';
const DEFAULTS: Omit<Settings, 'units'> = {
  theme: 'auto',
  muted: false,
  volume: 0.7,
  announce: 'settled',
  letterShortcuts: true,
  language: 'en',
  firstMinutes: 'offered',
};
const THEMES: readonly Settings['theme'][] = ['auto', 'light', 'dark', 'contrast'];
const LANGUAGES: readonly Settings['language'][] = ['en', 'es'];
const UNITS: readonly Settings['units'][] = ['us', 'metric'];
const ANNOUNCE: readonly Settings['announce'][] = ['off', 'settled', 'continuous'];

/**
 * Reads a stored text; anything that is not a valid setting falls back to its default. `deviceLanguage` is the device's
 * BCP 47 tag: its language is the default where the program speaks it, else English, and its region tells the units.
 */
export function parseSettings(text: string | null, deviceLanguage = 'en'): Settings {
  let raw: Record<string, unknown> = {};
  try {
    const parsed: unknown = JSON.parse(text ?? '{}');
    if (typeof parsed === 'object' && parsed !== null) raw = parsed as Record<string, unknown>;
  } catch {
    // A text that cannot be read is as none.
  }
  const ofDevice = deviceLanguage.toLowerCase().split('-')[0];
  const volume =
    typeof raw['volume'] === 'number' && raw['volume'] >= 0 && raw['volume'] <= 1 ? raw['volume'] : null;
  return {
    theme: THEMES.find((theme) => theme === raw['theme']) ?? DEFAULTS.theme,
    muted: typeof raw['muted'] === 'boolean' ? raw['muted'] : DEFAULTS.muted,
    volume: volume ?? DEFAULTS.volume,
    announce: ANNOUNCE.find((mode) => mode === raw['announce']) ?? DEFAULTS.announce,
    letterShortcuts:
      typeof raw['letterShortcuts'] === 'boolean' ? raw['letterShortcuts'] : DEFAULTS.letterShortcuts,
    firstMinutes: raw['firstMinutes'] === 'put-off' ? 'put-off' : DEFAULTS.firstMinutes,
    language:
      LANGUAGES.find((each) => each === raw['language']) ??
      LANGUAGES.find((each) => each === ofDevice) ??
      DEFAULTS.language,
    units: UNITS.find((each) => each === raw['units']) ?? unitsOf(deviceLanguage),
  };
}

export function loadSettings(): Settings {
  try {
    return parseSettings(localStorage.getItem(KEY), navigator.language);
  } catch {
    return parseSettings(null, navigator.language);
  }
}

/** Gives false where the browser keeps nothing; the settings then hold for this page. */
export function saveSettings(settings: Settings): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(settings));
    return true;
  } catch {
    return false;
  }
}
