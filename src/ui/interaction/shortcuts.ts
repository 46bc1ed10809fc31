/** What a single letter does on the bench screen, unless the settings turn letters off. */
export type Shortcut =
  | 'log'
  | 'key'
  | 'stroke'
  | 'read'
  | 'part'
  | 'jumper'
  | 'wait'
  | 'wait-steady'
  | 'help';

export const SHORTCUT_KEYS: Readonly<Record<Shortcut, string>> = {
  log: 'L',
  key: 'K',
  stroke: 'S',
  read: 'R',
  part: 'P',
  jumper: 'J',
  wait: 'W',
  'wait-steady': 'U',
  help: '?',
};

interface KeyPress {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
}

/** The shortcut of a key press, or null. Presses with a modifier belong to the browser. */
export function shortcutOf(press: KeyPress): Shortcut | null {
  if (press.ctrlKey || press.altKey || press.metaKey) return null;
  const found = Object.entries(SHORTCUT_KEYS).find(([, key]) => key === press.key.toUpperCase());
  return found === undefined ? null : (found[0] as Shortcut);
}

/** Control or Command with Z: put back what was done last. It is no letter, and stays when letters are turned off. */
export function isUndo(press: KeyPress & { readonly shiftKey: boolean }): boolean {
  return (
    press.key.toLowerCase() === 'z' && press.ctrlKey !== press.metaKey && !press.altKey && !press.shiftKey
  );
}

/** What has the focus while a key is pressed. */
interface Focused {
  readonly tagName: string;
  readonly type?: string;
  readonly isContentEditable: boolean;
}

/** Inputs that are set by arrows and presses; every other input takes letters as text. */
const WORDLESS_INPUTS = new Set(['button', 'checkbox', 'color', 'file', 'radio', 'range', 'reset', 'submit']);

/** True where letters are written: there they are no shortcuts. */
export function takesLetters({ tagName, type, isContentEditable }: Focused): boolean {
  if (isContentEditable) return true;
  switch (tagName.toLowerCase()) {
    case 'textarea':
    case 'select':
      return true;
    case 'input':
      return !WORDLESS_INPUTS.has(type ?? 'text');
    default:
      return false;
  }
}
