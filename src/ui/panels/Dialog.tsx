import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
  readonly wide?: boolean;
  /** It asks one thing and has a key that leaves everything as it is: a second one in its head would only ask what it means. */
  readonly asks?: boolean;
}

/** A modal dialog. Esc and the close button give up; the focus goes back to where it was. */
export function Dialog({ title, onClose, children, wide, asks }: DialogProps) {
  const element = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const opener = document.activeElement;
    element.current?.showModal();
    return () => {
      if (opener instanceof HTMLElement) opener.focus();
    };
  }, []);
  return (
    <dialog
      ref={element}
      class={wide ? 'dialog dialog-wide' : 'dialog'}
      aria-label={title}
      onCancel={(event) => {
        event.preventDefault();
        onClose();
      }}
    >
      <header class="dialog-head">
        <h2>{title}</h2>
        {!asks && (
          <button type="button" class="plain" onClick={onClose}>
            {say('app.close')}
          </button>
        )}
      </header>
      {children}
    </dialog>
  );
}
