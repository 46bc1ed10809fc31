import { Random } from '../../base/Random.ts';
import { hashOfContent } from './hashOfContent.ts';
import type { Scenario, ScenarioContent } from './Scenario.ts';
import type { FaultRange, Variant } from './Variant.ts';

/** How a truth is drawn from a scenario with variants. */
export type Draw =
  /** The scenario's own, every severity at its lower end: what an instructor sees who works the file by himself. */
  | { readonly kind: 'first' }
  /** By a word that nobody chose: a learner who practises alone has another truck each time. */
  | { readonly kind: 'free'; readonly word: string }
  /** By the class, whose code only its mark stands for, and the seat. */
  | { readonly kind: 'seat'; readonly mark: string; readonly seat: number };

export const FIRST: Draw = { kind: 'first' };

/** The draw as a record has it. */
export function drawText(draw: Draw): string {
  switch (draw.kind) {
    case 'first':
      return 'first';
    case 'free':
      return `free-${draw.word}`;
    case 'seat':
      return `class-${draw.mark}-seat-${draw.seat}`;
  }
}

/** What `drawText` wrote; null for anything else. */
export function parseDraw(text: string): Draw | null {
  if (text === 'first') return FIRST;
  const [, word] = /^free-([a-z0-9-]{1,40})$/.exec(text) ?? [];
  if (word !== undefined) return { kind: 'free', word };
  const [, mark, seat] = /^class-([0-9a-f]{16})-seat-([1-9][0-9]{0,2})$/.exec(text) ?? [];
  return mark === undefined ? null : { kind: 'seat', mark, seat: Number(seat) };
}

/** The truth that a draw gives of a scenario: the same for the same scenario and draw. A scenario without variants is its own. */
export function drawnVariant(scenario: Scenario, draw: Draw): Scenario {
  const { variants } = scenario;
  if (variants === undefined) return scenario;
  const { index, share } = chosen(scenario.contentHash, variants.length, draw);
  return ofVariant(scenario, variants[index] ?? { faults: [] }, drawText(draw), share);
}

/** Where in the range of each fault's severity a truth lies, 0 to 1. */
type Share = (fault: number) => number;

/** One variant of a scenario, its severities at these shares of their ranges. */
export function ofVariant(scenario: Scenario, variant: Variant, draw: string, share: Share): Scenario {
  const { contentHash, variants: _variants, variant: _variant, ...plain } = scenario;
  const { workOrder } = plain;
  const content: ScenarioContent = {
    ...plain,
    workOrder: {
      ...workOrder,
      codes: variant.codes ?? workOrder.codes,
      complaint: variant.complaint ?? workOrder.complaint,
      history: variant.history ?? workOrder.history,
    },
    drives: variant.drives ?? plain.drives,
    faults: variant.faults.map((fault, index) => atShare(fault, share(index))),
    remark: variant.remark ?? plain.remark,
  };
  return { ...content, contentHash, variant: { draw, contentHash: hashOfContent(content) } };
}

/** Two decimals: enough to tell trucks apart, and read out in a list. */
function atShare({ severityTo, ...fault }: FaultRange, share: number): Scenario['faults'][number] {
  if (severityTo === undefined) return fault;
  const between = Math.round((fault.severity + (severityTo - fault.severity) * share) * 100) / 100;
  return { ...fault, severity: Math.min(Math.max(between, fault.severity), severityTo) };
}

function chosen(hash: string, count: number, draw: Draw): { readonly index: number; readonly share: Share } {
  if (draw.kind === 'first') return { index: 0, share: () => 0 };
  const random = Random.of(`${hash} ${drawText(draw)}`, 'variant');
  const index =
    draw.kind === 'seat'
      ? indexOfSeat(`${hash} ${draw.mark}`, count, draw.seat)
      : Math.floor(random.next() * count);
  const shares = [0, 1, 2, 3].map(() => random.next());
  return { index, share: (fault) => shares[fault] ?? 0 };
}

/** Seats get the variants in shuffled rounds, so that a class has as many of each, and neighbours seldom the same. */
function indexOfSeat(seed: string, count: number, seat: number): number {
  const round = Math.floor((seat - 1) / count);
  const random = Random.of(seed, `round ${round}`);
  const order = Array.from({ length: count }, (_, index) => index);
  for (let last = count - 1; last > 0; last--) {
    const other = Math.floor(random.next() * (last + 1));
    [order[last], order[other]] = [order[other] ?? 0, order[last] ?? 0];
  }
  return order[(seat - 1) % count] ?? 0;
}
