import type { ComponentChildren } from 'preact';
import { rovedIndex } from '../interaction/rovingFocus.ts';

interface PagesProps<T extends string> {
  /** Begins every id inside, so that two sets of pages on one screen do not share any. */
  readonly name: string;
  readonly label: string;
  readonly pages: readonly { readonly id: T; readonly label: string }[];
  readonly page: T;
  readonly onPage: (page: T) => void;
  readonly children: ComponentChildren;
}

/** A few pages behind a row of keys: one tab stop, arrows go along the row. */
export function Pages<T extends string>({ name, label, pages, page, onPage, children }: PagesProps<T>) {
  const onKeyDown = (event: KeyboardEvent): void => {
    const now = pages.findIndex(({ id }) => id === page);
    const at = rovedIndex(event.key, now, pages.length);
    const next = at === null ? undefined : pages[at];
    if (next === undefined) return;
    event.preventDefault();
    onPage(next.id);
    document.getElementById(`${name}-tab-${next.id}`)?.focus();
  };
  return (
    <>
      <div class="page-keys" role="tablist" aria-label={label} onKeyDown={onKeyDown}>
        {pages.map(({ id, label: words }) => (
          <button
            key={id}
            id={`${name}-tab-${id}`}
            type="button"
            role="tab"
            aria-selected={id === page}
            aria-controls={`${name}-page`}
            tabIndex={id === page ? 0 : -1}
            onClick={() => onPage(id)}
          >
            {words}
          </button>
        ))}
      </div>
      <div
        id={`${name}-page`}
        class={`page page-${name}`}
        role="tabpanel"
        aria-labelledby={`${name}-tab-${page}`}
      >
        {children}
      </div>
    </>
  );
}
