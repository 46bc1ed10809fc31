import { describeEntry } from '../../text/describeEntry.ts';
import { besideReading } from '../../text/entryBeside.ts';
import { clock } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { LogEntry } from '../../training/sitting/LogEntry.ts';
import type { Desk } from './Desk.ts';

interface LogTableProps {
  readonly desk: Desk;
  readonly cites: readonly number[];
  /** Asks for the replay at an entry's moment. */
  readonly onSee: (entry: LogEntry) => void;
}

/** The whole log as it was, for the debrief; cited entries are marked. */
export function LogTable({ desk, cites, onSee }: LogTableProps) {
  return (
    <table class="ruled log-table">
      <tbody>
        {desk.log.value.map((entry) => {
          const words = describeEntry(entry, true);
          return (
            <tr key={entry.id}>
              <th scope="row">{entry.id}</th>
              <td>
                {words.what}
                {entry.about !== 'reading' && <b class="entry-found">{words.value}</b>}
                {cites.includes(entry.id) && (
                  <>
                    {' '}
                    <span class="tag">{say('debrief.cited')}</span>
                  </>
                )}
                <span class="entry-conditions">
                  {clock(entry.tick)}
                  {entry.about === 'reading' && ` · ${words.conditions}`}
                </span>
                {words.heard && <span class="entry-heard">{words.heard}</span>}
                {entry.note && <span class="entry-note">{entry.note}</span>}
              </td>
              <td class="number">
                {entry.about === 'reading' && words.value}
                {besideReading(entry).map((reading) => (
                  <span key={reading} class="entry-beside">
                    {reading}
                  </span>
                ))}
              </td>
              <td class="log-see">
                <button
                  type="button"
                  class="plain see-entry"
                  aria-label={say('replay.seeEntryName', { id: entry.id })}
                  onClick={() => onSee(entry)}
                >
                  {say('replay.seeEntry')}
                </button>
              </td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}
