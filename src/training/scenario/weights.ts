/** The parts of the score. */
export const SCORE_PARTS = ['verdict', 'evidence', 'method', 'economy', 'repair'] as const;
export type ScorePartName = (typeof SCORE_PARTS)[number];

/** Points out of 100 that each part is worth. */
export type ScoreWeights = Readonly<Record<ScorePartName, number>>;

/** What the parts are worth in a job that does not say otherwise. */
export const USUAL_WEIGHTS: ScoreWeights = { verdict: 25, evidence: 30, method: 25, economy: 10, repair: 10 };

export const ALL_POINTS = 100;
/** More than this for one part would leave the others no say. */
export const MOST_WEIGHT = 60;
/** The score is what the evidence supports: it always counts for something. */
export const LEAST_EVIDENCE = 10;
