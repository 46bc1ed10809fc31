import { clamp } from '../../base/maths.ts';
import type { EvidenceFacts, MarkEvidence } from '../evidence/EvidenceFacts.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import type { DebriefFacts, ScoreReason, WeighedMark } from './DebriefFacts.ts';
import { rightVerdicts } from './truth.ts';

const BOARD = 10;
/** Items less likely than this after the complaint need no mark. */
const COUNTS = 0.01;
/** Full marks when this share of what counts is carried. */
const FULL_AT = 0.8;

/**
 * The suspect board, judged by evidence and never by truth: a mark that its own citations carry earns its item's chance
 * after the complaint, any other loses it. So marking all that is unlikely earns next to nothing, and marking by guess costs.
 */
export function boardReason(evidence: EvidenceFacts): ScoreReason {
  const marks = evidence.marks.map((mark) => weighed(evidence, mark));
  const carried = marks.filter((_, at) => isCarried(evidence.marks[at]));
  const uncarried = marks.filter((_, at) => !isCarried(evidence.marks[at]));
  const sum = marks.reduce((total, { weight }) => total + weight, 0);
  const share = clamp(sum / massThatCounts(evidence), 0, 1);
  const points = BOARD * Math.min(1, share / FULL_AT);
  return { kind: 'board', points, of: BOARD, carried, uncarried, share, fullAt: FULL_AT };
}

/** The marks beside the truth: `agrees` is told, and earns nothing. */
export function boardMarksOf(scenario: Scenario, evidence: EvidenceFacts): DebriefFacts['boardMarks'] {
  const wrong = rightVerdicts(scenario);
  return evidence.marks.map((mark) => ({
    ...mark,
    agrees: wrong.includes(mark.item) === (mark.mark === 'convicted'),
    points: (BOARD * weighed(evidence, mark).weight) / (FULL_AT * massThatCounts(evidence)),
  }));
}

function weighed({ steps }: EvidenceFacts, made: MarkEvidence): WeighedMark {
  const { item, mark, tick, cites, prior } = made;
  const chance = steps[0]?.items.find((one) => one.item === item)?.chance ?? prior;
  return { item, mark, tick, entries: cites, weight: isCarried(made) ? chance : -chance };
}

/** Whatever had been shown: a mark that cites nothing is carried by nothing. */
function isCarried(made: MarkEvidence | undefined): boolean {
  return made?.judgement === 'carried' && made.cites.length > 0;
}

/** Chances after the complaint of all that is likely enough to count. */
function massThatCounts({ steps }: EvidenceFacts): number {
  const chances = (steps[0]?.items ?? []).map(({ chance }) => chance).filter((chance) => chance >= COUNTS);
  return Math.max(
    COUNTS,
    chances.reduce((sum, chance) => sum + chance, 0),
  );
}
