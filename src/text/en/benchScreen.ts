import { actions } from './actions.ts';
import { codes } from './codes.ts';
import { controls } from './controls.ts';
import { drawing } from './drawing.ts';
import { evidence } from './evidence.ts';
import { faults } from './faults.ts';
import { findings } from './findings.ts';
import { firstScreen } from './firstScreen.ts';
import { hand } from './hand.ts';
import { happenings } from './happenings.ts';
import { items } from './items.ts';
import { jobTerms } from './jobTerms.ts';
import { places } from './places.ts';
import { reader } from './reader.ts';
import { refusals } from './refusals.ts';
import { roadTest } from './roadTest.ts';
import { suspects } from './suspects.ts';
import { undo } from './undo.ts';
import { waiting } from './waiting.ts';

/**
 * The sentences of the bench as it stands when a job is taken: all but those of coach, service data and debrief, which come
 * with these (`catalogue.ts`).
 */
export const benchScreen = {
  ...firstScreen,
  ...actions,
  ...controls,
  ...drawing,
  ...findings,
  ...hand,
  ...happenings,
  ...items,
  ...jobTerms,
  ...places,
  ...refusals,
  ...undo,
  ...roadTest,
  ...reader,
  ...suspects,
  ...codes,
  ...evidence,
  ...faults,
  ...waiting,
} as const;
