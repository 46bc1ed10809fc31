import { SOLENOID_COMMANDS } from '../../sim/devices/places.ts';
import { volts } from '../../text/format.ts';
import { say } from '../../text/translate.ts';
import { Choice } from './Choice.tsx';
import type { Desk } from './Desk.ts';

/** The reader tool: what the controller says of itself, and the solenoid on command. */
export function ReaderPanel({ desk }: { readonly desk: Desk }) {
  const { reader } = desk.observation.value;
  return (
    <div class="reader">
      <h3>{say('reader.title')}</h3>
      {!reader.awake && <p class="notice">{say('reader.asleep')}</p>}
      <dl class="values">
        <dt>{say('reader.sense')}</dt>
        <dd>{reader.senseVolts === null ? say('reader.none') : volts(reader.senseVolts)}</dd>
        <dt>{say('reader.senseState')}</dt>
        <dd>{reader.senseState === null ? say('reader.none') : say(`reader.states.${reader.senseState}`)}</dd>
        <dt>{say('reader.driver')}</dt>
        <dd>{reader.driver === null ? say('reader.none') : say(`reader.drivers.${reader.driver}`)}</dd>
      </dl>
      <Choice
        label={say('reader.ask')}
        value={reader.command}
        options={SOLENOID_COMMANDS.map((command) => ({ value: command, label: say(`solenoid.${command}`) }))}
        onChoose={(command) => desk.act({ kind: 'command-solenoid', command })}
      />
    </div>
  );
}
