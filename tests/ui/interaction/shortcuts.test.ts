import { describe, expect, it } from 'vitest';
import { isUndo, SHORTCUT_KEYS, shortcutOf, takesLetters } from '../../../src/ui/interaction/shortcuts.ts';

const PLAIN = { ctrlKey: false, altKey: false, metaKey: false, shiftKey: false };

describe('the key that undoes', () => {
  it('is Z with Control or with Command, and nothing else beside it', () => {
    expect(isUndo({ ...PLAIN, key: 'z', ctrlKey: true })).toBe(true);
    expect(isUndo({ ...PLAIN, key: 'Z', metaKey: true }), 'with capitals locked').toBe(true);
    expect(isUndo({ ...PLAIN, key: 'z' })).toBe(false);
    expect(isUndo({ ...PLAIN, key: 'z', ctrlKey: true, shiftKey: true }), 'that is redo elsewhere').toBe(
      false,
    );
    expect(isUndo({ ...PLAIN, key: 'z', ctrlKey: true, metaKey: true })).toBe(false);
    expect(
      isUndo({ ...PLAIN, key: 'z', ctrlKey: true, altKey: true }),
      'writes a letter on some boards',
    ).toBe(false);
  });
});

describe('single letters', () => {
  it('are one a shortcut, and none with a modifier', () => {
    const letters = Object.values(SHORTCUT_KEYS);
    expect(new Set(letters).size).toBe(letters.length);
    for (const [shortcut, key] of Object.entries(SHORTCUT_KEYS)) {
      expect(shortcutOf({ ...PLAIN, key: key.toLowerCase() })).toBe(shortcut);
      expect(shortcutOf({ ...PLAIN, key, ctrlKey: true })).toBeNull();
    }
  });

  it('are text where text is written, and nowhere else', () => {
    const on = (tagName: string, type?: string) =>
      takesLetters({ tagName, isContentEditable: false, ...(type === undefined ? {} : { type }) });
    expect(on('TEXTAREA')).toBe(true);
    expect(on('INPUT', 'text')).toBe(true);
    expect(on('INPUT', 'range')).toBe(false);
    expect(on('BUTTON')).toBe(false);
    expect(takesLetters({ tagName: 'P', isContentEditable: true })).toBe(true);
  });
});
