import type { FaultChoice } from '../../sim/world/WorldPort.ts';
import type { AnswerSource } from './Answers.ts';
import type { Cluster } from './clusters.ts';
import type { Shown } from './Shown.ts';

type Answer = Shown['value'];

/** Numbers nearer than this share, or than half the instrument's width, are the same answer. */
const SAME_SHARE = 0.01;

/** What worlds with these faults foretell for a cluster: one answer for each draw. `tool` is a tool that is bad, or null. */
export function foretell(
  source: AnswerSource,
  faults: readonly FaultChoice[],
  tool: FaultChoice | null,
  { asks }: Cluster,
): readonly Answer[] {
  const draws = source.answersOf(faults);
  const good = draws.flatMap((answers) => joined(asks.map((ask) => answers[ask])));
  if (tool === null) return good;
  const withBad = source.answersWithBadTool(faults, tool);
  const first = draws[0];
  if (withBad === null || first === undefined) return good;
  const untouched = asks.every((ask) => sameAnswer(withBad[ask], first[ask]));
  if (untouched) return good;
  const bad = joined(asks.map((ask) => withBad[ask]));
  return bad.length > 0 ? bad : good;
}

/** Several answers of one world to repeats, as one: of numbers the mean, of the rest the commonest. */
function joined(answers: readonly (Shown | undefined)[]): readonly Answer[] {
  const values = answers.flatMap((answer) => (answer === undefined ? [] : [answer.value]));
  if (values.length <= 1) return values;
  const numbers = values.filter((value): value is number => typeof value === 'number');
  if (numbers.length * 2 > values.length) return [numbers.reduce((sum, x) => sum + x, 0) / numbers.length];
  const counts = new Map<Answer, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  let best = values[0] as Answer;
  for (const [value, count] of counts) if (count > (counts.get(best) ?? 0)) best = value;
  return [best];
}

function sameAnswer(a: Shown | undefined, b: Shown | undefined): boolean {
  if (a === undefined || b === undefined) return a === b;
  if (typeof a.value !== 'number' || typeof b.value !== 'number') return a.value === b.value;
  const half = a.kind === 'number' ? a.half : 0;
  return Math.abs(a.value - b.value) <= Math.max(half / 2, SAME_SHARE * Math.abs(b.value));
}
