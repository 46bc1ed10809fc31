import { setup } from 'xstate';
import { ModeTable } from './ModeTable.ts';

export type HandleMode = 'still' | 'following' | 'drawing' | 'returning';
export type HandleEvent = 'FOLLOW' | 'STROKE' | 'ARRIVE';

/** Hand pump handle: follows the hand, or makes one whole stroke out and back. */
export const handleTable = new ModeTable<HandleMode, HandleEvent>(
  setup({ types: { events: {} as { type: HandleEvent } } }).createMachine({
    id: 'hand-pump-handle',
    initial: 'still',
    states: {
      still: { on: { FOLLOW: 'following', STROKE: 'drawing' } },
      following: { on: { ARRIVE: 'still', FOLLOW: 'following', STROKE: 'drawing' } },
      drawing: { on: { ARRIVE: 'returning', FOLLOW: 'following' } },
      returning: { on: { ARRIVE: 'still', FOLLOW: 'following' } },
    },
  }),
  'still',
);
