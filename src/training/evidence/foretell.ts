import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { AnswerSource, DrawAnswers, WorldAnswers } from './Answers.ts';
import type { Cluster } from './clusters.ts';
import type { Shown } from './Shown.ts';

type Answer = Shown['value'];

/** Numbers nearer than this share, or than half the instrument's width, are the same answer. */
const SAME_SHARE = 0.01;

/** So near to what a sound truck shows, a suspect scatters with the tolerances as a sound truck does. */
const NEAR_SHARE = 0.05;

/**
 * What worlds with these faults foretell for a cluster with good tools: one answer for each draw. The draws are the same for
 * all suspects: one that has not had all of them, and shows about what a sound truck shows, keeps its distance from it in
 * the others.
 */
export function foretell(
  source: AnswerSource,
  faults: readonly FaultChoice[],
  { asks }: Cluster,
): readonly Answer[] {
  const own = source.answersOf(faults);
  const { sound } = source;
  const answers = ofEach(own, asks);
  const [first] = answers;
  if (answers.length >= sound.length || first === undefined) return answers;
  const sounds = ofEach(sound, asks);
  const beside = sounds[0];
  if (typeof first === 'number' && typeof beside === 'number') {
    const away = first - beside;
    const half = halfOf(own[0]?.[asks[0] as number]);
    if (Math.abs(away) > Math.max(half, NEAR_SHARE * Math.abs(beside))) return answers;
    return sounds.map((answer) => (typeof answer === 'number' ? answer + away : answer));
  }
  return first === beside ? sounds : answers;
}

/**
 * What they foretell with this tool bad; null where the tool being bad makes no difference to the cluster. A suspect that
 * has no world with the bad tool, and shows what a sound truck shows, shows with the bad tool what a sound truck does.
 */
export function foretellWithBadTool(
  source: AnswerSource,
  faults: readonly FaultChoice[],
  tool: FaultChoice,
  { asks }: Cluster,
): readonly Answer[] | null {
  const own = source.answersOf(faults)[0];
  if (own === undefined) return null;
  const theirs = source.answersWithBadTool(faults, tool);
  const answered = theirs !== null && asks.some((ask) => theirs[ask] !== undefined);
  const bad = answered ? theirs : soundInstead(source, own, tool, asks);
  if (bad === null || isSame(bad, own, asks)) return null;
  const one = joined(bad, asks);
  return one === undefined ? null : [one];
}

function soundInstead(
  source: AnswerSource,
  own: WorldAnswers,
  tool: FaultChoice,
  asks: readonly number[],
): WorldAnswers | null {
  const sound = source.sound[0];
  return sound !== undefined && isSame(own, sound, asks) ? source.soundWithBadTool(tool) : null;
}

function ofEach(draws: DrawAnswers, asks: readonly number[]): readonly Answer[] {
  return draws.flatMap((draw) => {
    const one = joined(draw, asks);
    // Over range is an answer, and is null.
    return one === undefined ? [] : [one];
  });
}

/** Several answers of one world to repeats, as one: of numbers the mean, of the rest the commonest. */
function joined(answers: WorldAnswers, asks: readonly number[]): Answer | undefined {
  if (asks.length === 1) return answers[asks[0] as number]?.value;
  const values: Answer[] = [];
  let numbers = 0;
  let sum = 0;
  for (const ask of asks) {
    const answer = answers[ask];
    if (answer === undefined) continue;
    values.push(answer.value);
    if (typeof answer.value !== 'number') continue;
    numbers++;
    sum += answer.value;
  }
  if (numbers > 0 && numbers * 2 > values.length) return sum / numbers;
  const counts = new Map<Answer, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let best = values[0];
  for (const [value, count] of counts) {
    if (best !== undefined && count > (counts.get(best) ?? 0)) best = value;
  }
  return best;
}

function isSame(a: WorldAnswers, b: WorldAnswers, asks: readonly number[]): boolean {
  for (const ask of asks) if (!sameAnswer(a[ask], b[ask])) return false;
  return true;
}

function sameAnswer(a: Shown | undefined, b: Shown | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  if (typeof a.value !== 'number' || typeof b.value !== 'number') return a.value === b.value;
  return Math.abs(a.value - b.value) <= Math.max(halfOf(a) / 2, SAME_SHARE * Math.abs(b.value));
}

function halfOf(shown: Shown | undefined): number {
  return shown?.kind === 'number' ? shown.half : 0;
}
