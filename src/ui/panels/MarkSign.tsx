import type { BoardMark } from '../../training/sitting/SittingAction.ts';

/** The sign of a mark, beside its word: a dashed ring, a ring with a tick, a filled ring with a cross. */
export function MarkSign({ mark }: { readonly mark: BoardMark }) {
  return (
    <svg class={`mark-sign mark-sign-${mark}`} viewBox="0 0 24 24" aria-hidden="true">
      <circle cx="12" cy="12" r="9.5" />
      {mark === 'cleared' && <path d="M7.2 12.6l3.4 3.4 6.4-7.6" />}
      {mark === 'convicted' && <path d="M8 8l8 8M16 8l-8 8" />}
    </svg>
  );
}
