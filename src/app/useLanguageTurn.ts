import { useSignalEffect } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { language } from '../text/translate.ts';
import { displayUnits } from '../text/units.ts';

/** Calls `then` each time the language or the units have become others: for what was said or drawn in those before. */
const wording = (): string => `${language()} ${displayUnits()}`;

export function useLanguageTurn(then: () => void): void {
  const last = useRef(wording());
  useSignalEffect(() => {
    const now = wording();
    if (now === last.current) return;
    last.current = now;
    then();
  });
}
