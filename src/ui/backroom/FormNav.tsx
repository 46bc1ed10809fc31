import { useRef } from 'preact/hooks';
import { say } from '../../text/translate.ts';
import type { FormSection } from '../../training/draft/formFields.ts';
import { schemaPathOf } from '../../training/draft/rawText.ts';
import { useRoom } from './Columns.tsx';
import type { DraftBook } from './DraftBook.ts';
import { useWhereabouts } from './useWhereabouts.ts';

interface FormNavProps {
  readonly book: DraftBook;
  readonly sections: readonly FormSection[];
}

/** Under so many letters of width the parts of the form fold into the one that one is in. */
const ROOM_FOR_A_ROW = 40;

/** The parts of the form, each with how much is still to be written in it. It stays in sight, and marks where one is. */
export function FormNav({ book, sections }: FormNavProps) {
  const bar = useRef<HTMLElement>(null);
  const fold = useRef<HTMLDetailsElement>(null);
  const here = useWhereabouts(bar, sections);
  const folded = useRoom() < ROOM_FOR_A_ROW;
  const paths = book.draft.value.problems.map(({ path }) => schemaPathOf(path));
  const countOf = ({ fields }: FormSection): number =>
    paths.filter((path) => fields.some((field) => isWithin(path, field.path))).length;
  const at = Math.max(
    sections.findIndex(({ id }) => id === here),
    0,
  );
  const keys = sections.map((section, i) => (
    <button
      key={section.id}
      type="button"
      class="plain"
      aria-current={i === at ? 'location' : undefined}
      onClick={() => {
        if (fold.current !== null) fold.current.open = false;
        goTo(section.id);
      }}
    >
      {say(`backRoom.sections.${section.id}.title`)}
      <Count of={countOf(section)} />
    </button>
  ));
  const now = sections[at];
  return (
    <nav ref={bar} class="form-nav" aria-label={say('backRoom.parts')}>
      {folded && now !== undefined ? (
        <details
          ref={fold}
          class="form-nav-fold"
          onKeyDown={(event) => {
            if (event.key === 'Escape') event.currentTarget.open = false;
          }}
        >
          <summary>
            {say(`backRoom.sections.${now.id}.title`)}
            <span class="quiet">{say('backRoom.partOf', { number: at + 1, all: sections.length })}</span>
            <Count of={paths.length} />
          </summary>
          <div class="form-nav-keys">{keys}</div>
        </details>
      ) : (
        <div class="form-nav-keys">{keys}</div>
      )}
    </nav>
  );
}

function Count({ of }: { readonly of: number }) {
  if (of === 0) return null;
  return (
    <>
      {' '}
      <span class="form-nav-count">
        {of}
        <span class="visually-hidden"> {say('backRoom.toMendHere')}</span>
      </span>
    </>
  );
}

function isWithin(path: string, field: string): boolean {
  return path === field || path.startsWith(`${field}.`) || path.startsWith(`${field}[`);
}

function goTo(section: FormSection['id']): void {
  const heading = document.getElementById(`form-${section}`);
  heading?.focus({ preventScroll: true });
  heading?.scrollIntoView({ block: 'start' });
}
