import type { Signal } from '@preact/signals';

/** The key that shows and hides what waits behind it in a narrow window. */
export function FoldKey({
  class: name,
  words,
  unfolded,
}: {
  readonly class: string;
  readonly words: string;
  readonly unfolded: Signal<boolean>;
}) {
  return (
    <button
      type="button"
      class={name}
      aria-expanded={unfolded.value}
      onClick={() => {
        unfolded.value = !unfolded.peek();
      }}
    >
      {words}
    </button>
  );
}
