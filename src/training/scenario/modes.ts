/** The ways to sit a scenario, from the one that leads by the hand to the one that is marked. */
export const SITTING_MODES = ['introduction', 'walkthrough', 'practice', 'assessment'] as const;
export type SittingMode = (typeof SITTING_MODES)[number];

/** Someone is at the learner's elbow: there are steps, the numbers they speak of are the same for everyone, the unit may be seen cut open. */
export function isLed(mode: SittingMode): boolean {
  return mode === 'introduction' || mode === 'walkthrough';
}

/**
 * There is something to find out: a verdict is asked for, and it is worth points. An introduction asks for none: its truck
 * is sound, and all it teaches is how to use one's hands.
 */
export function isJob(mode: SittingMode): boolean {
  return mode !== 'introduction';
}
