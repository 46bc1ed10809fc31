import { codes } from './codes.ts';
import { controls } from './controls.ts';
import { cupboard } from './cupboard.ts';
import { drawing } from './drawing.ts';
import { evidence } from './evidence.ts';
import { faults } from './faults.ts';
import { findings } from './findings.ts';
import { firstScreen } from './firstScreen.ts';
import { hand } from './hand.ts';
import { happenings } from './happenings.ts';
import { inside } from './inside.ts';
import { items } from './items.ts';
import { modes } from './modes.ts';
import { places } from './places.ts';
import { reader } from './reader.ts';
import { refusals } from './refusals.ts';
import { roadTest } from './roadTest.ts';
import { suspects } from './suspects.ts';
import { undo } from './undo.ts';
import { verdict } from './verdict.ts';
import { waiting } from './waiting.ts';

/**
 * The sentences of the bench as it stands when a job is taken: all but those of coach, service data and debrief, which come
 * with these (`wholeEnglish.ts`).
 */
export const benchScreen = {
  ...firstScreen,
  ...codes,
  ...controls,
  ...cupboard,
  ...drawing,
  ...evidence,
  ...faults,
  ...findings,
  ...hand,
  ...happenings,
  ...inside,
  ...items,
  ...modes,
  ...places,
  ...reader,
  ...refusals,
  ...roadTest,
  ...suspects,
  ...undo,
  ...verdict,
  ...waiting,
} as const;
