import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { shownCharacters } from '../../text/shownCharacters.ts';
import { say } from '../../text/translate.ts';
import type { Shop } from './Shop.ts';

/** Opens job files: by a button, or by dropping them anywhere on the page. */
export function OpenJobFiles({ shop }: { readonly shop: Shop }) {
  const input = useRef<HTMLInputElement>(null);
  const over = useSignal(false);
  useEffect(() => {
    // Over the parts of a page the pointer enters and leaves all the time: when nothing is dragged any more, it stops coming.
    let leaving: ReturnType<typeof setTimeout> | undefined;
    const drag = (event: DragEvent): void => {
      if (!carriesFiles(event)) return;
      event.preventDefault();
      over.value = true;
      clearTimeout(leaving);
      leaving = setTimeout(() => (over.value = false), 400);
    };
    const drop = (event: DragEvent): void => {
      if (!carriesFiles(event)) return;
      event.preventDefault();
      clearTimeout(leaving);
      over.value = false;
      shop.openFiles([...(event.dataTransfer?.files ?? [])]);
    };
    window.addEventListener('dragover', drag);
    window.addEventListener('drop', drop);
    return () => {
      clearTimeout(leaving);
      window.removeEventListener('dragover', drag);
      window.removeEventListener('drop', drop);
    };
  }, [shop, over]);
  return (
    <div class="open-files">
      <button type="button" onClick={() => input.current?.click()}>
        {say('board.openFile')}
      </button>
      <span class="quiet open-files-drop">{say('board.dropFile')}</span>
      <input
        ref={input}
        type="file"
        multiple
        hidden
        accept=".yaml,.yml,.json"
        onChange={({ currentTarget }) => {
          shop.openFiles([...(currentTarget.files ?? [])]);
          // The same file may be chosen again, after it was mended.
          currentTarget.value = '';
        }}
      />
      <div class="open-files-coming" role="status">
        {shop.filesComing.value.map((name, index) => (
          <p key={index}>{say('board.readingFile', { name: shownCharacters(name) })}</p>
        ))}
      </div>
      {over.value && (
        <p class="drop-here">
          <span>{say('board.dropHere')}</span>
        </p>
      )}
    </div>
  );
}

function carriesFiles({ dataTransfer }: DragEvent): boolean {
  return dataTransfer?.types.includes('Files') ?? false;
}
