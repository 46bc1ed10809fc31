import { type Draw, drawnVariant, drawText, parseDraw } from '../scenario/drawVariant.ts';
import type { Scenario } from '../scenario/Scenario.ts';
import { seedOfSitting } from '../scenario/seedPolicy.ts';
import { classMark } from './classCode.ts';
import { MOST_SEATS } from './JobFile.ts';

/** The draw of a seat. `key` is what `classKey` gives for the class code and this scenario. */
export function drawOfSeat(key: string, seat: number): Draw {
  return { kind: 'seat', mark: classMark(key), seat };
}

/** The number of a seat as it was typed; null where a class of so many has no such seat. */
export function seatNumber(typed: string, seats: number): number | null {
  const plain = typed.trim();
  if (!/^\d{1,3}$/.test(plain)) return null;
  const seat = Number(plain);
  return seat >= 1 && seat <= Math.min(seats, MOST_SEATS) ? seat : null;
}

/** The instructor's list: what is wrong at each seat. */
export function seatList(
  scenario: Scenario,
  key: string,
  seats: number,
): readonly { readonly seat: number; readonly truth: Scenario }[] {
  return Array.from({ length: seats }, (_, index) => ({
    seat: index + 1,
    truth: drawnVariant(scenario, drawOfSeat(key, index + 1)),
  }));
}

/** The seed of a sitting at a seat, so that its truck is its own as well, where the scenario lets it; of any other truth the scenario's. */
export function seedOf(truth: Scenario): string {
  const draw = truth.variant === undefined ? null : parseDraw(truth.variant.draw);
  return draw?.kind === 'seat' ? seedOfSitting(truth, () => drawText(draw)) : truth.seed;
}
