import { actions } from './actions.ts';
import { bench } from './bench.ts';
import { board } from './board.ts';
import { coach } from './coach.ts';
import { codes } from './codes.ts';
import { controls } from './controls.ts';
import { cupboard } from './cupboard.ts';
import { debrief } from './debrief.ts';
import { debriefReplay } from './debriefReplay.ts';
import { debriefScore } from './debriefScore.ts';
import { drawing } from './drawing.ts';
import { edition } from './edition.ts';
import { evidence } from './evidence.ts';
import { faults } from './faults.ts';
import { findings } from './findings.ts';
import { hand } from './hand.ts';
import { happenings } from './happenings.ts';
import { inside } from './inside.ts';
import { introduction } from './introduction.ts';
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
import { shell } from './shell.ts';
import { standardTests } from './standardTests.ts';
import { suspects } from './suspects.ts';
import { troubles } from './troubles.ts';
import { undo } from './undo.ts';
import { verdict } from './verdict.ts';
import { waiting } from './waiting.ts';

/** Every sentence of the English catalogue. Another language exports an object of the same shape from its folder. */
export const catalogue = {
  ...actions,
  ...bench,
  ...jobTerms,
  ...board,
  ...coach,
  ...codes,
  ...controls,
  ...cupboard,
  ...debrief,
  ...debriefReplay,
  ...debriefScore,
  ...drawing,
  ...edition,
  ...evidence,
  ...faults,
  ...findings,
  ...hand,
  ...happenings,
  ...inside,
  ...introduction,
  ...items,
  ...jobFiles,
  ...modes,
  ...places,
  ...proof,
  ...reader,
  ...roadTest,
  ...refusals,
  ...rules,
  ...service,
  ...serviceMonitor,
  ...serviceTests,
  ...serviceTools,
  ...shell,
  ...standardTests,
  ...suspects,
  ...troubles,
  ...undo,
  ...verdict,
  ...waiting,
} as const;
