import { useSignal } from '@preact/signals';
import { describeEntry } from '../../text/describeEntry.ts';
import { besideReading } from '../../text/entryBeside.ts';
import { clock } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { LogEntry } from '../../training/sitting/LogEntry.ts';
import type { Desk } from './Desk.ts';
import { keepUnits } from './keepUnits.ts';
import { MarkDialog } from './laterPanels.ts';
import { StripChart } from './StripChart.tsx';

const LONGEST_NOTE = 200;
/** Letters of a reading that still stand beside its name; longer ones stand below it. */
const MOST_BESIDE = 14;

/** The log: newest entry first, each a sentence and a number, notes written in place. */
export function LogPanel({ desk }: { readonly desk: Desk }) {
  const log = desk.log.value;
  const newest = log.at(-1)?.id;
  const citing = useSignal<number | null>(null);
  return (
    <div class="log-panel">
      <div class="log-scroll">
        {log.length === 0 ? (
          <p class="quiet">{say('log.empty')}</p>
        ) : (
          <table class="log" aria-label={say('log.title')}>
            {[...log].reverse().map((entry) => (
              <EntryRows
                key={entry.id}
                entry={entry}
                desk={desk}
                newest={entry.id === newest}
                onCite={() => (citing.value = entry.id)}
              />
            ))}
          </table>
        )}
      </div>
      <StripChart desk={desk} />
      {citing.value !== null && (
        <MarkDialog desk={desk} item={null} from={citing.value} onClose={() => (citing.value = null)} />
      )}
    </div>
  );
}

interface EntryRowsProps {
  readonly entry: LogEntry;
  readonly desk: Desk;
  readonly newest: boolean;
  /** Begins a mark on the suspect board that cites this entry. */
  readonly onCite: () => void;
}

/** One entry: what and how much, then when and under what conditions. */
function EntryRows({ entry, desk, newest, onCite }: EntryRowsProps) {
  const words = describeEntry(entry, desk.functionsKnown.value);
  const beside = besideReading(entry);
  return (
    <tbody class={newest ? 'entry-newest' : ''}>
      <tr class="entry">
        <th scope="rowgroup" rowSpan={2}>
          <span class="entry-number">
            <span class="visually-hidden">{say('log.entry', { id: '' })}</span>
            {entry.id}
          </span>
        </th>
        {words.value.length <= MOST_BESIDE && entry.about === 'reading' ? (
          <>
            <td>
              <span class="entry-what">{keepUnits(words.what)}</span>
            </td>
            <td class="entry-value">
              {words.value}
              <Beside readings={beside} />
            </td>
          </>
        ) : (
          <td colSpan={2}>
            <span class="entry-what">{keepUnits(words.what)}</span>
            <span class="entry-found">{keepUnits(words.value)}</span>
            <Beside readings={beside} />
          </td>
        )}
      </tr>
      <tr class="entry-more">
        <td colSpan={2}>
          <span class="entry-conditions">
            {newest && (
              <b class="entry-latest">
                {say('log.newest')}
                {'\u00a0· '}
              </b>
            )}
            {clock(entry.tick)}
            {entry.about === 'reading' && `\u00a0· ${keepUnits(words.conditions)}`}
          </span>
          {words.heard && <span class="entry-heard">{words.heard}</span>}
          <div class="entry-foot">
            <Note entry={entry} desk={desk} />
            {desk.phase.value === 'bench' && (
              <button
                type="button"
                class="plain entry-cite"
                aria-label={say('suspects.citeThisName', { id: entry.id })}
                aria-haspopup="dialog"
                onClick={onCite}
              >
                {say('suspects.citeThis')}
              </button>
            )}
          </div>
        </td>
      </tr>
    </tbody>
  );
}

function Beside({ readings }: { readonly readings: readonly string[] }) {
  return (
    <>
      {readings.map((reading) => (
        <span key={reading} class="entry-beside">
          {reading}
        </span>
      ))}
    </>
  );
}

function Note({ entry, desk }: { readonly entry: LogEntry; readonly desk: Desk }) {
  const editing = useSignal(false);
  const closed = desk.phase.value === 'closed';
  if (!editing.value) {
    if (closed) return entry.note ? <span class="entry-note">{entry.note}</span> : null;
    return (
      <button
        type="button"
        class={`plain entry-note${entry.note ? ' entry-written' : ''}`}
        onClick={() => (editing.value = true)}
      >
        {entry.note || say('log.addNote')}
      </button>
    );
  }
  const keep = (text: string): void => {
    editing.value = false;
    const trimmed = text.trim();
    if (trimmed !== entry.note) desk.act({ kind: 'annotate', entry: entry.id, text: trimmed });
  };
  return (
    <input
      class="entry-note-input"
      type="text"
      maxLength={LONGEST_NOTE}
      aria-label={say('log.note', { id: entry.id })}
      title={say('log.noteHint', { max: LONGEST_NOTE })}
      defaultValue={entry.note}
      ref={(input) => input?.focus()}
      onBlur={(event) => {
        if (editing.value) keep(event.currentTarget.value);
      }}
      onKeyDown={(event) => {
        if (event.key === 'Enter') keep(event.currentTarget.value);
        if (event.key === 'Escape') editing.value = false;
      }}
    />
  );
}
