import type { TextKey } from '../../text/translate.ts';
import { SHORTCUT_KEYS, type Shortcut } from '../interaction/shortcuts.ts';

/** One line of the list: keys of which each does it, or which are pressed together, and what they do. */
export interface ShortcutLine {
  readonly keys: readonly string[];
  readonly together?: boolean;
  readonly text: TextKey;
  /** Single letters can be turned off. */
  readonly letter: boolean;
}

export interface ShortcutGroup {
  readonly title: TextKey;
  readonly lines: readonly ShortcutLine[];
}

function keys(text: TextKey, ...names: readonly string[]): ShortcutLine {
  return { keys: names, text, letter: false };
}

function letter(shortcut: Shortcut): ShortcutLine {
  return { keys: [SHORTCUT_KEYS[shortcut]], text: `shortcuts.${shortcut}`, letter: true };
}

/** Control, or Command on the keyboards that have it. */
function commandKey(): string {
  return /Mac|iPhone|iPad/.test(globalThis.navigator?.userAgent ?? '') ? '⌘' : 'Ctrl';
}

/** Every key of the bench screen, in the order of the job. */
export function shortcutGroups(): readonly ShortcutGroup[] {
  return [
    {
      title: 'shortcuts.groups.about',
      lines: [
        keys('shortcuts.tab', 'Tab'),
        keys('shortcuts.arrows', '←', '→', '↑', '↓'),
        keys('shortcuts.enter', 'Enter'),
        keys('shortcuts.typed', 'A … Z'),
        keys('shortcuts.escape', 'Esc'),
        { keys: ['0', '1 … 6'], text: 'shortcuts.views', letter: true },
        { keys: [commandKey(), 'Z'], together: true, text: 'shortcuts.undo', letter: false },
      ],
    },
    {
      title: 'shortcuts.groups.hands',
      lines: [
        letter('key'),
        letter('part'),
        letter('jumper'),
        keys('shortcuts.clamp', '+', '−'),
        letter('stroke'),
        keys('shortcuts.handle', '←', '→'),
        keys('shortcuts.handleQuarter', 'PgUp', 'PgDn'),
        keys('shortcuts.handleEnd', 'Home', 'End'),
      ],
    },
    { title: 'shortcuts.groups.evidence', lines: [letter('log'), letter('read')] },
    { title: 'shortcuts.groups.time', lines: [letter('wait'), letter('wait-steady')] },
    { title: 'shortcuts.groups.help', lines: [letter('help')] },
  ];
}
