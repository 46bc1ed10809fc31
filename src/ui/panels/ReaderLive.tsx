import type { ReaderObservation } from '../../sim/world/Observation.ts';
import { fixed, volts } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { Lines } from './Lines.tsx';

/** What the controller says of itself now. */
export function ReaderLive({ desk }: { readonly desk: Desk }) {
  const { reader } = desk.observation.value;
  const none = say('reader.none');
  const { senseVolts, senseState, driver, monitor, fuelPercent } = reader;
  return (
    <>
      <h4>{say('reader.groups.sense')}</h4>
      <Lines
        lines={[
          { name: say('reader.sense'), value: senseVolts === null ? none : volts(senseVolts) },
          {
            name: say('reader.senseState'),
            value: senseState === null ? none : say(`reader.states.${senseState}`),
          },
        ]}
      />
      <h4>{say('reader.groups.solenoid')}</h4>
      <SolenoidLines reader={reader} driver={driver} />
      <h4>{say('reader.groups.monitor')}</h4>
      <Lines
        lines={[
          {
            name: say('reader.phase'),
            value: monitor === null ? none : say(`monitorPhases.${monitor.phase}`),
          },
          { name: say('reader.timer'), value: monitor === null ? none : timerWords(monitor) },
          {
            name: say('reader.complete'),
            hint: say('reader.completeHint'),
            value: monitor === null ? none : say(monitor.complete ? 'reader.yes' : 'reader.no'),
          },
          {
            name: say('reader.fuel'),
            value: fuelPercent === null ? none : `${fixed(fuelPercent, 0)} %`,
          },
        ]}
      />
    </>
  );
}

/** Command and driver, as both the live page and the command page show them. */
export function SolenoidLines({
  reader,
  driver,
}: {
  readonly reader: ReaderObservation;
  readonly driver: ReaderObservation['driver'];
}) {
  const none = say('reader.none');
  return (
    <Lines
      lines={[
        { name: say('reader.command'), value: reader.awake ? say(`solenoid.${reader.command}`) : none },
        { name: say('reader.driver'), value: driver === null ? none : say(`reader.drivers.${driver}`) },
      ]}
    />
  );
}

function timerWords({ seconds, limitSeconds }: NonNullable<ReaderObservation['monitor']>): string {
  const passed = fixed(seconds, 0);
  if (limitSeconds === null) return say('reader.timerAlone', { seconds: passed });
  return say('reader.timerOf', { seconds: passed, limit: fixed(limitSeconds, 0) });
}
