import { setup } from 'xstate';
import { ModeTable } from '../modes/ModeTable.ts';

/** Phases of the vacuum-decay monitor over one drive cycle, in their order. */
export const MONITOR_PHASES = [
  'waiting',
  'switch-check',
  'draw-down',
  'hold',
  'vent',
  'passed',
  'failed',
  'not-run',
] as const;
export type MonitorPhase = (typeof MONITOR_PHASES)[number];

export type MonitorEvent =
  | 'ENABLED'
  | 'NOT_ENABLED'
  | 'SWITCH_IS_OPEN'
  | 'TRIPPED'
  | 'HELD'
  | 'VENTED'
  | 'FAULT'
  | 'KEY_OFF';

/**
 * The vacuum-decay monitor over one drive cycle. A fault in any running phase ends it; so does the key, without a
 * judgement.
 */
export const monitorTable = new ModeTable<MonitorPhase, MonitorEvent>(
  setup({ types: { events: {} as { type: MonitorEvent } } }).createMachine({
    id: 'monitor',
    initial: 'waiting',
    states: {
      waiting: {
        on: { ENABLED: 'switch-check', NOT_ENABLED: 'not-run', FAULT: 'failed', KEY_OFF: 'not-run' },
      },
      'switch-check': { on: { SWITCH_IS_OPEN: 'draw-down', FAULT: 'failed', KEY_OFF: 'not-run' } },
      'draw-down': { on: { TRIPPED: 'hold', FAULT: 'failed', KEY_OFF: 'not-run' } },
      hold: { on: { HELD: 'vent', FAULT: 'failed', KEY_OFF: 'not-run' } },
      vent: { on: { VENTED: 'passed', FAULT: 'failed', KEY_OFF: 'not-run' } },
      passed: {},
      failed: {},
      'not-run': {},
    },
  }),
  'waiting',
);
