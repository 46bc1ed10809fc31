import { chance } from '../../../text/chance.ts';
import { say } from '../../../text/translate.ts';
import type { EvidenceStep } from '../../../training/evidence/EvidenceFacts.ts';
import type { LogEntry } from '../../../training/sitting/LogEntry.ts';
import { bandName, stepEntry, stepTitle } from './bandNames.ts';
import type { Band } from './chanceBands.ts';

/** The stacked chart in numbers. */
export function ChancesTable(props: {
  readonly bands: readonly Band[];
  readonly steps: readonly EvidenceStep[];
  readonly log: readonly LogEntry[];
}) {
  const { bands, steps, log } = props;
  return (
    <details class="as-table">
      <summary>{say('stacked.asTable')}</summary>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls is reached by keys too */}
      <section class="table-scroll" tabIndex={0} aria-label={say('stacked.asTable')}>
        <table class="ruled">
          <thead>
            <tr>
              <th scope="col">{say('stacked.step')}</th>
              {bands.map((band) => (
                <th key={bandName(band)} scope="col" class="number">
                  {bandName(band)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {steps.map((step, index) => (
              <tr key={step.entry}>
                <th scope="row">
                  {stepTitle(step)}
                  <span class="quiet"> {stepEntry(step, log)}</span>
                </th>
                {bands.map((band) => (
                  <td key={bandName(band)} class="number">
                    {chance(band.chances[index] ?? 0)}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </details>
  );
}
