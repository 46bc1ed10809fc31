import { useSignalEffect } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { language } from '../text/translate.ts';

/** Calls `then` each time the language has become another: for what was said or drawn in the one before. */
export function useLanguageTurn(then: () => void): void {
  const last = useRef(language());
  useSignalEffect(() => {
    const now = language();
    if (now === last.current) return;
    last.current = now;
    then();
  });
}
