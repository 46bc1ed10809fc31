import type { ComponentChildren } from 'preact';

interface SheetProps {
  readonly name: string;
  readonly title: string;
  /** Of the draft before the last change. */
  readonly stale: boolean;
  readonly children: ComponentChildren;
}

/** One part of the proof under its heading. */
export function Sheet({ name, title, stale, children }: SheetProps) {
  return (
    <section class={stale ? 'proof-sheet proof-stale' : 'proof-sheet'} aria-labelledby={`proof-${name}`}>
      <h3 id={`proof-${name}`}>{title}</h3>
      {children}
    </section>
  );
}
