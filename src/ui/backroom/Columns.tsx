import type { Signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { Pane } from './DraftBook.ts';

type PanesByColumn = readonly (readonly Pane[])[];

const PANES: readonly Pane[] = ['form', 'text', 'bench', 'proof'];
const FORM_AND_TEXT: readonly Pane[] = ['form', 'text'];
const BENCH_AND_PROOF: readonly Pane[] = ['bench', 'proof'];

/** From how many letters of width on there is room for two columns; for the text beside the form; and for bench and proof, too. */
const ROOM_FOR_TWO = 52;
const ROOM_FOR_TEXT = 74;
const ROOM_FOR_ALL = 120;
/** Under so many letters of width nothing stays at the top of the page: it would leave too little of it. */
const ROOM_TO_STAY = 20;
/** From here on the text stands beside the form until it is put behind it: in less room, only where it is asked for. */
const TEXT_STANDS = 96;

/** How wide the page is, in letters of the size that its reader chose. */
export function useRoom(): number {
  const [room, setRoom] = useState(roomNow);
  useEffect(() => {
    const follow = (): void => setRoom(roomNow());
    // As wide as a letter is high: it changes with the letters, the page does with the window.
    const letter = document.createElement('i');
    letter.style.cssText = 'position: absolute; visibility: hidden; width: 1rem; height: 1px;';
    document.body.append(letter);
    const sized = new ResizeObserver(follow);
    sized.observe(letter);
    sized.observe(document.documentElement);
    return () => {
      sized.disconnect();
      letter.remove();
    };
  }, []);
  return room;
}

function roomNow(): number {
  const letter = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
  return document.documentElement.clientWidth / letter;
}

interface ColumnsProps {
  /** The panes in use, the last one that was asked for first. */
  readonly shown: readonly Pane[];
  readonly onShow: (pane: Pane) => void;
  /** Whether the text was asked to stand beside the form, or behind it; null leaves it to the room there is. */
  readonly textBeside: Signal<boolean | null>;
  readonly render: (pane: Pane, shown: boolean) => ComponentChildren;
}

/** The panes of the back room side by side, as tabs where a column has several. A pane stays as it is wherever it comes to lie. */
export function Columns({ shown, onShow, textBeside, render }: ColumnsProps) {
  const room = useRoom();
  const beside = textBeside.value ?? room >= TEXT_STANDS;
  const columns = columnsFor(room, beside);
  const nowOf = (panes: readonly Pane[]): Pane =>
    shown.find((pane) => panes.includes(pane)) ?? panes[0] ?? 'form';
  return (
    <div
      class={`back-columns ${columns.length > 1 ? 'back-columns-many' : room < ROOM_TO_STAY ? 'back-columns-one back-columns-small' : 'back-columns-one'}`}
      style={{ gridTemplateColumns: columns.map(widthOf).join(' ') }}
    >
      {columns.map((panes, i) => (
        <div key={panes[0]} class="pane-head" style={{ gridColumn: i + 1 }}>
          {panes.length === 1 ? (
            <h2 id={`pane-${nowOf(panes)}`} class="pane-title">
              {say(`backRoom.panes.${nowOf(panes)}`)}
            </h2>
          ) : (
            <Tabs panes={panes} now={nowOf(panes)} onShow={onShow} />
          )}
          {panes.includes('form') && room >= ROOM_FOR_TEXT && (
            <TextBeside beside={beside} onTurn={() => (textBeside.value = !beside)} />
          )}
        </div>
      ))}
      {PANES.map((pane) => {
        const column = columns.findIndex((panes) => panes.includes(pane));
        const alone = columns[column]?.length === 1;
        const isShown = nowOf(columns[column] ?? []) === pane;
        return (
          <div
            key={pane}
            id={`pane-${pane}-body`}
            class={`pane pane-of-${pane}`}
            style={{ gridColumn: column + 1 }}
            hidden={!isShown}
            {...named(pane, alone)}
          >
            {/* Its parts have headings, which stand under one of its own: the key that shows it is none. */}
            {pane === 'form' && !alone && <h2 class="visually-hidden">{say('backRoom.panes.form')}</h2>}
            {render(pane, isShown)}
          </div>
        );
      })}
    </div>
  );
}

/** A pane goes by the words above it, and can be scrolled by keys; the bench has keys of its own. */
function named(pane: Pane, alone: boolean) {
  return {
    role: alone ? 'group' : 'tabpanel',
    'aria-labelledby': `pane-${pane}`,
    tabIndex: pane === 'bench' ? -1 : 0,
  } as const;
}

function columnsFor(room: number, textBeside: boolean): PanesByColumn {
  if (room < ROOM_FOR_TWO) return [PANES];
  const written = textBeside && room >= ROOM_FOR_TEXT ? FORM_AND_TEXT.map((pane) => [pane]) : [FORM_AND_TEXT];
  const shown = room >= ROOM_FOR_ALL ? BENCH_AND_PROOF.map((pane) => [pane]) : [BENCH_AND_PROOF];
  return [...written, ...shown];
}

/** The bench gets the most: its parts are to be touched. */
function widthOf(panes: readonly Pane[]): string {
  return `minmax(0, ${panes.includes('bench') ? 1.5 : panes.includes('form') ? 1.05 : 1}fr)`;
}

/** Turns whether the text stands beside the form or behind it. */
function TextBeside({ beside, onTurn }: { readonly beside: boolean; readonly onTurn: () => void }) {
  return (
    <label class="text-beside">
      <input type="checkbox" checked={beside} onChange={onTurn} />
      <span>{say('backRoom.textBeside')}</span>
    </label>
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
