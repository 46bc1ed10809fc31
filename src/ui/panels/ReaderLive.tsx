import type { ReaderObservation } from '../../sim/world/Observation.ts';
import { fixed, volts } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import type { Desk } from './Desk.ts';
import { type Line, Lines } from './Lines.tsx';

/** What the controller says of itself now. */
export function ReaderLive({ desk }: { readonly desk: Desk }) {
  const { reader } = desk.observation.value;
  const none = say('reader.none');
  const { senseVolts, senseState, monitor, fuelPercent } = reader;
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
      <Lines lines={solenoidLines(reader)} />
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
export function solenoidLines({ awake, command, driver }: ReaderObservation): readonly Line[] {
  const none = say('reader.none');
  return [
    { name: say('reader.command'), value: awake ? say(`solenoid.${command}`) : none },
    { name: say('reader.driver'), value: driver === null ? none : say(`reader.drivers.${driver}`) },
  ];
}

function timerWords({ seconds, limitSeconds }: NonNullable<ReaderObservation['monitor']>): string {
  const passed = fixed(seconds, 0);
  if (limitSeconds === null) return say('reader.timerAlone', { seconds: passed });
  return say('reader.timerOf', { seconds: passed, limit: fixed(limitSeconds, 0) });
}
