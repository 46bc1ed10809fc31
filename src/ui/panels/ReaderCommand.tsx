import { SOLENOID_COMMANDS } from '../../sim/devices/places.ts';
import { volts } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { Choice } from './Choice.tsx';
import type { Desk } from './Desk.ts';
import { Lines } from './Lines.tsx';
import { solenoidLines } from './ReaderLive.tsx';

/** The solenoid on command, with what the controller sees of it. */
export function ReaderCommand({ desk }: { readonly desk: Desk }) {
  const { reader } = desk.observation.value;
  return (
    <>
      <Choice
        label={say('reader.ask')}
        value={reader.command}
        disabled={!reader.awake}
        options={SOLENOID_COMMANDS.map((command) => ({ value: command, label: say(`solenoid.${command}`) }))}
        onChoose={(command) => desk.act({ kind: 'command-solenoid', command })}
      />
      <Lines
        lines={[
          ...solenoidLines(reader),
          {
            name: say('reader.sense'),
            value: reader.senseVolts === null ? say('reader.none') : volts(reader.senseVolts),
          },
        ]}
      />
      <p class="quiet">{say('reader.commandHint')}</p>
    </>
  );
}
