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
