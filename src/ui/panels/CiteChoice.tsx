import { say } from '../../text/translate.ts';
import { MAX_CITATIONS } from '../../training/sitting/mayAct.ts';
import { isFull } from './cites.ts';
import type { Desk } from './Desk.ts';
import { EntryLine } from './EntryLine.tsx';

interface CiteChoiceProps {
  readonly desk: Desk;
  readonly cited: readonly number[];
  readonly onToggle: (id: number) => void;
  /** What to say while the log is empty. */
  readonly empty: string;
}

/** Log entries to tick as proof, newest first, eight at most. */
export function CiteChoice({ desk, cited, onToggle, empty }: CiteChoiceProps) {
  const log = desk.log.value;
  const full = isFull(cited);
  return (
    <fieldset class="cite-choice">
      <legend>{say('verdict.cites', { count: cited.length, max: MAX_CITATIONS })}</legend>
      <div class="cite-list">
        {log.length === 0 && <p class="quiet">{empty}</p>}
        {[...log].reverse().map((entry) => {
          const isCited = cited.includes(entry.id);
          return (
            <label key={entry.id} class={isCited ? 'cited' : ''}>
              <input
                type="checkbox"
                checked={isCited}
                disabled={!isCited && full}
                onChange={() => onToggle(entry.id)}
              />
              <EntryLine entry={entry} functionsKnown={desk.functionsKnown.value} />
            </label>
          );
        })}
      </div>
    </fieldset>
  );
}
