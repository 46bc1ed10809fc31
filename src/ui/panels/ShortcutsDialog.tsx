import { say } from '../../text/translate.ts';
import { Dialog } from './Dialog.tsx';
import { type ShortcutLine, shortcutGroups } from './shortcutGroups.ts';

interface ShortcutsDialogProps {
  /** Whether single letters are shortcuts now. */
  readonly letters: boolean;
  readonly onClose: () => void;
}

/** The keys of the bench, all in one place. */
export function ShortcutsDialog({ letters, onClose }: ShortcutsDialogProps) {
  return (
    <Dialog title={say('shortcuts.title')} onClose={onClose} wide>
      <p>{say(letters ? 'shortcuts.hint' : 'shortcuts.lettersOff')}</p>
      <div class="shortcut-groups">
        {shortcutGroups().map(({ title, lines }) => (
          <section key={title} class="shortcut-group">
            <h3>{say(title)}</h3>
            <dl class="shortcuts">
              {lines.map((line) => (
                <Line key={line.text} line={line} off={line.letter && !letters} />
              ))}
            </dl>
          </section>
        ))}
      </div>
    </Dialog>
  );
}

function Line({ line, off }: { readonly line: ShortcutLine; readonly off: boolean }) {
  return (
    <div class={off ? 'shortcut-off' : ''}>
      <dt>
        {line.keys.map((name, index) => (
          <span key={name}>
            {index > 0 && (line.together ? ' + ' : ' ')}
            <kbd>{name}</kbd>
          </span>
        ))}
      </dt>
      <dd>
        {say(line.text)}
        {off && ` (${say('settings.off')})`}
      </dd>
    </div>
  );
}
