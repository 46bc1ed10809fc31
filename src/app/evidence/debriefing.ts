import { parOf } from '../../training/evidence/parOf.ts';
import { debrief } from '../../training/score/debrief.ts';

/**
 * What a closed job is judged with. Apart from what weighs the evidence, so that the worker fetches it only when everything
 * shown so far is weighed.
 */
export const debriefing = { parOf, debrief };
export type Debriefing = typeof debriefing;
