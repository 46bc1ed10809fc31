import type { SittingAction } from '../training/sitting/SittingAction.ts';

/** Actions that are said in the caption as they are done. What is carried says its own sentence. */
export const SAID: ReadonlySet<SittingAction['kind']> = new Set<SittingAction['kind']>([
  'set-key',
  'set-meter',
  'meter-jack',
  'meter-range',
  'meter-hold',
  'meter-extremes',
  'meter-relative',
  'part-plug',
  'mate-plug',
  'insert-pin',
  'remove-pin',
  'clamp',
  'switch-jumper',
  'renew-jumper-fuse',
  'release',
  'pull-fuse',
  'fit-fuse',
  'command-solenoid',
  'switch-supply',
  'set-bleed',
  'refill-manometer',
  'set-smoke',
  'swap-unit',
  'wiggle',
  'clear-codes',
]);

/** Actions whose outcome is an entry of the log: the caption says that entry. */
export const FOUND: ReadonlySet<SittingAction['kind']> = new Set<SittingAction['kind']>([
  'look',
  'listen',
  'drag-test',
  'read-codes',
]);
