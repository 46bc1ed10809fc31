import { describeEntry } from '../../text/describeEntry.ts';
import { besideReading } from '../../text/entryBeside.ts';
import type { LogEntry } from '../../training/sitting/LogEntry.ts';
import { keepUnits } from './keepUnits.ts';

interface EntryLineProps {
  readonly entry: LogEntry;
  readonly functionsKnown: boolean;
}

/** A log entry as one sentence with its number, its reading and its conditions: for lists to choose from and to look up. */
export function EntryLine({ entry, functionsKnown }: EntryLineProps) {
  const words = describeEntry(entry, functionsKnown);
  return (
    <span class="entry-line">
      <b>{entry.id}</b> {keepUnits(words.what)}{' '}
      <b>{keepUnits([words.value, ...besideReading(entry)].join(', '))}</b>
      {words.heard && ` · ${words.heard}`}
      {entry.about === 'reading' && <span class="entry-conditions">{keepUnits(words.conditions)}</span>}
      {entry.note !== '' && <span class="entry-note">{entry.note}</span>}
    </span>
  );
}
