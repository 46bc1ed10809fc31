import { setup } from 'xstate';
import { ModeTable } from './ModeTable.ts';

export type SwitchMode = 'open' | 'bouncing' | 'closed';
export type SwitchEvent = 'TRIP' | 'RESET' | 'SETTLE';

/** Vacuum switch contact: closes at the trip point after a short bounce, opens below the reset point. */
export const switchTable = new ModeTable<SwitchMode, SwitchEvent>(
  setup({ types: { events: {} as { type: SwitchEvent } } }).createMachine({
    id: 'vacuum-switch',
    initial: 'open',
    states: {
      open: { on: { TRIP: 'bouncing' } },
      bouncing: { on: { SETTLE: 'closed', RESET: 'open' } },
      closed: { on: { RESET: 'open' } },
    },
  }),
  'open',
);
