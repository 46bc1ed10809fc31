import { readingLabel, readingWords, spreadWords } from '../../../text/describeReading.ts';
import { say } from '../../../text/translate.ts';
import type { MarkReadings, TestReadings } from '../../../training/proof/FaultReadings.ts';
import { keepUnits } from '../../panels/keepUnits.ts';

interface ReadingsTableProps {
  readonly tests: readonly TestReadings[];
  /** Whether a test still shows what it read with the faults before. */
  readonly stale: (test: TestReadings) => boolean;
}

/** Good beside faulted, test by test; of each test the marks that differ. */
export function ReadingsTable({ tests, stale }: ReadingsTableProps) {
  return (
    <table class="readings-table">
      <thead>
        <tr>
          <th scope="col">{say('readings.mark')}</th>
          <th scope="col">{say('readings.good')}</th>
          <th scope="col">{say('readings.faulted')}</th>
        </tr>
      </thead>
      {tests.map((test) => (
        <TestRows key={test.test} of={test} stale={stale(test)} />
      ))}
    </table>
  );
}

function TestRows({ of, stale }: { readonly of: TestReadings; readonly stale: boolean }) {
  const marks = of.marks.filter(({ telling }) => telling === of.telling);
  const alike = of.marks.length - marks.length;
  return (
    <tbody class={stale ? 'readings-stale' : ''}>
      <tr>
        <th scope="rowgroup" colSpan={3} class="readings-test">
          {say(`standardTests.list.${of.test}.name`)}
          {alike > 0 && <span class="quiet"> {say('readings.more', { count: alike })}</span>}
        </th>
      </tr>
      {marks.map((mark) => (
        <MarkRow key={`${mark.setUp} ${mark.good[0]?.channel}`} mark={mark} />
      ))}
    </tbody>
  );
}

function MarkRow({ mark }: { readonly mark: MarkReadings }) {
  const spread = mark.others.length === 0 ? null : spreadWords([...mark.good, ...mark.others]);
  // The number of a code is no figure, and its words no unit.
  const channel = mark.good[0]?.channel;
  const kept = channel === 'codes' || channel === 'drive' ? (words: string) => words : keepUnits;
  return (
    <tr>
      <th scope="row">{readingLabel(mark)}</th>
      <td>
        {kept(readingWords(mark.good))}
        {spread !== null && <small class="quiet">{keepUnits(spread)}</small>}
      </td>
      <td class={mark.telling === 'tells' ? 'readings-tells' : ''}>{kept(readingWords(mark.faulted))}</td>
    </tr>
  );
}
