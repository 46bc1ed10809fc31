import { useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';

interface OpenFileButtonProps {
  readonly onFiles: (files: readonly File[]) => void;
}

/** Opens files from this device. The browser's own control stays out of sight; the button does its work. */
export function OpenFileButton({ onFiles }: OpenFileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        accept=".yaml,.yml"
        multiple
        hidden
        onChange={(event) => {
          onFiles([...(event.currentTarget.files ?? [])]);
          // The same file may be chosen again, once it is mended.
          event.currentTarget.value = '';
        }}
      />
      <button type="button" onClick={() => input.current?.click()}>
        {say('backRoom.openFile')}
      </button>
    </>
  );
}
