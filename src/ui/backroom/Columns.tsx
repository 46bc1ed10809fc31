import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { Pane } from './DraftBook.ts';

const TWO_COLUMNS: readonly (readonly Pane[])[] = [
  ['form', 'text'],
  ['bench', 'proof'],
];

/** Panes side by side, by the room there is: each column shows one of its panes. */
const BY_ROOM: readonly { readonly query: string; readonly columns: readonly (readonly Pane[])[] }[] = [
  { query: '(min-width: 74em)', columns: [['form'], ['text'], ['bench', 'proof']] },
  {
    query: '(min-width: 52em)',
    columns: [
      ['form', 'text'],
      ['bench', 'proof'],
    ],
  },
];
const ONE_COLUMN: readonly (readonly Pane[])[] = [['form', 'text', 'bench', 'proof']];

/** The columns that this page has room for. */
export function useColumns(wider: boolean): readonly (readonly Pane[])[] {
  const [columns, setColumns] = useState(columnsNow);
  useEffect(() => {
    const queries = BY_ROOM.map(({ query }) => matchMedia(query));
    const follow = (): void => setColumns(columnsNow());
    for (const query of queries) query.addEventListener('change', follow);
    return () => {
      for (const query of queries) query.removeEventListener('change', follow);
    };
  }, []);
  // A wider bench takes the place of the text, which goes beside the form.
  return wider && columns.length === 3 ? TWO_COLUMNS : columns;
}

function columnsNow(): readonly (readonly Pane[])[] {
  return BY_ROOM.find(({ query }) => matchMedia(query).matches)?.columns ?? ONE_COLUMN;
}

interface ColumnsProps {
  readonly columns: readonly (readonly Pane[])[];
  /** The panes in use, the last one that was asked for first. */
  readonly shown: readonly Pane[];
  readonly onShow: (pane: Pane) => void;
  /** Whether the bench was asked to be wider than the text beside it leaves. */
  readonly wider: Signal<boolean>;
  readonly render: (pane: Pane) => ComponentChildren;
}

/** The panes of the back room, as tabs where a column has several. */
export function Columns({ columns, shown, onShow, wider, render }: ColumnsProps) {
  return (
    <div class={`back-columns back-columns-${columns.length}`}>
      {columns.map((panes) => {
        const now = shown.find((pane) => panes.includes(pane)) ?? panes[0] ?? 'form';
        return (
          <section
            key={panes.join(' ')}
            class={`back-column back-column-${now}`}
            aria-labelledby={`pane-${now}`}
          >
            {panes.length === 1 ? (
              <h2 id={`pane-${now}`} class="pane-title">
                {say(`backRoom.panes.${now}`)}
              </h2>
            ) : (
              <div class="back-column-head">
                <Tabs panes={panes} now={now} onShow={onShow} />
                {panes.includes('bench') && columns.length > 1 && <Wider wider={wider} />}
              </div>
            )}
            <div
              key={now}
              class={`pane pane-of-${now}`}
              id={`pane-${now}-body`}
              tabIndex={now === 'bench' ? -1 : 0}
              {...(panes.length === 1
                ? { role: 'group', 'aria-labelledby': `pane-${now}` }
                : { role: 'tabpanel', 'aria-labelledby': `pane-${now}` })}
            >
              {render(now)}
            </div>
          </section>
        );
      })}
    </div>
  );
}

/** Only where the page has room for three columns is there anything to choose. */
function Wider({ wider }: { readonly wider: Signal<boolean> }) {
  return (
    <button
      type="button"
      class="wider"
      aria-pressed={wider.value}
      onClick={() => {
        wider.value = !wider.value;
      }}
    >
      {say('backRoom.wider')}
    </button>
  );
}

interface TabsProps {
  readonly panes: readonly Pane[];
  readonly now: Pane;
  readonly onShow: (pane: Pane) => void;
}

function Tabs({ panes, now, onShow }: TabsProps) {
  const onKeyDown = (event: KeyboardEvent): void => {
    const step = event.key === 'ArrowRight' ? 1 : event.key === 'ArrowLeft' ? -1 : 0;
    const next = panes[(panes.indexOf(now) + step + panes.length) % panes.length];
    if (step === 0 || next === undefined) return;
    event.preventDefault();
    onShow(next);
    requestAnimationFrame(() => document.getElementById(`pane-${next}`)?.focus());
  };
  return (
    <div class="tabs back-tabs" role="tablist" onKeyDown={onKeyDown}>
      {panes.map((pane) => (
        <button
          key={pane}
          type="button"
          role="tab"
          id={`pane-${pane}`}
          aria-selected={pane === now}
          aria-controls={`pane-${pane}-body`}
          tabIndex={pane === now ? 0 : -1}
          onClick={() => onShow(pane)}
        >
          {say(`backRoom.panes.${pane}`)}
        </button>
      ))}
    </div>
  );
}
