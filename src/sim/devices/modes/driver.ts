import { setup } from 'xstate';
import { ModeTable } from './ModeTable.ts';

export type DriverMode = 'off' | 'on' | 'latched';
export type DriverEvent = 'COMMAND_ON' | 'COMMAND_OFF' | 'OVERLOAD' | 'KEY_OFF';

/** The controller's high-side solenoid driver: latches off on overload until the key is turned off. */
export const driverTable = new ModeTable<DriverMode, DriverEvent>(
  setup({ types: { events: {} as { type: DriverEvent } } }).createMachine({
    id: 'driver',
    initial: 'off',
    states: {
      off: { on: { COMMAND_ON: 'on' } },
      on: { on: { COMMAND_OFF: 'off', OVERLOAD: 'latched', KEY_OFF: 'off' } },
      latched: { on: { KEY_OFF: 'off' } },
    },
  }),
  'off',
);
