import { setup } from 'xstate';
import { ModeTable } from './ModeTable.ts';

export type PlungerMode = 'rest' | 'moving-in' | 'seated' | 'moving-out';
export type PlungerEvent = 'PULL_IN' | 'DROP_OUT' | 'ARRIVE';

/** Solenoid plunger: pulled in by coil current, pushed back by its spring, each way taking its travel time. */
export const plungerTable = new ModeTable<PlungerMode, PlungerEvent>(
  setup({ types: { events: {} as { type: PlungerEvent } } }).createMachine({
    id: 'plunger',
    initial: 'rest',
    states: {
      rest: { on: { PULL_IN: 'moving-in' } },
      'moving-in': { on: { ARRIVE: 'seated', DROP_OUT: 'moving-out' } },
      seated: { on: { DROP_OUT: 'moving-out' } },
      'moving-out': { on: { ARRIVE: 'rest', PULL_IN: 'moving-in' } },
    },
  }),
  'rest',
);
