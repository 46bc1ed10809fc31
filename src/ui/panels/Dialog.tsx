import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';

interface DialogProps {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
  readonly wide?: boolean;
}

/** A modal dialog. Esc and the close button give up; the focus goes back to where it was. */
export function Dialog({ title, onClose, children, wide }: DialogProps) {
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
        <button type="button" class="plain" onClick={onClose}>
          {say('app.close')}
        </button>
      </header>
      {children}
    </dialog>
  );
}
