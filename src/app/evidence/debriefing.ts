import { adviceOf } from '../../training/coach/adviceOf.ts';
import { parOf } from '../../training/evidence/parOf.ts';
import { debrief } from '../../training/score/debrief.ts';

/**
 * What the coach advises with and a closed job is judged with. Apart from what weighs the evidence, so that the worker fetches it only when everything
 * shown so far is weighed.
 */
export const debriefing = { adviceOf, parOf, debrief };
export type Debriefing = typeof debriefing;
