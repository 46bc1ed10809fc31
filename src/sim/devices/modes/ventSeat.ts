import { setup } from 'xstate';
import { ModeTable } from './ModeTable.ts';

export type VentMode = 'open' | 'shut';
export type VentEvent = 'DRAWN' | 'REFILLED';

/** Vent seat: pulled shut by vacuum in the delay chamber, opened by its spring when that chamber has refilled. */
export const ventTable = new ModeTable<VentMode, VentEvent>(
  setup({ types: { events: {} as { type: VentEvent } } }).createMachine({
    id: 'vent-seat',
    initial: 'open',
    states: { open: { on: { DRAWN: 'shut' } }, shut: { on: { REFILLED: 'open' } } },
  }),
  'open',
);
