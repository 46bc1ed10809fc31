import { useSignal } from '@preact/signals';
import type { ReaderObservation } from '../../sim/world/Observation.ts';
import { describeCode } from '../../text/describeCode.ts';
import { barometer, clock, distance, fixed, temperature, volts } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { ClearCodesDialog } from './ClearCodesDialog.tsx';
import type { Desk } from './Desk.ts';
import { Lines } from './Lines.tsx';

type CodeStatus = ReaderObservation['codes'][number]['status'];
type Freeze = ReaderObservation['freeze'][number];
const STATUSES: readonly CodeStatus[] = ['stored', 'pending', 'permanent'];

/** Codes as they were last read. Reading is an act of its own, and writes itself into the log. */
export function ReaderCodes({ desk }: { readonly desk: Desk }) {
  const asking = useSignal(false);
  const { awake } = desk.observation.value.reader;
  const last = desk.log.value.filter(({ about }) => about === 'codes').at(-1);
  return (
    <>
      {last === undefined ? (
        <p class="quiet">{say('reader.notRead')}</p>
      ) : (
        <>
          <p class="quiet reader-when">
            {say(awake ? 'reader.readAt' : 'reader.readAtOff', { time: clock(last.tick) })}
          </p>
          <CodeLists reader={last.seen.reader} />
        </>
      )}
      <div class="reader-keys">
        <button type="button" class="act" disabled={!awake} onClick={() => desk.act({ kind: 'read-codes' })}>
          {say(last === undefined ? 'reader.read' : 'reader.readAgain')}
        </button>
        <button type="button" disabled={!awake} onClick={() => (asking.value = true)}>
          {say('reader.clear')}
        </button>
      </div>
      {asking.value && (
        <ClearCodesDialog desk={desk} unread={last === undefined} onClose={() => (asking.value = false)} />
      )}
    </>
  );
}

/** The three lists, each code with its text, the freeze data under the code it belongs to. */
export function CodeLists({ reader }: { readonly reader: ReaderObservation }) {
  if (reader.codes.length === 0) return <p class="reader-none">{say('reader.noCodes')}</p>;
  const shown = new Set<string>();
  return (
    <>
      {STATUSES.map((status) => {
        const codes = reader.codes.filter((one) => one.status === status);
        if (codes.length === 0) return null;
        return (
          <section key={status} class="code-list">
            <h4>
              <span class={`code-mark code-${status}`} aria-hidden="true" />
              {say(`reader.lists.${status}`)}
              <span class="line-hint">{say(`reader.listHints.${status}`)}</span>
            </h4>
            <ul>
              {codes.map(({ code }) => {
                // A code may stand in two lists; its text and its freeze data are told once.
                const again = shown.has(code);
                const freeze = again ? [] : reader.freeze.filter((one) => one.code === code);
                shown.add(code);
                return (
                  <li key={code}>
                    <b class="code">{code}</b> {!again && describeCode(code)}
                    {freeze.map((one, index) => (
                      <details key={index}>
                        <summary>{say('reader.freeze', { code })}</summary>
                        <Lines lines={freezeLines(one)} />
                      </details>
                    ))}
                  </li>
                );
              })}
            </ul>
          </section>
        );
      })}
    </>
  );
}

function freezeLines(freeze: Freeze) {
  return [
    {
      name: say('reader.freezeLines.miles'),
      value: say(Math.round(freeze.miles) < 0 ? 'reader.milesBefore' : 'reader.milesAfter', {
        distance: distance(Math.abs(freeze.miles)),
      }),
    },
    { name: say('reader.freezeLines.fuel'), value: `${fixed(freeze.fuelPercent, 0)} %` },
    { name: say('reader.freezeLines.ambient'), value: temperature(freeze.ambientC) },
    { name: say('reader.freezeLines.barometer'), value: barometer(freeze.barometerKPa) },
    { name: say('reader.freezeLines.battery'), value: volts(freeze.batteryVolts) },
    { name: say('reader.freezeLines.sense'), value: volts(freeze.senseVolts) },
    { name: say('reader.freezeLines.strokes'), value: fixed(freeze.strokes, 0) },
    {
      name: say('reader.freezeLines.hold'),
      value: freeze.holdSeconds === null ? say('reader.noHold') : `${fixed(freeze.holdSeconds, 1)} s`,
    },
  ];
}
