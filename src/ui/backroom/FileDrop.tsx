import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';

interface FileDropProps {
  readonly onFiles: (files: readonly File[]) => void;
  readonly children: ComponentChildren;
}

/** A page on which files may be dropped. What is not a file, such as marked text, is left to whatever is under it. */
export function FileDrop({ onFiles, children }: FileDropProps) {
  const over = useSignal(false);
  const hasFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') === true;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the button that opens a file does the same by keys.
    <div
      class={over.value ? 'file-drop file-over' : 'file-drop'}
      onDragOver={(event) => {
        if (!hasFiles(event)) return;
        event.preventDefault();
        over.value = true;
      }}
      onDragLeave={(event) => {
        if (!(event.relatedTarget instanceof Node)) over.value = false;
      }}
      onDrop={(event) => {
        over.value = false;
        if (!hasFiles(event)) return;
        event.preventDefault();
        onFiles([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      {children}
    </div>
  );
}
