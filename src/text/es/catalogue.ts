import type { Catalogue } from '../translate.ts';
import { actions } from './actions.ts';
import { coach } from './coach.ts';
import { codes } from './codes.ts';
import { controls } from './controls.ts';
import { cupboard } from './cupboard.ts';
import { debrief } from './debrief.ts';
import { debriefReplay } from './debriefReplay.ts';
import { debriefScore } from './debriefScore.ts';
import { drawing } from './drawing.ts';
import { evidence } from './evidence.ts';
import { faults } from './faults.ts';
import { findings } from './findings.ts';
import { firstScreen } from './firstScreen.ts';
import { hand } from './hand.ts';
import { happenings } from './happenings.ts';
import { inside } from './inside.ts';
import { items } from './items.ts';
import { jobFiles } from './jobFiles.ts';
import { jobTerms } from './jobTerms.ts';
import { modes } from './modes.ts';
import { places } from './places.ts';
import { proof } from './proof.ts';
import { reader } from './reader.ts';
import { refusals } from './refusals.ts';
import { roadTest } from './roadTest.ts';
import { rules } from './rules.ts';
import { service } from './service.ts';
import { serviceMonitor } from './serviceMonitor.ts';
import { serviceTests } from './serviceTests.ts';
import { serviceTools } from './serviceTools.ts';
import { standardTests } from './standardTests.ts';
import { suspects } from './suspects.ts';
import { undo } from './undo.ts';
import { verdict } from './verdict.ts';
import { waiting } from './waiting.ts';

/** Every sentence in the Spanish of North American shops: the same keys and gaps as the English. */
export const catalogue = {
  ...firstScreen,
  ...actions,
  ...coach,
  ...codes,
  ...controls,
  ...cupboard,
  ...debrief,
  ...debriefReplay,
  ...debriefScore,
  ...drawing,
  ...evidence,
  ...faults,
  ...findings,
  ...hand,
  ...happenings,
  ...inside,
  ...items,
  ...jobFiles,
  ...jobTerms,
  ...modes,
  ...places,
  ...proof,
  ...reader,
  ...refusals,
  ...roadTest,
  ...rules,
  ...service,
  ...serviceMonitor,
  ...serviceTests,
  ...serviceTools,
  ...standardTests,
  ...suspects,
  ...undo,
  ...verdict,
  ...waiting,
} as const satisfies Catalogue;
