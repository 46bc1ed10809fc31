/** What a single letter does while the bench has the focus. */
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
