import { say } from '../../text/translate.ts';
import { SHORTCUT_KEYS, type Shortcut } from '../interaction/shortcuts.ts';
import { Dialog } from './Dialog.tsx';

const ORDER: readonly Shortcut[] = [
  'log',
  'read',
  'wait',
  'wait-steady',
  'key',
  'part',
  'stroke',
  'jumper',
  'help',
];

/** The keys of the bench. */
export function ShortcutsDialog({ onClose }: { readonly onClose: () => void }) {
  return (
    <Dialog title={say('shortcuts.title')} onClose={onClose}>
      <p>{say('shortcuts.hint')}</p>
      <dl class="shortcuts">
        <div>
          <dt>
            <kbd>Tab</kbd>
          </dt>
          <dd>{say('shortcuts.tab')}</dd>
        </div>
        <div>
          <dt>
            <kbd>←</kbd> <kbd>→</kbd> <kbd>↑</kbd> <kbd>↓</kbd>
          </dt>
          <dd>{say('shortcuts.arrows')}</dd>
        </div>
        <div>
          <dt>
            <kbd>Enter</kbd>
          </dt>
          <dd>{say('shortcuts.enter')}</dd>
        </div>
        {ORDER.map((shortcut) => (
          <div key={shortcut}>
            <dt>
              <kbd>{SHORTCUT_KEYS[shortcut]}</kbd>
            </dt>
            <dd>{say(`shortcuts.${shortcut}`)}</dd>
          </div>
        ))}
        <div>
          <dt>
            <kbd>+</kbd> <kbd>−</kbd>
          </dt>
          <dd>{say('shortcuts.clamp')}</dd>
        </div>
        <div>
          <dt>
            <kbd>Esc</kbd>
          </dt>
          <dd>{say('shortcuts.escape')}</dd>
        </div>
      </dl>
    </Dialog>
  );
}
