import { useSignal } from '@preact/signals';
import { capital } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { VerdictItem } from '../../training/sitting/SittingAction.ts';
import type { MarkedItem } from '../../training/sitting/SittingView.ts';
import type { Desk } from './Desk.ts';
import { EntryLine } from './EntryLine.tsx';
import { MarkSign } from './MarkSign.tsx';

interface SuspectCardProps {
  readonly desk: Desk;
  readonly item: VerdictItem;
  /** The mark that stands on it; null while it is open. */
  readonly marked: MarkedItem | null;
  /** After the verdict nothing is marked any more. */
  readonly locked: boolean;
  readonly onMark: () => void;
}

/** One suspect: its name, its mark by sign, word and line, and the entries that it cites. */
export function SuspectCard({ desk, item, marked, locked, onMark }: SuspectCardProps) {
  const mark = marked?.mark ?? 'open';
  const name = capital(say(`items.${item}`));
  const head = (
    <>
      <MarkSign mark={mark} />
      <span class="suspect-name">{name}</span> <span class="suspect-mark">{say(`suspects.is.${mark}`)}</span>
    </>
  );
  return (
    <li class={`suspect suspect-${mark}`}>
      {locked ? (
        <div class="suspect-head">{head}</div>
      ) : (
        <button type="button" class="suspect-head" aria-haspopup="dialog" onClick={onMark}>
          {head}
        </button>
      )}
      {marked !== null && <Cites desk={desk} name={name} cites={marked.cites} />}
    </li>
  );
}

interface CitesProps {
  readonly desk: Desk;
  readonly name: string;
  readonly cites: readonly number[];
}

/** The cited entries by number; each shows its sentence when pressed, and hides it again. */
function Cites({ desk, name, cites }: CitesProps) {
  const shown = useSignal<number | null>(null);
  if (cites.length === 0) return <p class="suspect-cites quiet">{say('suspects.noCites')}</p>;
  const entry = desk.log.value.find(({ id }) => id === shown.value && cites.includes(id));
  return (
    <div class="suspect-cites">
      <fieldset class="cite-numbers">
        <legend class="visually-hidden">{say('suspects.citedFor', { item: name })}</legend>
        <span aria-hidden="true">{say('suspects.by')}</span>
        {cites.map((id) => (
          <button
            key={id}
            type="button"
            class="cite-number"
            aria-label={say('log.entry', { id })}
            aria-expanded={entry?.id === id}
            onClick={() => (shown.value = shown.value === id ? null : id)}
          >
            {id}
          </button>
        ))}
      </fieldset>
      {entry !== undefined && (
        <p class="cite-sentence">
          <EntryLine entry={entry} functionsKnown={desk.functionsKnown.value} />
        </p>
      )}
    </div>
  );
}
